using ClimateLens.Science.Psychrometrics;
using ClimateLens.Science.Sun;

namespace ClimateLens.Science.Tests.Psychrometrics;

/// <summary>Every scalar function of the science, with good inputs and values just outside what is possible for each.</summary>
internal sealed record ScalarFunction(string Name, Func<double[], double> Run, double[] Good, double[][] Impossible)
{
    public override string ToString() => Name;
}

internal static class ScalarCatalogue
{
    private static readonly double[] T = [-100.1, 100.1, double.NegativeInfinity, double.PositiveInfinity];
    private static readonly double[] Rh = [-0.1, 100.1];
    private static readonly double[] RhDry = [0, -0.1, 100.1];
    private static readonly double[] P = [9.9, 120.1];
    private static readonly double[] E = [0, -0.001, 105.1];
    private static readonly double[] W = [-0.0001, 6.1];
    private static readonly double[] Size = [-0.001, 100.1];
    private static readonly double[] WetT = [-50.1, 60.1];
    private static readonly double[] WetP = [49.9, 120.1];
    private static readonly double[] Bulb = [-100.1, 20.1, 5]; // above the dry bulb, or drier than dry

    public static IReadOnlyList<ScalarFunction> All { get; } =
    [
        new("SaturationVapourPressure.OverWater", x => SaturationVapourPressure.OverWater(new(x[0])).Value, [18], [T]),
        new("SaturationVapourPressure.OverIce", x => SaturationVapourPressure.OverIce(new(x[0])).Value, [-8], [T]),
        new("SaturationVapourPressure.Slope", x => SaturationVapourPressure.Slope(new(x[0])).Value, [18], [T]),
        new("HylandWexler.Water", x => HylandWexler.Water.VapourPressure(new(x[0])).Value, [18], [T]),
        new("HylandWexler.Slope", x => HylandWexler.Ice.Slope(new(x[0])).Value, [-8], [T]),
        new("HylandWexler.Temperature", x => HylandWexler.Water.Temperature(new(x[0])).Value, [1.5], [E]),
        new("VapourPressure.FromRelativeHumidity", x => VapourPressure.FromRelativeHumidity(new(x[0]), new(x[1])).Value, [18, 85], [T, Rh]),
        new("VapourPressure.FromDewPoint", x => VapourPressure.FromDewPoint(new(x[0])).Value, [12], [T]),
        new("VapourPressure.FromFrostPoint", x => VapourPressure.FromFrostPoint(new(x[0])).Value, [-3], [[-100.1, 0.1]]),
        new("VapourPressure.FromHumidityRatio", x => VapourPressure.FromHumidityRatio(new(x[0]), new(x[1])).Value, [0.01, 101], [[-0.001, 1.1], P]),
        new("VapourPressure.FromAbsoluteHumidity", x => VapourPressure.FromAbsoluteHumidity(new(x[0]), new(x[1])).Value, [18, 10], [T, [-0.1, 600.1]]),
        new("RelativeHumidityFrom.VapourPressure", x => RelativeHumidityFrom.VapourPressure(new(x[0]), new(x[1])).Percent, [18, 1.5], [T, [-0.001, 2.2]]),
        new("RelativeHumidityFrom.DewPoint", x => RelativeHumidityFrom.DewPoint(new(x[0]), new(x[1])).Percent, [18, 12], [T, [-100.1, 18.1]]),
        new("RelativeHumidityFrom.HumidityRatio", x => RelativeHumidityFrom.HumidityRatio(new(x[0]), new(x[1]), new(x[2])).Percent, [18, 0.01, 101], [T, [-0.001, 0.02], P]),
        new("RelativeHumidityFrom.AbsoluteHumidity", x => RelativeHumidityFrom.AbsoluteHumidity(new(x[0]), new(x[1])).Percent, [18, 10], [T, [-0.1, 16]]),
        new("DewPoint.FromRelativeHumidity", x => DewPoint.FromRelativeHumidity(new(x[0]), new(x[1])).Value, [18, 85], [T, RhDry]),
        new("DewPoint.FromVapourPressure", x => DewPoint.FromVapourPressure(new(x[0])).Value, [1.5], [E]),
        new("DewPoint.Margin", x => DewPoint.Margin(new(x[0]), new(x[1])).Value, [18, 12], [T, T]),
        new("FrostPoint.FromRelativeHumidity", x => FrostPoint.FromRelativeHumidity(new(x[0]), new(x[1])).Value, [-4, 80], [[-100.1, 100.1, 20], RhDry]),
        new("FrostPoint.FromVapourPressure", x => FrostPoint.FromVapourPressure(new(x[0])).Value, [0.4], [[0, -0.1, 0.62]]),
        new("VapourPressureDeficit.OfAir", x => VapourPressureDeficit.OfAir(new(x[0]), new(x[1])).Value, [18, 85], [T, Rh]),
        new("VapourPressureDeficit.LeafToAir", x => VapourPressureDeficit.LeafToAir(new(x[0]), new(x[1]), new(x[2])).Value, [16, 18, 85], [T, T, Rh]),
        new("VapourDensity.FromVapourPressure", x => VapourDensity.FromVapourPressure(new(x[0]), new(x[1])).Value, [18, 1.5], [T, [-0.1, 105.1]]),
        new("VapourDensity.Absolute", x => VapourDensity.Absolute(new(x[0]), new(x[1])).Value, [18, 85], [T, Rh]),
        new("VapourDensity.Deficit", x => VapourDensity.Deficit(new(x[0]), new(x[1])).Value, [18, 85], [T, Rh]),
        new("HumidityRatio.FromVapourPressure", x => HumidityRatio.FromVapourPressure(new(x[0]), new(x[1])).Value, [1.5, 101], [[-0.1, 95], P]),
        new("HumidityRatio.FromRelativeHumidity", x => HumidityRatio.FromRelativeHumidity(new(x[0]), new(x[1]), new(x[2])).Value, [18, 85, 101], [T, Rh, P]),
        new("HumidityRatio.ToSpecificHumidity", x => HumidityRatio.ToSpecificHumidity(new(x[0])).Value, [0.01], [W]),
        new("HumidityRatio.FromSpecificHumidity", x => HumidityRatio.FromSpecificHumidity(new(x[0])).Value, [0.01], [[-0.001, 0.86]]),
        new("MoistAirEnthalpy.FromHumidityRatio", x => MoistAirEnthalpy.FromHumidityRatio(new(x[0]), new(x[1])).Value, [18, 0.01], [T, W]),
        new("MoistAirEnthalpy.FromRelativeHumidity", x => MoistAirEnthalpy.FromRelativeHumidity(new(x[0]), new(x[1]), new(x[2])).Value, [18, 85, 101], [T, Rh, P]),
        new("AirDensity.FromHumidityRatio", x => AirDensity.FromHumidityRatio(new(x[0]), new(x[1]), new(x[2])).Value, [18, 0.01, 101], [T, W, P]),
        new("AirDensity.FromRelativeHumidity", x => AirDensity.FromRelativeHumidity(new(x[0]), new(x[1]), new(x[2])).Value, [18, 85, 101], [T, Rh, P]),
        new("AirPressure.AtElevation", x => AirPressure.AtElevation(new(x[0])).Value, [18], [[-501, 9001]]),
        new("AirPressure.AtElevationFao56", x => AirPressure.AtElevationFao56(new(x[0])).Value, [18], [[-501, 9001]]),
        new("WetBulb.FromRelativeHumidity", x => WetBulb.FromRelativeHumidity(new(x[0]), new(x[1]), new(x[2])).Value, [18, 85, 101], [WetT, Rh, WetP]),
        new("WetBulb.ToHumidityRatio", x => WetBulb.ToHumidityRatio(new(x[0]), new(x[1]), new(x[2])).Value, [20, 15, 101], [WetT, Bulb, WetP]),
        new("Psychrometer.VapourPressure", x => Psychrometer.VapourPressure(new(x[0]), new(x[1]), new(x[2]), BulbVentilation.Aspirated).Value, [20, 15, 101], [T, [-0.1, 20.1, 2], P]),
        new("Psychrometer.VapourPressure, own coefficient", x => Psychrometer.VapourPressure(new(20), new(15), new(101), x[0]).Value, [0.0007], [[0.0004, 0.0021]]),
        new("Psychrometer.RelativeHumidity", x => Psychrometer.RelativeHumidity(new(x[0]), new(x[1]), new(x[2]), BulbVentilation.Natural).Percent, [20, 15, 101], [T, [-0.1, 20.1, 2], P]),
        new("Psychrometer.ConstantFao56", x => Psychrometer.ConstantFao56(new(x[0])).Value, [101], [P]),
        new("WmoPsychrometer.EnhancementFactor", x => WmoPsychrometer.EnhancementFactor(new(x[0])), [101], [P]),
        new("WmoPsychrometer.VapourPressure", x => WmoPsychrometer.VapourPressure(new(x[0]), new(x[1]), new(x[2])).Value, [20, 15, 101], [T, Bulb, P]),
        new("WmoPsychrometer.VapourPressureIceBulb", x => WmoPsychrometer.VapourPressureIceBulb(new(x[0]), new(x[1]), new(x[2])).Value, [-2, -3, 101], [T, [-100.1, -1.9, 0.1], P]),
        new("WmoPsychrometer.RelativeHumidity", x => WmoPsychrometer.RelativeHumidity(new(x[0]), new(x[1]), new(x[2])).Percent, [20, 1.5, 101], [T, [-0.1, 2.5], P]),
        new("SensorError.OfDewPoint", x => SensorError.OfDewPoint(new(x[0]), new(x[1]), new(x[2]), new(x[3])).Combined, [18, 85, 0.3, 2], [T, RhDry, Size, Size]),
        new("SensorError.OfMargin", x => SensorError.OfMargin(new(x[0]), new(x[1]), new(x[2]), new(x[3])).Combined, [18, 85, 0.3, 2], [T, RhDry, Size, Size]),
        new("SensorError.OfDeficit", x => SensorError.OfDeficit(new(x[0]), new(x[1]), new(x[2]), new(x[3])).Combined, [18, 85, 0.3, 2], [T, Rh, Size, Size]),
        new("SolarPosition.ElevationDeg", x => SolarPosition.ElevationDeg(x[0], x[1], x[2]), [1.7e9, 53, -0.6], [[], [-90.1, 90.1], [-180.1, 180.1]]),
        new("SolarPosition.AzimuthDeg", x => SolarPosition.AzimuthDeg(x[0], x[1], x[2]), [1.7e9, 53, -0.6], [[], [-90.1, 90.1], [-180.1, 180.1]]),
        new("AtmosphericRefraction.Deg", x => AtmosphericRefraction.Deg(x[0], new(x[1]), new(x[2])), [10, 101, 10], [[-90.1, 90.1], P, T]),
        new("ClearSkyRadiation.GlobalWm2", x => ClearSkyRadiation.GlobalWm2(x[0]), [30], [[-90.1, 90.1]]),
    ];
}
