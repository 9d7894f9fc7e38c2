using ClimateLens.Science.Psychrometrics;
using CsCheck;

namespace ClimateLens.Science.Tests.Psychrometrics;

public class MoistAirColumnsTests
{
    private const double Tolerance = 1e-12; // relative to the larger of 1 and the value

    // Mostly weather, with NaN, infinities and impossible values strewn in.
    private static readonly double[] OddValues =
        [double.NaN, double.PositiveInfinity, double.NegativeInfinity, -100, 100, -100.001, 100.001, 0, -0.5, 1e9, -1e9, double.Epsilon];

    private static readonly Gen<double> Odd = Gen.Int[0, OddValues.Length - 1].Select(i => OddValues[i]);

    private static readonly Gen<double> Temperature = Gen.Frequency((9, Gen.Double[-45, 60]), (1, Odd));

    private static readonly Gen<double> Humidity = Gen.Frequency((8, Gen.Double[0, 100]), (1, Gen.Double[99.999, 100]), (1, Odd));

    private static readonly Gen<(double T, double Rh)[]> Rows = Gen.Select(Temperature, Humidity).Array[0, 70];

    private delegate void OneColumn(ReadOnlySpan<double> input, Span<double> result);

    private delegate void TwoColumns(ReadOnlySpan<double> temperature, ReadOnlySpan<double> humidity, Span<double> result);

    [Fact]
    public void SaturationVapourPressureKPa_AnyColumn_EqualsScalar() => Agree(
        MoistAirColumns.SaturationVapourPressureKPa, x => SaturationVapourPressure.OverWater(new(x)).Value, rows => rows.T);

    [Fact]
    public void VapourPressureKPa_AnyColumns_EqualsScalar() => Agree(
        MoistAirColumns.VapourPressureKPa, (t, rh) => VapourPressure.FromRelativeHumidity(new(t), new(rh)).Value);

    [Fact]
    public void VapourPressureDeficitKPa_AnyColumns_EqualsScalar() => Agree(
        MoistAirColumns.VapourPressureDeficitKPa, (t, rh) => VapourPressureDeficit.OfAir(new(t), new(rh)).Value);

    [Fact]
    public void DewPointC_AnyColumns_EqualsScalar() => Agree(
        MoistAirColumns.DewPointC, (t, rh) => DewPoint.FromRelativeHumidity(new(t), new(rh)).Value);

    [Fact]
    public void DewPointFromVapourPressureC_AnyColumn_EqualsScalar() => Agree(
        MoistAirColumns.DewPointFromVapourPressureC, x => DewPoint.FromVapourPressure(new(x)).Value, rows => rows.Rh / 20);

    [Fact]
    public void AbsoluteHumidityGm3_AnyColumns_EqualsScalar() => Agree(
        MoistAirColumns.AbsoluteHumidityGm3, (t, rh) => VapourDensity.Absolute(new(t), new(rh)).Value);

    [Fact]
    public void HumidityDeficitGm3_AnyColumns_EqualsScalar() => Agree(
        MoistAirColumns.HumidityDeficitGm3, (t, rh) => VapourDensity.Deficit(new(t), new(rh)).Value);

    [Fact]
    public void RelativeHumidityPct_AnyColumns_EqualsScalar() => Agree(
        MoistAirColumns.RelativeHumidityPct, (t, td) => RelativeHumidityFrom.DewPoint(new(t), new(td)).Percent);

    [Fact]
    public void LeafToAirDeficitKPa_AnyColumns_EqualsScalar() => Rows.Sample(rows =>
    {
        double[] leaf = [.. rows.Select(r => r.T - 1)], e = new double[rows.Length], result = new double[rows.Length];
        MoistAirColumns.VapourPressureKPa([.. rows.Select(r => r.T)], [.. rows.Select(r => r.Rh)], e);
        MoistAirColumns.LeafToAirDeficitKPa(leaf, e, result);
        return rows.Select((r, i) => Same(
            result[i], () => VapourPressureDeficit.LeafToAir(new(leaf[i]), new(r.T), new(r.Rh)).Value)).All(same => same);
    });

    [Fact]
    public void SaturatedColumns_NeverPassTheTemperatureOr100Percent()
    {
        // Without its limit the dew point passes the temperature by rounding in many of these rows.
        double[] t = [.. Enumerable.Range(0, 501).Select(i => i * 0.1)];
        double[] dewPoint = new double[501], humidity = new double[501];
        MoistAirColumns.DewPointC(t, [.. t.Select(_ => 100.0)], dewPoint);
        MoistAirColumns.RelativeHumidityPct(t, t, humidity);
        Assert.All(t.Zip(dewPoint), row => Assert.InRange(row.Second, row.First - 1e-12, row.First));
        Assert.All(humidity, rh => Assert.InRange(rh, 100 - 1e-12, 100));
    }

