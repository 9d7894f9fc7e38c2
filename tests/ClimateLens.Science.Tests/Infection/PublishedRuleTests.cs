using ClimateLens.Science.Infection;

namespace ClimateLens.Science.Tests.Infection;

/// <summary>Rules that are plain limits: each case is a case of the published words.</summary>
public class PublishedRuleTests
{
    [Fact]
    public void GerberaRule_EdgesOfTheWords_AreNotAGreatRisk()
    {
        Assert.Equal(1, Gerbera(71, 1499));
        Assert.Equal(0, Gerbera(70, 1499)); // more than 70 %
        Assert.Equal(0, Gerbera(71, 1500)); // less than 1500 J/cm²
    }

    [Fact]
    public void GerberaRule_UnknownDays_AreNotKnownUnlessAnotherDayDecides()
    {
        Assert.True(double.IsNaN(Gerbera(double.NaN, 1000)));
        Assert.Equal(0, Gerbera(double.NaN, 1600));
        double[] great = new double[5];
        GerberaRule.Of([90, 90, 90, 90, 90], [1000, 1000, 1000, 1000, 1000], great);
        Assert.All(great, day => Assert.True(double.IsNaN(day))); // the days before the first are not known
    }

    [Theory]
    [InlineData(90, 70, 10, 35, 1)] // every edge belongs to it
    [InlineData(99, 40, 28, 25, 1)]
    [InlineData(89.9, 60, 20, 25, 0)] // night not damp enough
    [InlineData(95, 70.1, 20, 25, 0)] // day too damp
    [InlineData(95, 39.9, 20, 25, 0)] // day too dry
    [InlineData(95, 60, 9.9, 25, 0)]
    [InlineData(95, 60, 28.1, 35, 0)]
    [InlineData(double.NaN, 60, 20, 25, double.NaN)]
    [InlineData(double.NaN, 80, 20, 25, 0)] // whatever the night was
    public void Rose_NightAndDay_FavoursPowderyMildewWithinTheLimits(
        double night, double day, double mean, double highest, double expected)
    {
        Assert.Equal(expected, Mildew(PowderyMildewLimits.Rose, night, day, mean, highest));
    }

    [Fact]
    public void Poinsettia_DayOf30Degrees_DoesNotFavourPowderyMildew()
    {
        Assert.Equal(0, Mildew(PowderyMildewLimits.Poinsettia, 95, 60, 24, 30));
        Assert.Equal(1, Mildew(PowderyMildewLimits.Poinsettia, 95, 60, 24, 29.9));
        Assert.Equal(double.NaN, Mildew(PowderyMildewLimits.Poinsettia, 95, 60, 24, double.NaN));
    }

    [Fact]
    public void HoursFrom_KnownAndUnknownSteps_CountsBoth()
    {
        Assert.Equal(new KnownHours(0.5, 1), GrowerLimits.HoursFrom([85, double.NaN, 84.9], GrowerLimits.AdvisedHumidityPct, 1800));
    }

    [Fact]
    public void WetWithinADay_SixWetHoursInAnyPlace_PassTheLimit()
    {
        double[] wet = new double[48];
        wet.AsSpan(10, 3).Fill(1);
        wet.AsSpan(30, 3).Fill(1);
        (double[] least, double[] most) = Rolling(wet);
        Assert.Equal(6, least[32]); // hours 9 to 32
        Assert.Equal(6, most[32]);
        Assert.Equal(6, least[33]); // hours 10 to 33
        Assert.Equal(5, least[34]); // the first wet hour is more than a day ago
    }

    [Fact]
    public void WetWithinADay_UnknownHours_WidenTheAnswer()
    {
        double[] wet = new double[48];
        wet.AsSpan(24, 4).Fill(1);
        wet.AsSpan(30, 3).Fill(double.NaN);
        (double[] least, double[] most) = Rolling(wet);
        Assert.Equal((4, 7), (least[40], most[40]));
        Assert.Equal((0, 23), (least[0], most[0])); // only one hour is known
        Assert.Throws<ArgumentOutOfRangeException>(() => GrowerLimits.WetWithinADay(wet, 7000, least, most));
    }

    private static double Gerbera(double humidity, double radiation)
    {
        double[] great = new double[9];
        double[] humidities = new double[9], radiations = new double[9];
        Array.Fill(humidities, 90);
        Array.Fill(radiations, 500);
        (humidities[1], radiations[6]) = (humidity, radiation); // day 7 and day 2 before
        GerberaRule.Of(humidities, radiations, great);
        return great[8];
    }

    private static double Mildew(PowderyMildewLimits limits, double night, double day, double mean, double highest)
    {
        double[] answer = new double[1];
        limits.Of([new PowderyMildewDay(night, day, mean, highest)], answer);
        return answer[0];
    }

    private static (double[] Least, double[] Most) Rolling(double[] wet)
    {
        double[] least = new double[wet.Length], most = new double[wet.Length];
        GrowerLimits.WetWithinADay(wet, 3600, least, most);
        return (least, most);
    }
}
