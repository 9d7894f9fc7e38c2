using System.Globalization;
using System.Text;
using ClimateLens.Logs.Cells;
using CsCheck;

namespace ClimateLens.Logs.Tests.Cells;

public sealed class NumberCellTests
{
    private static readonly NumberFormat Point = new('.', null);
    private static readonly NumberFormat Comma = new(',', '.');
    private static readonly NumberFormat Either = new('.', null, either: true);

    [Theory]
    [InlineData("21.5", 21.5)]
    [InlineData("-3.2", -3.2)]
    [InlineData("+7", 7)]
    [InlineData(".5", 0.5)]
    [InlineData("5.", 5)]
    [InlineData("1.05938e-007", 1.05938e-7)]
    [InlineData("9E3", 9000)]
    [InlineData("0.000100083", 0.000100083)]
    [InlineData("12.658579999999999", 12.658579999999999)]
    [InlineData("123456789012345678901234567890", 1.2345678901234568e29)]
    public void TryRead_Number_IsRead(string text, double expected) => Assert.Equal(expected, Read(text, Point));

    [Theory]
    [InlineData("1,5")]
    [InlineData("NaN")]
    [InlineData("Infinity")]
    [InlineData("-inf")]
    [InlineData("1e999")]
    [InlineData("0x10")]
    [InlineData("12 °C")]
    [InlineData("1.2.3")]
    [InlineData("--1")]
    [InlineData("+")]
    [InlineData(".")]
    [InlineData("e5")]
    [InlineData("1e")]
    [InlineData("1 000")]
    [InlineData("12:30")]
    [InlineData("٣")]
    [InlineData("")]
    public void TryRead_NoNumber_IsRefusedWhole(string text) => Assert.Null(Read(text, Point));

    [Theory]
    [InlineData("1.234,5", 1234.5)]
    [InlineData("1.234.567", 1234567)]
    [InlineData("1234,5", 1234.5)]
    [InlineData("123.456,5", 123456.5)]
    [InlineData("-0,25", -0.25)]
    public void TryRead_GroupsOfThree_AreRead(string text, double expected) => Assert.Equal(expected, Read(text, Comma));

    [Theory]
    [InlineData("21.5")]
    [InlineData("1.23,4")]
    [InlineData("1.2345")]
    [InlineData("1234.567")]
    [InlineData(".123")]
    [InlineData("1..234")]
    [InlineData("1,234.567")]
    [InlineData("1.234.")]
    public void TryRead_OtherGroups_AreRefused(string text) => Assert.Null(Read(text, Comma));

    [Theory]
    [InlineData("9,22917e-008", 9.22917e-8)]
    [InlineData("1,2E+03", 1200)]
    [InlineData("1,5", 1.5)]
    [InlineData("12-", -12)]
    [InlineData("12,5 -", -12.5)]
    [InlineData("1.234,5-", -1234.5)]
    [InlineData("\u22123,2", -3.2)]
    [InlineData("\u20133,2", -3.2)]
    [InlineData("- 3,2", -3.2)]
    [InlineData("1'234,5", 1234.5)]
    [InlineData("1\u2019234", 1234)]
    [InlineData("1\u202F234,5", 1234.5)]
    [InlineData("1\u2009234\u2009567", 1234567)]
    [InlineData("2,5D-03", 0.0025)]
    public void TryRead_OddButOneMeaning_IsRead(string text, double expected) => Assert.Equal(expected, Read(text, Comma));

    [Theory]
    [InlineData("1 234,5")] // a plain blank may part two numbers
    [InlineData("1'23")]
    [InlineData("1'2345")]
    [InlineData("1'234\u2009567")]
    [InlineData("-12-")]
    [InlineData("12--")]
    [InlineData("1e5-")]
    [InlineData("1e-")]
    [InlineData("1e--5")]
    [InlineData("1e- 5")]
    [InlineData("12 5")]
    [InlineData("\u2212")]
    [InlineData("1,5,2")]
    [InlineData("1,5.234")]
    public void TryRead_OddWithTwoMeaningsOrNone_IsRefused(string text) => Assert.Null(Read(text, Comma));

    [Theory]
    [InlineData("21.5", 21.5)]
    [InlineData("21,5", 21.5)]
    [InlineData("1,5", 1.5)]
    [InlineData("1.234", 1.234)]
    [InlineData("1,234", 1.234)]
    [InlineData("1.234,5", 1234.5)]
    [InlineData("1,234.5", 1234.5)]
    [InlineData("1.234.567", 1234567)]
    [InlineData("1,234,567.25", 1234567.25)]
    [InlineData("9,22917e-008", 9.22917e-8)]
    [InlineData("9.22917e-008", 9.22917e-8)]
    public void TryRead_EitherMark_IsTheFraction(string text, double expected) => Assert.Equal(expected, Read(text, Either));

