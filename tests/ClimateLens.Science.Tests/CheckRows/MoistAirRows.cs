using ClimateLens.Science.Psychrometrics;
using ClimateLens.Science.Quantities;
using ClimateLens.Science.Tests.References;

namespace ClimateLens.Science.Tests.CheckRows;

/// <summary>Works a check row out with the function it speaks of; the result is in the row's unit.</summary>
internal static partial class MoistAirRows
{
    public static double Evaluate(CheckRow row) => row.Quantity switch
    {
        "saturation_vapour_pressure" or "sublimation_pressure" or "vapour_pressure_from_dew_point" => Saturation(row),
        "slope_of_saturation_curve" => Curve(row).Slope(Air(row)).Value,
        "mean_saturation_vapour_pressure" => (SaturationAt(row, "tmin_C") + SaturationAt(row, "tmax_C")) / 2,
        "vapour_pressure_from_rh_extremes" => DailyVapourPressure(row, row.Input("rhmax"), row.Input("rhmin")),
        "vapour_pressure_from_rhmean" => DailyVapourPressure(row, row.Input("rhmean"), row.Input("rhmean")),
        "vapour_pressure_deficit_daily" => DailyDeficit(row),
        "vapour_pressure_deficit_air" => VapourPressureDeficit.OfAir(Air(row), Humidity(row), Curve(row)).Value,
        "vapour_pressure_deficit_leaf" => VapourPressureDeficit.LeafToAir(
            new(row.Input("t_leaf_C")), new(row.Input("t_air_C")), Humidity(row), MagnusForm.Wmo8Water).Value,
        "dew_point" => DewPointOf(row),
        "frost_point" => FrostPoint.FromRelativeHumidity(
            Air(row), new(row.Input("rh_pct_over_water")), MagnusForm.Wmo8Water, MagnusForm.Wmo8Ice).Value,
        "absolute_humidity" => VapourDensity.Absolute(Air(row), Humidity(row), Curve(row)).Value,
        "atmospheric_pressure_fao" => AirPressure.AtElevationFao56(new(row.Input("z_m"))).Value,
        "standard_atmosphere_pressure" => AirPressure.AtElevation(new(row.Input("z_m"))).Value * 1000,
        "psychrometric_constant_fao" => Psychrometer.ConstantFao56(new(row.Input("p_kPa"))).Value,
        "wet_bulb" or "wet_bulb_pseudoadiabatic" => WetBulbOf(row),
        "wet_bulb_stull" => Stull2011.WetBulbC(row.Input("t_C"), row.Input("rh_pct")),
        _ when row.Quantity.StartsWith("psychrometer_", StringComparison.Ordinal) => TwoBulbs(row),
        _ when row.Quantity.StartsWith("relative_humidity", StringComparison.Ordinal) => RelativeHumidityOf(row),
        _ when row.Quantity.EndsWith("_uncertainty_rss", StringComparison.Ordinal) => Uncertainty(row),
        _ => AirMass(row),
    };

    /// <summary>The curve a row was worked out with: named in the row, or the usual one of its source.</summary>
    private static SaturationCurve Curve(CheckRow row) => row.Formula switch
    {
        "Sonntag 1990" => OverIce(row) ? ReferenceCurves.Sonntag1990Ice : ReferenceCurves.Sonntag1990Water,
        "IAPWS-IF97 eq.30" => Iapws.If97,
        "Wagner-Pruss aux." => Iapws.WagnerPruss1993,
        "IAPWS R14-08 eq.6" => Iapws.SublimationR14,
        "WMO-8" => MagnusForm.Wmo8Water,
        "AERK" => MagnusForm.AerkWater,
        _ when row.Formula.StartsWith("FAO-56", StringComparison.Ordinal) || Seen(row, "FAO-56") => MagnusForm.Fao56Water,
        _ when Seen(row, "MetPy tests") => MagnusForm.Bolton1980Water,
        _ when Seen(row, "Nederhoff") || Seen(row, "public unit test") => SaturationCurve.Water,
        _ => OverIce(row) ? HylandWexler.Ice : HylandWexler.Water,
    };

    private static bool OverIce(CheckRow row) =>
        row.Has("phase") ? row.Text("phase") == "ice"
        : row.Quantity.StartsWith("saturat", StringComparison.Ordinal) && row.Has("t_C") && row.Input("t_C") < 0;

    private static bool Seen(CheckRow row, string words) => row.Source.Contains(words, StringComparison.Ordinal);

    private static Celsius Air(CheckRow row) => new(row.Input("t_C"));

    private static RelativeHumidity Humidity(CheckRow row) => new(row.Input("rh_pct"));

    private static KiloPascal Pressure(CheckRow row) =>
        row.Has("p_Pa") ? new(row.Input("p_Pa") / 1000)
        : row.Has("p_hPa") ? new(row.Input("p_hPa") / 10)
        : new(row.Input("p_kPa"));

    private static double InUnit(CheckRow row, double kiloPascal) => row.Unit switch
    {
        "Pa" => kiloPascal * 1000,
        "hPa" => kiloPascal * 10,
        "kPa" => kiloPascal,
        _ => throw new InvalidOperationException($"Unit {row.Unit} of {row} is no pressure."),
    };

    private static double Saturation(CheckRow row)
    {
        // Internal value: the reference rows of the steam tables lie beyond the limits of air.
        double t = row.Has("T_K") ? row.Input("T_K") - 273.15 : row.Input(row.Has("td_C") ? "td_C" : "t_C");
        return InUnit(row, Curve(row).VapourPressureKPa(t));
    }

    private static double SaturationAt(CheckRow row, string temperature) =>
        MagnusForm.Fao56Water.VapourPressure(new(row.Input(temperature))).Value;

    /// <summary>FAO-56 equations 17 and 19: the morning's cool air holds the highest relative humidity.</summary>
    private static double DailyVapourPressure(CheckRow row, double atCoolest, double atWarmest)
    {
        double Part(string saturation, double humidity)
        {
            Celsius air = MagnusForm.Fao56Water.Temperature(new(row.Input(saturation)));
            return VapourPressure.FromRelativeHumidity(air, new(humidity), MagnusForm.Fao56Water).Value;
        }

        return (Part("es_tmin_kPa", atCoolest) + Part("es_tmax_kPa", atWarmest)) / 2;
    }

    private static double DailyDeficit(CheckRow row)
    {
        double Part(string temperature, string humidity) => VapourPressureDeficit.OfAir(
            new(row.Input(temperature)), new(row.Input(humidity)), MagnusForm.Fao56Water).Value;

        return (Part("tmin_C", "rhmax") + Part("tmax_C", "rhmin")) / 2;
    }
}
