using ClimateLens.Nursery.Channels;

namespace ClimateLens.Nursery.Tests.Channels;

public class MeasureTextTests
{
    [Theory]
    [InlineData("120 mL", 120)]
    [InlineData("120ml", 120)]
    [InlineData("0.25 L", 250)]
    [InlineData("4 fl oz", 118.294118250)] // 4 × 29.5735295625 mL
    [InlineData("1 gal", 3785.411784)]
    public void TryVolume_NumberAndUnit_IsMillilitres(string text, double millilitres)
    {
        Assert.True(MeasureText.TryVolume(text, out double read));
        Assert.Equal(millilitres, read, 6);
    }

    [Theory]
    [InlineData("2 L/h", 2)]
    [InlineData("0.5 gph", 1.892705892)] // half of 3.785411784
    [InlineData("1 gpm", 227.12470704)]
    [InlineData("33 mL/min", 1.98)]
    [InlineData("1 L/min", 60)]
    public void TryFlow_NumberAndUnit_IsLitresAnHour(string text, double litres)
    {
        Assert.True(MeasureText.TryFlow(text, out double read));
        Assert.Equal(litres, read, 8);
    }

    [Theory]
    [InlineData("50 ppm", 50)]
    [InlineData("50 mg/L", 50)]
    [InlineData("0.05 g/L", 50)]
    public void TryConcentration_NumberAndUnit_IsMilligramsALitre(string text, double milligrams)
    {
        Assert.True(MeasureText.TryConcentration(text, out double read));
        Assert.Equal(milligrams, read, 9);
    }

    [Theory]
    [InlineData("120")]
    [InlineData("mL")]
    [InlineData("")]
    [InlineData("0 mL")]
    [InlineData("-5 mL")]
    [InlineData("1,5 mL")] // a decimal comma is not guessed at
    [InlineData("1.2.3 mL")]
    [InlineData("120 mg")]
    public void TryVolume_Unclear_IsRefused(string text) => Assert.False(MeasureText.TryVolume(text, out _));

    [Theory]
    [InlineData("47,42, 45 24;12.5", 5)]
    [InlineData("0", 1)]
    public void TryAmounts_List_IsRead(string text, int count)
    {
        Assert.True(MeasureText.TryAmounts(text, out double[] amounts));
        Assert.Equal(count, amounts.Length);
    }

    [Theory]
    [InlineData("")]
    [InlineData("47,x")]
    [InlineData("47,-1")]
    public void TryAmounts_Unclear_IsRefused(string text) => Assert.False(MeasureText.TryAmounts(text, out _));
}
