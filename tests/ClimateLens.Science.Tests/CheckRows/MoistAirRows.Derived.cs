using ClimateLens.Science.Psychrometrics;
using ClimateLens.Science.Quantities;

namespace ClimateLens.Science.Tests.CheckRows;

/// <summary>Rows that start from two bulbs, a ratio or a sensor error.</summary>
internal static partial class MoistAirRows
{
    private static double DewPointOf(CheckRow row) =>
        row.Has("e_hPa") ? DewPoint.FromVapourPressure(new(row.Input("e_hPa") / 10), Curve(row)).Value
        : row.Has("tw_C") ? DewPoint.FromVapourPressure(BulbVapourPressure(row), Curve(row)).Value
        : DewPoint.FromRelativeHumidity(Air(row), Humidity(row), Curve(row)).Value;

    private static double WetBulbOf(CheckRow row)
    {
        SaturationCurve water = Seen(row, "public unit test") ? SaturationCurve.Water : HylandWexler.Water;
        RelativeHumidity humidity = row.Has("td_C")
            ? RelativeHumidityFrom.DewPoint(Air(row), new(row.Input("td_C")), water)
            : Humidity(row);
        return WetBulb.FromRelativeHumidity(Air(row), humidity, Pressure(row), water, HylandWexler.Ice).Value;
    }

    private static KilogramPerKilogram BulbRatio(CheckRow row) => WetBulb.ToHumidityRatio(
        Air(row), new(row.Input("tw_C")), Pressure(row), HylandWexler.Water, HylandWexler.Ice);

    private static KiloPascal BulbVapourPressure(CheckRow row) =>
        VapourPressure.FromHumidityRatio(BulbRatio(row), Pressure(row));

    private static KilogramPerKilogram Ratio(CheckRow row) =>
        row.Has("W") ? new(row.Input("W"))
        : row.Has("q") ? HumidityRatio.FromSpecificHumidity(new(row.Input("q")))
        : row.Has("e_Pa") ? HumidityRatio.FromVapourPressure(new(row.Input("e_Pa") / 1000), Pressure(row))
        : row.Has("tw_C") ? BulbRatio(row)
        : HumidityRatio.FromRelativeHumidity(
            Air(row), row.Has("rh_pct") ? Humidity(row) : new(100), Pressure(row), Curve(row));

    private static double AirMass(CheckRow row) => row.Quantity switch
    {
        "humidity_ratio" or "saturation_humidity_ratio"
            or "humidity_ratio_from_vapour_pressure" or "humidity_ratio_from_wet_bulb" => Ratio(row).Value,
        "vapour_pressure_from_humidity_ratio" => InUnit(row, VapourPressure.FromHumidityRatio(Ratio(row), Pressure(row)).Value),
        "specific_humidity_from_humidity_ratio" => HumidityRatio.ToSpecificHumidity(Ratio(row)).Value,
        "dry_air_enthalpy" => MoistAirEnthalpy.FromHumidityRatio(Air(row), new(0)).Value * 1000,
        "moist_air_enthalpy" or "saturated_air_enthalpy" => MoistAirEnthalpy.FromHumidityRatio(Air(row), Ratio(row)).Value * 1000,
        "moist_air_density" => AirDensity.FromHumidityRatio(Air(row), Ratio(row), Pressure(row)).Value,
        // Volume to a mass of dry air: the mass in it over the density.
        "moist_air_volume" => (1 + Ratio(row).Value) / AirDensity.FromHumidityRatio(Air(row), Ratio(row), Pressure(row)).Value,
        "dry_air_volume" => 1 / AirDensity.FromHumidityRatio(Air(row), new(0), Pressure(row)).Value,
        _ => throw new InvalidOperationException($"No function is known for {row}."),
    };

    private static double RelativeHumidityOf(CheckRow row) => row.Quantity switch
    {
        "relative_humidity_from_dew_point" => RelativeHumidityFrom.DewPoint(Air(row), new(row.Input("td_C")), Curve(row)).Percent,
        "relative_humidity_wmo" => WmoPsychrometer.RelativeHumidity(Air(row), MixingRatioPressure(row), Pressure(row)).Percent,
        "relative_humidity" or "relative_humidity_from_humidity_ratio" or "relative_humidity_from_specific_humidity" =>
            RelativeHumidityFrom.HumidityRatio(Air(row), Ratio(row), Pressure(row), Curve(row)).Percent,
        _ => throw new InvalidOperationException($"No function is known for {row}."),
    };

    /// <summary>The row's source takes 0.62198 for the ratio of the molar masses, where the program has 0.621945.</summary>
    private static KiloPascal MixingRatioPressure(CheckRow row)
    {
        double ratio = row.Input("mixing_ratio");
        return new(Pressure(row).Value * ratio / (0.62198 + ratio));
    }

    private static double TwoBulbs(CheckRow row)
    {
        KiloPascal p = Pressure(row);
        switch (row.Quantity)
        {
            case "psychrometer_wmo_vapour_pressure":
                return InUnit(row, WmoPsychrometer.VapourPressure(Air(row), new(row.Input("tw_C")), p).Value);
            case "psychrometer_wmo_relative_humidity":
                return WmoPsychrometer.RelativeHumidity(
                    Air(row), WmoPsychrometer.VapourPressure(Air(row), new(row.Input("tw_C")), p), p).Percent;
            case "psychrometer_wmo_ice_bulb_relative_humidity":
                return WmoPsychrometer.RelativeHumidity(
                    Air(row), WmoPsychrometer.VapourPressureIceBulb(Air(row), new(row.Input("ti_C")), p), p).Percent;
            case "psychrometer_relative_humidity":
                return RelativeHumidityFrom.VapourPressure(Air(row), PlainBulbs(row), Curve(row)).Percent;
            case "psychrometer_vapour_pressure" or "psychrometer_fao_vapour_pressure":
                return InUnit(row, PlainBulbs(row).Value);
            default:
                throw new InvalidOperationException($"No function is known for {row}.");
        }
    }

    private static KiloPascal PlainBulbs(CheckRow row)
    {
        Celsius wetBulb = new(row.Input("tw_C"));
        if (row.Has("A_per_K"))
        {
            return Psychrometer.VapourPressure(Air(row), wetBulb, Pressure(row), row.Input("A_per_K"), Curve(row));
        }

        double coefficient = row.Input(row.Has("a_psy") ? "a_psy" : "a_psy_per_C");
        BulbVentilation ventilation = Enum.GetValues<BulbVentilation>()
            .Single(v => Psychrometer.CoefficientPerK(v) == coefficient);
        return Psychrometer.VapourPressure(Air(row), wetBulb, Pressure(row), ventilation, Curve(row));
    }

    private static double Uncertainty(CheckRow row)
    {
        KelvinDifference ut = new(row.Input("u_t_C"));
        HumidityPoints urh = new(row.Input("u_rh_pct"));
        SaturationCurve wmo = MagnusForm.Wmo8Water;
        return row.Quantity switch
        {
            "dew_point_uncertainty_rss" => SensorError.OfDewPoint(Air(row), Humidity(row), ut, urh, wmo).Combined,
            "dew_point_margin_uncertainty_rss" => SensorError.OfMargin(Air(row), Humidity(row), ut, urh, wmo).Combined,
            "vpd_uncertainty_rss" => SensorError.OfDeficit(Air(row), Humidity(row), ut, urh, wmo).Combined,
            _ => throw new InvalidOperationException($"No function is known for {row}."),
        };
    }
}
