using System.Globalization;
using System.Text;
using ClimateLens.Logs.Cells;
using CsCheck;

namespace ClimateLens.Logs.Tests.Cells;

/// <summary>The quick way to read a number, held to the framework's parser and to the longer way.</summary>
public sealed class ShortNumberTests
{
    private static readonly Gen<string> Cell = Gen.Frequency(
        (4, Gen.Char["0123456789"].Array[0, 9].Select(c => new string(c))),
        (4, Gen.Char["0123456789.-"].Array[0, 9].Select(c => new string(c))),
        (1, Gen.Char["0123456789.,-+eE \u00B0;\0"].Array[0, 9].Select(c => new string(c))));

    [Theory]
    [InlineData("21.5", 21.5, 1)]
    [InlineData("-0.25", -0.25, 2)]
    [InlineData("0", 0, 0)]
    [InlineData("7.", 7, 0)]
    [InlineData(".5", 0.5, 1)]
    [InlineData("12345678", 12345678, 0)]
    [InlineData("-1234567", -1234567, 0)]
    [InlineData("1234.567", 1234.567, 3)]
    [InlineData("-.000001", -0.000001, 6)]
    public void TryRead_OfANumber_IsTheNumber(string cell, double expected, int decimals)
    {
        Assert.True(TryRead("x;" + cell + ";1234567", 2, 2 + cell.Length, '.', '.', out double value, out int digits));
        Assert.Equal((expected, decimals), (value, digits));
        Assert.True(TryRead("12345678;" + cell, 9, 9 + cell.Length, '.', '.', out value, out _));
        Assert.Equal(expected, value);
        Assert.True(TryRead(cell + ";12345678", 0, cell.Length, '.', '.', out value, out _));
        Assert.Equal(expected, value);
    }

    [Theory]
    [InlineData("")]
    [InlineData("-")]
    [InlineData(".")]
    [InlineData("-.")]
    [InlineData("1.2.3")]
    [InlineData("1-2")]
    [InlineData("--1")]
    [InlineData("1e3")]
    [InlineData("1 2")]
    [InlineData("1,5")]
    [InlineData("123456789")]
    [InlineData("NaN")]
    public void TryRead_OfAnythingElse_IsFalse(string cell)
        => Assert.False(TryRead("x;" + cell + ";1234567", 2, 2 + cell.Length, '.', '.', out _, out _));

    [Fact]
    public void TryRead_WithoutMark_TakesNoNulForOne()
    {
        Assert.False(TryRead("12\u0000 4;12345", 0, 5, '\0', '\0', out _, out _));
        Assert.True(TryRead("124;1234567", 0, 3, '\0', '\0', out double value, out _));
        Assert.Equal(124, value);
    }

    [Fact]
    public void TryRead_WhereItReads_AgreesWithTheLongerWay()
        => Gen.Select(Cell, Cell, Gen.Bool).Sample((before, cell, either) =>
        {
            string row = $"{before};{cell};12345678";
            int start = Encoding.UTF8.GetByteCount(before) + 1;
            byte[] bytes = Encoding.UTF8.GetBytes(cell);
            byte other = (byte)(either ? ',' : '.');
            int at = 0;
            bool expected = NumberCell.TryScanPlain(bytes, ref at, (byte)'.', other, out double number, out int decimals) && at == bytes.Length;
            bool read = TryRead(row, start, start + bytes.Length, '.', (char)other, out double value, out int digits);
            Assert.True(!read || expected, cell);
            Assert.Equal(expected && bytes.Length <= 8 && bytes[0] != '+', read);
            if (read)
            {
                Assert.Equal((BitConverter.DoubleToInt64Bits(number), decimals), (BitConverter.DoubleToInt64Bits(value), digits));
                Assert.Equal(double.Parse(cell.Replace(',', '.'), NumberStyles.Float, CultureInfo.InvariantCulture), value);
            }
        });

    private static bool TryRead(string row, int start, int end, char mark, char other, out double value, out int decimals)
        => ShortNumber.TryRead(Encoding.UTF8.GetBytes(row), start, end, (byte)mark, (byte)other, out value, out decimals);
}
