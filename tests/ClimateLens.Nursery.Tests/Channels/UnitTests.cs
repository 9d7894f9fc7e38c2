using ClimateLens.Nursery.Channels;
using CsCheck;

namespace ClimateLens.Nursery.Tests.Channels;

/// <summary>
/// Conversion factors as printed in NIST SP 811 (2008), Appendix B.8, except where a row names another source.
/// The tolerance is half a unit in the last printed digit.
/// </summary>
public class UnitTests
{
    private static readonly Gen<Unit> AnyUnit = Gen.Int[0, UnitCatalogue.All.Count - 1].Select(i => UnitCatalogue.All[i]);

    public static TheoryData<string> Quantities => [.. Enum.GetNames<Quantity>()];

    [Theory]
    [InlineData(Quantity.Temperature, "[degF]", 32, 0)] // B.8: t/°C = (t/°F - 32)/1.8
    [InlineData(Quantity.Temperature, "[degF]", 212, 100)]
    [InlineData(Quantity.Temperature, "degF", -40, -40)]
    [InlineData(Quantity.Temperature, "K", 273.15, 0)] // B.8: t/°C = T/K - 273.15
    [InlineData(Quantity.Temperature, "Cel", 21.5, 21.5)]
    [InlineData(Quantity.TemperatureDifference, "[degF]", 9, 5)]
    [InlineData(Quantity.RelativeHumidity, "1", 0.85, 85)]
    [InlineData(Quantity.Pressure, "hPa", 1013.25, 101.325)] // standard atmosphere, B.8: 1.01325 E+05 Pa
    [InlineData(Quantity.Pressure, "bar", 1, 100)]
    [InlineData(Quantity.Speed, "km/h", 36, 10)]
    [InlineData(Quantity.Volume, "m3", 2, 2000)]
    [InlineData(Quantity.Volume, "[gal_br]", 1, 4.54609)] // B.8: gallon [Canadian and U.K. (Imperial)] 4.54609 E+00 L
    [InlineData(Quantity.WaterDepth, "[in_i]", 1, 25.4)]
    [InlineData(Quantity.WaterDepth, "L/m2", 7, 7)]
    [InlineData(Quantity.Length, "cm", 14, 140)]
    [InlineData(Quantity.Duration, "h", 1.5, 90)]
    [InlineData(Quantity.Mass, "kg", 0.35, 350)]
    public void Unit_ExactByDefinition_ConvertsExactly(Quantity quantity, string code, double value, double expected)
        => Assert.Equal(expected, Of(quantity, code).ToSi(value), 12);

    [Theory]
    [InlineData(Quantity.TemperatureDifference, "[degF]", 5.555556e-1, 1e-7)]
    [InlineData(Quantity.Pressure, "[in_i'Hg]", 3.386389e+3 / 1000, 1e-6)]
    [InlineData(Quantity.Pressure, "mm[Hg]", 1.333224e+2 / 1000, 1e-7)]
    [InlineData(Quantity.Pressure, "[psi]", 6.894757e+3 / 1000, 1e-6)]
    [InlineData(Quantity.Pressure, "mbar", 1.0e+2 / 1000, 1e-12)]
    [InlineData(Quantity.Illuminance, "fc", 1.076391e+1, 1e-5)]
    [InlineData(Quantity.Speed, "km/h", 2.777778e-1, 1e-7)]
    [InlineData(Quantity.Speed, "mph", 4.4704e-1, 1e-12)]
    [InlineData(Quantity.Speed, "kn", 5.144444e-1, 1e-7)]
    [InlineData(Quantity.Speed, "[ft_i]/min", 5.08e-3, 1e-12)]
    [InlineData(Quantity.Volume, "[gal_us]", 3.785412, 1e-6)]
    [InlineData(Quantity.Volume, "[foz_us]", 2.957353e-2, 1e-8)]
    [InlineData(Quantity.Mass, "[oz_av]", 2.834952e-2 * 1000, 1e-5)]
    [InlineData(Quantity.Duration, "s", 1 / 6.0e+1, 1e-12)]
    public void Unit_ByNistSp811_HasItsFactor(Quantity quantity, string code, double factor, double printedTo)
        => Assert.Equal(factor, Of(quantity, code).ToSi(1) - Of(quantity, code).ToSi(0), printedTo / 2);

