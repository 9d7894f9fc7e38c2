using ClimateLens.HouseSimulator;

namespace ClimateLens.EndToEnd.Tests.Simulator;

/// <summary>Houses that differ in what nobody logs.</summary>
public sealed class HouseNatureTests
{
    [Fact]
    public void Drawn_ManyHouses_LieInTheirRangesAndDiffer()
    {
        HouseNature[] all = [.. Enumerable.Range(1, 200).Select(seed => HouseNature.Drawn((ulong)seed, "1"))];
        Assert.All(all, n => Assert.True(
            n.FilmKgM2 is >= 0.05 and <= 0.2 && n.LeafAirFactor is >= 0.5 and <= 2 && n.CanopyExchangeFactor is >= 0.4 and <= 2.5
            && n.PoreFactor is >= 0.5 and <= 2 && n.LeafAreaFactor is >= 0.7 and <= 1.4 && n.RoofTransmission is >= 0.55 and <= 0.75, n.ToString()));
        Assert.True(all.Average(n => n.CanopyExchangeFactor) is > 1 and < 1.3); // of a draw even on the logarithm: (2.5 - 0.4)/ln(2.5/0.4) = 1.15
        Assert.Equal(200, all.Distinct().Count());
        Assert.Equal(HouseNature.Drawn(7, "1"), HouseNature.Drawn(7, "1"));
        Assert.NotEqual(HouseNature.Drawn(7, "1"), HouseNature.Drawn(7, "2"));
    }

    /// <summary>Where the canopy breathes least, its hours stay within the 5 K, and 99 of 100 within the 25 points, that were seen in rose [WESTREENEN20].</summary>
    [Fact]
    public void CanopyThatBreathesLeast_IsAboutAsFarFromTheHouseAsInRose()
    {
        HouseRun house = NurseryRun.Of(3, _ => HouseNature.Usual with { CanopyExchangeFactor = 0.4 }).HouseOne;
        List<double> points = [];
        for (int minute = Gannet.Run.FirstMinute; minute + 60 < house.Minutes.Length; minute += 60)
        {
            HouseMinute[] hour = house.Minutes[minute..(minute + 60)];
            Assert.InRange(hour.Average(m => m.CanopyC - m.AirC), -5, 5);
            points.Add(Math.Abs(hour.Average(m => m.CanopyHumidityPct - m.HumidityPct)));
        }

        points.Sort();
        Assert.InRange(points[(int)(0.99 * points.Count)], 20, 25);
        Assert.InRange(points[^1], 25, 30);
    }
}