    [Fact]
    public void Columns_OfDifferentLengths_AreRefused()
    {
        Assert.Throws<ArgumentException>(() => MoistAirColumns.DewPointC([18, 19], [85], new double[2]));
        Assert.Throws<ArgumentException>(() => MoistAirColumns.DewPointC([18, 19], [85, 86], new double[3]));
        Assert.Throws<ArgumentException>(() => MoistAirColumns.SaturationVapourPressureKPa([18], new double[2]));
        Assert.Throws<ArgumentException>(() => MoistAirColumns.AbsoluteHumidityGm3([18], [85, 86], new double[1]));
    }

    [Fact]
    public void Columns_ResultOverAnInput_IsRefused()
    {
        double[] temperature = [18, 19], humidity = [85, 86];
        Assert.Throws<ArgumentException>(() => MoistAirColumns.VapourPressureDeficitKPa(temperature, humidity, temperature));
        Assert.Throws<ArgumentException>(() => MoistAirColumns.VapourPressureDeficitKPa(temperature, humidity, humidity));
    }

    public static TheoryData<string> Functions => ["saturation", "vapour", "deficit", "dewPoint", "dewPointOfVapour", "absolute", "humidityDeficit", "humidity", "leaf"];

    [Theory]
    [MemberData(nameof(Functions))]
    public void AnyFunction_ResultOverAnInputOrOfAnotherLength_IsRefused(string function)
    {
        double[] first = [18, 19], second = [15, 16], longer = new double[3];
        Assert.Throws<ArgumentException>(() => Of(function, first, second, first));
        Assert.Throws<ArgumentException>(() => Of(function, first, second, longer));
        if (function is not ("saturation" or "dewPointOfVapour"))
        {
            Assert.Throws<ArgumentException>(() => Of(function, first, second, second));
            Assert.Throws<ArgumentException>(() => Of(function, first, longer, new double[2]));
        }

        Of(function, first, second, new double[2]);
    }

    [Fact]
    public void ValuesAtTheirLimits_AreWorkedOut_AndNoneBeyond()
    {
        double[] result = new double[4];
        MoistAirColumns.LeafToAirDeficitKPa([20, 20, 20, 20], [0, 105, -1e-9, 105.001], result);
        Assert.Equal(SaturationVapourPressure.OverWater(new(20)).Value, result[0], 12);
        Assert.Equal(SaturationVapourPressure.OverWater(new(20)).Value - 105, result[1], 9);
        Assert.All(result.Skip(2), value => Assert.True(double.IsNaN(value)));
        MoistAirColumns.DewPointFromVapourPressureC([105, 1e-6, 0, 105.001], result);
        Assert.All(result.Take(2), value => Assert.True(double.IsFinite(value)));
        Assert.All(result.Skip(2), value => Assert.True(double.IsNaN(value)));
        MoistAirColumns.DewPointC([20, 20, 20, 20], [100, 1e-6, 0, 100.001], result);
        Assert.All(result.Take(2), value => Assert.True(double.IsFinite(value)));
        Assert.All(result.Skip(2), value => Assert.True(double.IsNaN(value)));
    }

    private static void Of(string function, double[] first, double[] second, double[] result)
    {
        switch (function)
        {
            case "saturation": MoistAirColumns.SaturationVapourPressureKPa(first, result); break;
            case "vapour": MoistAirColumns.VapourPressureKPa(first, second, result); break;
            case "deficit": MoistAirColumns.VapourPressureDeficitKPa(first, second, result); break;
            case "dewPoint": MoistAirColumns.DewPointC(first, second, result); break;
            case "dewPointOfVapour": MoistAirColumns.DewPointFromVapourPressureC(first, result); break;
            case "absolute": MoistAirColumns.AbsoluteHumidityGm3(first, second, result); break;
            case "humidityDeficit": MoistAirColumns.HumidityDeficitGm3(first, second, result); break;
            case "humidity": MoistAirColumns.RelativeHumidityPct(first, second, result); break;
            default: MoistAirColumns.LeafToAirDeficitKPa(first, second, result); break;
        }
    }

    private static void Agree(TwoColumns columns, Func<double, double, double> scalar) => Rows.Sample(rows =>
    {
        double[] result = new double[rows.Length];
        columns([.. rows.Select(r => r.T)], [.. rows.Select(r => r.Rh)], result);
        return rows.Select((r, i) => Same(result[i], () => scalar(r.T, r.Rh))).All(same => same);
    });

    private static void Agree(OneColumn column, Func<double, double> scalar, Func<(double T, double Rh), double> pick) =>
        Rows.Sample(rows =>
        {
            double[] input = [.. rows.Select(pick)], result = new double[rows.Length];
            column(input, result);
            return input.Select((x, i) => Same(result[i], () => scalar(x))).All(same => same);
        });

    private static bool Same(double column, Func<double> scalar)
    {
        double expected;
        try
        {
            expected = scalar();
        }
        catch (ArgumentOutOfRangeException)
        {
            expected = double.NaN; // what a scalar refuses, a column leaves open
        }

        return double.IsNaN(expected)
            ? double.IsNaN(column)
            : Math.Abs(column - expected) <= Tolerance * Math.Max(1, Math.Abs(expected));
    }
}
