using System.Text;
using ClimateLens.Logs.Cells;
using ClimateLens.Nursery.Channels;

namespace ClimateLens.Logs.Tests.Cells;

/// <summary>What one cell of a column is taken for. Values worked out by hand.</summary>
public sealed class ValueReaderTests
{
    [Theory]
    [InlineData("21.5 °C", 21.5)]
    [InlineData("21.5°C", 21.5)]
    [InlineData("21.5 ºC", 21.5)]
    [InlineData("21.5 C", 21.5)]
    [InlineData("21.5 degC", 21.5)]
    [InlineData("-1.5\u00A0°C", -1.5)]
    [InlineData("21.5°", 21.5)]
    [InlineData("2.15E1 °C", 21.5)]
    [InlineData("2.15E1°C", 21.5)]
    [InlineData("2.15e+1°C", 21.5)]
    [InlineData("215E-1°C", 21.5)]
    [InlineData("\u22121.5°C", -1.5)]
    [InlineData("\u20131.5°C", -1.5)]
    [InlineData("21.50000000 degC", 21.5)]
    [InlineData("  21.5  ", 21.5)]
    [InlineData("\u200921.5\uFEFF", 21.5)]
    [InlineData("'21.5", 21.5)]
    [InlineData("\"21.5\"", 21.5)]
    [InlineData("=\"21.5\"", 21.5)]
    public void Read_TemperatureWithItsUnitOrInQuotes_IsRead(string cell, double expected)
        => Assert.Equal((CellKind.Value, expected), Read(cell, "airTemperature", "Cel"));

    [Theory]
    [InlineData("85%", "relativeHumidity", "%", 85)]
    [InlineData("85 % RH", "relativeHumidity", "%", 85)]
    [InlineData("0.85", "relativeHumidity", "1", 85)]
    [InlineData("85 percent", "relativeHumidity", "%", 85)]
    [InlineData("500 W/m²", "globalRadiation", "W/m2", 500)]
    [InlineData("12 klux", "illuminance", "klx", 12000)]
    [InlineData("1013 hPa", "airPressure", "hPa", 101.3)]
    [InlineData("1\u2009013", "airPressure", "hPa", 101.3)]
    [InlineData("70.7 °F", "airTemperature", "[degF]", 21.5)]
    public void Read_OtherChannelsWithTheirUnit_AreRead(string cell, string channel, string unit, double expected)
    {
        (CellKind kind, double value) = Read(cell, channel, unit);
        Assert.Equal(CellKind.Value, kind);
        Assert.Equal(expected, value, 9);
    }

    [Theory]
    [InlineData("70.7 °F", "airTemperature", "Cel")]
    [InlineData("12000 lux", "illuminance", "klx")]
    [InlineData("1.2 kPa", "vapourPressureDeficit", "hPa")]
    [InlineData("300 K", "airTemperature", "Cel")]
    public void Read_NumberWithAnotherUnit_IsKeptAsideAsSuch(string cell, string channel, string unit)
        => Assert.Equal(CellKind.OtherUnit, Read(cell, channel, unit).Kind);

    [Theory]
    [InlineData("21.5 °C ok")]
    [InlineData("21.5 kPa")]
    [InlineData("21.5 x")]
    [InlineData("about 21")]
    [InlineData("21/5")]
    [InlineData("12:30")]
    [InlineData("21.5 22.5")]
    [InlineData("°C 21.5")]
    [InlineData("21e")]
    [InlineData("e5°C")]
    [InlineData("21ex°C")]
    public void Read_NumberWithAnythingElse_IsNotRead(string cell)
        => Assert.Equal(CellKind.NotRead, Read(cell, "airTemperature", "Cel").Kind);

    [Theory]
    [InlineData("21,5")]
    [InlineData("21,5 °C")]
    [InlineData("9,2e-08")]
    public void Read_OtherDecimalMark_IsKeptAsideAsSuch(string cell)
        => Assert.Equal(CellKind.OtherDecimal, Read(cell, "airTemperature", "Cel").Kind);