    [Fact]
    public void Unit_EveryOne_ComesBackToWhereItStarted()
        => Gen.Select(AnyUnit, Gen.Double[-1e4, 1e4]).Sample((unit, value) =>
            Math.Abs(unit.FromSi(unit.ToSi(value)) - value) <= 1e-9 * (1 + Math.Abs(value)));

    [Fact]
    public void Unit_EveryOne_KeepsTheOrderAndNaN()
        => Gen.Select(AnyUnit, Gen.Double[-1e4, 1e4], Gen.Double[1e-3, 1e4]).Sample((unit, value, more) =>
            unit.ToSi(value) < unit.ToSi(value + more) && double.IsNaN(unit.ToSi(double.NaN)) && double.IsNaN(unit.FromSi(double.NaN)));

    [Theory]
    [MemberData(nameof(Quantities))]
    public void Quantity_EveryOne_HasAnSiUnitWithACode(string name)
    {
        Unit si = UnitCatalogue.SiOf(Enum.Parse<Quantity>(name));
        Assert.Equal((1, 0), (si.Factor, si.Offset));
        Assert.NotEmpty(si.Code);
        Assert.Equal(si.Code, UnitCatalogue.CodesOf(si.Quantity).First());
    }

    [Fact]
    public void Units_OfOneQuantity_HaveDistinctCodes()
        => Assert.Equal(UnitCatalogue.All.Count, UnitCatalogue.All.Select(u => (u.Quantity, u.Code)).Distinct().Count());

    [Fact]
    public void TemperatureDifference_HasEveryCodeOfTemperature_WithoutItsZero()
    {
        foreach (Unit unit in UnitCatalogue.All.Where(u => u.Quantity == Quantity.Temperature))
        {
            Unit difference = Of(Quantity.TemperatureDifference, unit.Code);
            Assert.Equal((unit.Factor, 0), (difference.Factor, difference.Offset));
        }
    }

    [Theory]
    [InlineData(Quantity.Temperature, "cel")]
    [InlineData(Quantity.Temperature, "kPa")]
    [InlineData(Quantity.Pressure, "KPA")]
    [InlineData(Quantity.RelativeHumidity, "")]
    public void Unit_OfAnotherCaseOrQuantity_IsNotFound(Quantity quantity, string code)
        => Assert.False(UnitCatalogue.TryGet(quantity, code, out _));

    [Theory]
    [InlineData(Quantity.Volume, "[gal_us]", "gallon", "gallons", "gal_us")]
    [InlineData(Quantity.Volume, "L", "liter", "liters", "litre", "litres")]
    [InlineData(Quantity.Duration, "min", "minutes")]
    [InlineData(Quantity.Percent, "%", "percent")]
    [InlineData(Quantity.RelativeHumidity, "%", "percent")]
    [InlineData(Quantity.Temperature, "Cel", "celsius")]
    [InlineData(Quantity.Temperature, "[degF]", "fahrenheit")]
    public void Unit_EverydayWord_IsTheUnit(Quantity quantity, string code, params string[] words)
    {
        Unit unit = Of(quantity, code);
        Assert.All(words, word => Assert.Equal(unit with { Code = word }, Of(quantity, word)));
        Assert.All(words, word => Assert.False(UnitCatalogue.TryGet(quantity, word.ToUpperInvariant(), out _)));
    }

    [Fact]
    public void PhotonFlux_WithEitherMu_IsTheSame()
        => Assert.Equal(Of(Quantity.PhotonFlux, "\u00B5mol/m²/s").Factor, Of(Quantity.PhotonFlux, "\u03BCmol/m²/s").Factor);

    private static Unit Of(Quantity quantity, string code)
    {
        Assert.True(UnitCatalogue.TryGet(quantity, code, out Unit unit), code);
        return unit;
    }
}
