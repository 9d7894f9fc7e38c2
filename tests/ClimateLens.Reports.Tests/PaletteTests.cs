using System.Globalization;
using ClimateLens.Reports.Charts;

namespace ClimateLens.Reports.Tests;

/// <summary>Contrast by the formula of WCAG 2.2 (relative luminance, success criteria 1.4.3 and 1.4.11).</summary>
public sealed class PaletteTests
{
    [Fact]
    public void Contrast_OfValuesTabledElsewhere_IsTheirs()
    {
        Assert.Equal(21, Contrast("#000000", "#ffffff"), 2);
        Assert.Equal(4.54, Contrast("#767676", "#ffffff"), 2); // the lightest grey that passes 4.5 on white: WebAIM, "Contrast and Color Accessibility" (from memory)
    }

    [Theory]
    [InlineData(Palette.Temperature)]
    [InlineData(Palette.DewPoint)]
    [InlineData(Palette.Vpd)]
    [InlineData(Palette.Margin)]
    [InlineData(Palette.Late)]
    [InlineData(Palette.Watering)]
    [InlineData(Palette.Ink)]
    public void Colour_OfALineWithItsLabel_Has4_5To1OnWhite(string colour) => Assert.True(Contrast(colour, "#ffffff") >= 4.5, $"{colour}: {Contrast(colour, "#ffffff"):0.00}");

    private static double Contrast(string one, string other)
    {
        double a = Luminance(one), b = Luminance(other);
        return (Math.Max(a, b) + 0.05) / (Math.Min(a, b) + 0.05);
    }

    private static double Luminance(string colour)
    {
        double[] c = [.. Enumerable.Range(0, 3).Select(i => 1 + (2 * i)).Select(i => int.Parse(colour.AsSpan(i, 2), NumberStyles.HexNumber, CultureInfo.InvariantCulture) / 255.0).Select(v => v <= 0.04045 ? v / 12.92 : Math.Pow((v + 0.055) / 1.055, 2.4))];
        return (0.2126 * c[0]) + (0.7152 * c[1]) + (0.0722 * c[2]);
    }
}