    [Theory]
    [InlineData("-999", -999)]
    [InlineData("1e30", 1e30)]
    [InlineData("3.4028235E+38", 3.4028235e38)]
    [InlineData("60.001", 60.001)]
    public void Read_ValueThatCannotBe_IsKeptAndNamedSo(string cell, double expected)
        => Assert.Equal((CellKind.Impossible, expected), Read(cell, "airTemperature", "Cel"));

    [Theory]
    [InlineData("60")]
    [InlineData("-40.0")]
    public void Read_ValueAtTheLimits_IsAValue(string cell) => Assert.Equal(CellKind.Value, Read(cell, "airTemperature", "Cel").Kind);

    [Theory]
    [InlineData("-999.0")]
    [InlineData("-999 °C")]
    [InlineData("'-999'")]
    [InlineData("")]
    public void Read_CodeOfTheNurseryFile_IsMissingInAllItsSpellings(string cell)
        => Assert.Equal(CellKind.Missing, Read(cell, "airTemperature", "Cel", ["-999"]).Kind);

    [Theory]
    [InlineData("kaputt", CellKind.Missing)]
    [InlineData("'kaputt'", CellKind.Missing)]
    [InlineData("kaput", CellKind.NotRead)]
    public void Read_WordOfTheNurseryFile_IsMissing(string cell, object expected)
        => Assert.Equal(expected, Read(cell, "airTemperature", "Cel", ["kaputt"]).Kind);

    [Fact]
    public void Expected_NumberOrSwitch_IsWhatACellMayHold()
    {
        Assert.Equal("a number like 21.5", Reader("airTemperature", "Cel", []).Expected);
        Assert.Equal("0 or 1, on or off, true or false, yes or no", Reader("valve", "1", []).Expected);
    }

    [Theory]
    [InlineData("NaN °C")]
    [InlineData("--- °C")]
    [InlineData("--- ")]
    [InlineData("\u2014°C")]
    [InlineData("NaN")]
    public void Read_WordForNoValue_IsCountedAsAWordEveryTime(string cell)
    {
        ValueReader reader = Reader("airTemperature", "Cel", []);
        for (int i = 0; i < 3; i++)
        {
            Assert.Equal(CellKind.Word, reader.Read(Encoding.UTF8.GetBytes(cell), out double value));
            Assert.True(double.IsNaN(value));
        }
    }

    [Theory]
    [InlineData("1", 1)]
    [InlineData("0.4", 0.4)]
    [InlineData("Ja", 1)]
    [InlineData("OFF", 0)]
    [InlineData("Fermé", 0)]
    public void Read_Switch_IsNumberOrWord(string cell, double expected) => Assert.Equal((CellKind.Value, expected), Read(cell, "valve", "1"));

    [Theory]
    [InlineData("100")]
    [InlineData("-1")]
    [InlineData("2")]
    [InlineData("half")]
    public void Read_SwitchBeyondOne_IsNotRead(string cell) => Assert.Equal(CellKind.NotRead, Read(cell, "valve", "1").Kind);

    [Theory]
    [InlineData("100", 1)]
    [InlineData("0", 0)]
    [InlineData("35 %", 0.35)]
    [InlineData("5E1", 0.5)]
    [InlineData("open", 1)]
    public void Read_SwitchInPercent_IsAShare(string cell, double expected)
    {
        (CellKind kind, double value) = Read(cell, "valve", "%");
        Assert.Equal(CellKind.Value, kind);
        Assert.Equal(expected, value, 12);
    }

    private static (CellKind Kind, double Value) Read(string cell, string channel, string unit, string[]? missing = null)
    {
        CellKind kind = Reader(channel, unit, missing ?? []).Read(Encoding.UTF8.GetBytes(cell), out double value);
        return (kind, value);
    }

    private static ValueReader Reader(string name, string code, string[] missing)
    {
        Channel channel = ChannelCatalogue.Get(name);
        Assert.True(UnitCatalogue.TryGet(channel.Quantity, code, out Unit? unit));
        var format = new NumberFormat('.', null);
        return new ValueReader(unit!, format, new MissingCodes(missing, format), channel.FailLow, channel.FailHigh);
    }
}
