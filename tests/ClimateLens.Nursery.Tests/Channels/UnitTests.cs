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
    [InlineData(Quantity.Irradiance, "mW/cm2", 100, 1000)]
    [InlineData(Quantity.Irradiance, "J/cm2/h", 360, 1000)] // 3.6 MJ/m2 in an hour
    [InlineData(Quantity.Irradiance, "kJ/m2/h", 3600, 1000)]
    [InlineData(Quantity.Irradiance, "J/cm2/min", 6, 1000)]
    [InlineData(Quantity.RadiantExposure, "MJ/m2", 1, 100)]
    [InlineData(Quantity.RadiantExposure, "J/m2", 10000, 1)]
    [InlineData(Quantity.RadiantExposure, "kJ/m2", 10, 1)]
    [InlineData(Quantity.RadiantExposure, "Wh/m2", 1000, 360)] // B.8: kilowatt hour 3.6 E+06 J
    [InlineData(Quantity.RadiantExposure, "kWh/m2", 1, 360)]
    [InlineData(Quantity.CarbonDioxide, "%", 0.04, 400)]
    [InlineData(Quantity.OnOff, "%", 100, 1)]
    [InlineData(Quantity.Volume, "hL", 1, 100)]
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
    [InlineData(Quantity.Pressure, "KPA", "kPa")]
    [InlineData(Quantity.Pressure, "mBar", "mbar")]
    [InlineData(Quantity.Temperature, "cel", "Cel")]
    [InlineData(Quantity.Temperature, "º C", "°C")]
    [InlineData(Quantity.Temperature, "\u2103", "°C")]
    [InlineData(Quantity.Temperature, "\u2109", "°F")]
    [InlineData(Quantity.Temperature, "Deg F", "degF")]
    [InlineData(Quantity.Illuminance, "Lux", "lux")]
    [InlineData(Quantity.Illuminance, "KLUX", "klux")]
    [InlineData(Quantity.CarbonDioxide, "PPM", "ppm")]
    [InlineData(Quantity.CarbonDioxide, "µmol/mol", "umol/mol")]
    [InlineData(Quantity.Irradiance, "W / m²", "W/m2")]
    [InlineData(Quantity.Irradiance, "W·m\u207B²", "W.m-2")]
    [InlineData(Quantity.Irradiance, "W/m^2", "W/m2")]
    [InlineData(Quantity.PhotonFlux, "µmol m-2 s-1", "umolm-2s-1")]
    [InlineData(Quantity.PhotonFlux, "\u03BCmol/m²/s", "umol/m2/s")]
    [InlineData(Quantity.VapourDensity, "g/m³", "g/m3")]
    [InlineData(Quantity.RelativeHumidity, "% RH", "%RH")]
    [InlineData(Quantity.Volume, "M3", "m3")]
    [InlineData(Quantity.Volume, "ML", "mL")] // no megalitre here, so no clash
    public void Unit_InAnotherSpelling_IsTheSame(Quantity quantity, string written, string code)
        => Assert.Equal(Of(quantity, code) with { Code = "" }, Of(quantity, written) with { Code = "" });

    [Theory]
    [InlineData(Quantity.Temperature, "kPa")]
    [InlineData(Quantity.Pressure, "MPa")]
    [InlineData(Quantity.Pressure, "k")]
    [InlineData(Quantity.Irradiance, "W")]
    [InlineData(Quantity.Temperature, "°")]
    [InlineData(Quantity.RelativeHumidity, "")]
    public void Unit_OfAnotherSizeOrQuantity_IsNotFound(Quantity quantity, string code)
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
        Assert.All(words, word => Assert.Equal(unit.Factor, Of(quantity, word.ToUpperInvariant()).Factor));
    }

    [Fact]
    public void Units_OfOneQuantity_WithOneKey_AreOneUnit()
        => Assert.All(UnitCatalogue.All.GroupBy(u => (u.Quantity, UnitText.Key(u.Code))), same => Assert.All(same, u => Assert.True(u.IsLike(same.First()), u.Code)));

    [Fact]
    public void PhotonFlux_WithEitherMu_IsTheSame()
        => Assert.Equal(Of(Quantity.PhotonFlux, "\u00B5mol/m²/s").Factor, Of(Quantity.PhotonFlux, "\u03BCmol/m²/s").Factor);

    private static Unit Of(Quantity quantity, string code)
    {
        Assert.True(UnitCatalogue.TryGet(quantity, code, out Unit? unit), code);
        return unit;
    }
}