    [Theory]
    [InlineData("1.23,4")]
    [InlineData("1.2.3")]
    [InlineData("1,234.567,8")]
    [InlineData("0,770.753")] // two numbers that ran into each other
    [InlineData("10.10.2025")]
    [InlineData("1.234,567.8")]
    public void TryRead_EitherMarkWithBrokenGroups_IsRefused(string text) => Assert.Null(Read(text, Either));

    [Theory]
    [InlineData(127, true)]
    [InlineData(128, false)]
    public void TryRead_Digits_AreReadUpToALength(int length, bool read) => Assert.Equal(read, Read(new string('1', length), Point) is not null);

    [Theory]
    [InlineData(16, true)]
    [InlineData(17, false)]
    public void TryRead_Groups_AreReadUpToACount(int groups, bool read)
        => Assert.Equal(read ? double.Parse("1" + string.Concat(Enumerable.Repeat("234", groups)), CultureInfo.InvariantCulture) : null, Read("1" + string.Concat(Enumerable.Repeat(".234", groups)), Comma));

    /// <summary>The mark of Arabic numbers, U+066B, is more than a byte long.</summary>
    [Fact]
    public void TryRead_DecimalMarkOfSeveralBytes_IsRead() => Assert.Equal(21.5, Read("21\u066B5", new NumberFormat('\u066B', null)));

    [Theory]
    [InlineData(' ', "1 234.5")]
    [InlineData(' ', "1 234,5")]
    [InlineData('.', "1.234,5")]
    public void TryRead_WithEither_KeepsTheGroupMark(char group, string text) => Assert.Equal(1234.5, Read(text, new NumberFormat(',', group).WithEither()));

    [Fact]
    public void NumberFormat_Marks_AreThoseGiven()
    {
        Assert.Equal(((byte)',', (byte)','), (Comma.DecimalByte, Comma.OtherDecimalByte));
        Assert.Equal(((byte)'.', (byte)','), (Either.DecimalByte, Either.OtherDecimalByte));
        Assert.Equal((byte)'.', new NumberFormat(',', null, either: true).OtherDecimalByte);
        Assert.Equal((byte)0, new NumberFormat('\u066B', null).DecimalByte);
        Assert.Equal(("a number like 21,5", "a number like 21.5 or 21,5"), (Comma.Example, Either.Example));
    }

    [Theory]
    [InlineData(' ', "1 234,5")]
    [InlineData(' ', "1\u00A0234,5")]
    [InlineData('\u00A0', "1 234,5")]
    public void TryRead_BlankAsGroup_MayBeAnyBlank(char group, string text) => Assert.Equal(1234.5, Read(text, new NumberFormat(',', group)));

    /// <summary>Whatever is read of digits and one comma, where the mark is a point, is never the digits run together.</summary>
    [Fact]
    public void TryRead_OtherMark_NeverRunsDigitsTogether()
        => Gen.Select(Gen.Int[0, 999], Gen.Int[0, 9999]).Sample((whole, fraction) => Read(FormattableString.Invariant($"{whole},{fraction}"), Point) is null);

    [Fact]
    public void TryRead_AnyBytes_EndsWithAFiniteNumberOrNone()
        => Gen.Select(Gen.Char["0123456789.,'-+eEdD \u00A0\u2009\u2212°%C"].Array[0, 24], Gen.Bool).Sample((chars, either) =>
            Read(new string(chars), either ? Either : Comma) is not double value || double.IsFinite(value));

    [Fact]
    public void TryRead_NoBreakSpaceAsGroup_IsRead() => Assert.Equal(12345.5, Read("12\u00A0345,5", new NumberFormat(',', '\u00A0')));

    [Fact]
    public void TryRead_AnyDoubleAsWritten_ComesBackToTheBit()
        => Gen.Double.Where(double.IsFinite).Sample(value =>
        {
            string text = value.ToString("R", CultureInfo.InvariantCulture);
            return Read(text, Point) == value && Read(text.Replace('.', ','), new NumberFormat(',', null)) == value;
        });

    [Fact]
    public void TryRead_ShortDecimals_AgreeWithTheFrameworkToTheBit()
        => Gen.Select(Gen.Long[-9_999_999_999_999_999, 9_999_999_999_999_999], Gen.Int[0, 12]).Sample((digits, places) =>
        {
            string sign = digits < 0 ? "-" : "";
            string all = Math.Abs(digits).ToString(CultureInfo.InvariantCulture).PadLeft(places + 1, '0');
            string text = places == 0 ? sign + all : $"{sign}{all[..^places]}.{all[^places..]}";
            return Read(text, Point) == double.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture);
        });

    private static double? Read(string text, NumberFormat format)
        => NumberCell.TryRead(Encoding.UTF8.GetBytes(text), format, out double value) ? value : null;
}
