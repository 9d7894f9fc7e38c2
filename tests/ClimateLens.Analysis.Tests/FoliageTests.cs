using ClimateLens.Analysis.Foliage;
using ClimateLens.Analysis.Hours;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Analysis.Stages;
using ClimateLens.Analysis.Uncertainty;
using ClimateLens.Nursery.Settings;
using ClimateLens.TestKit;
using NodaTime;

namespace ClimateLens.Analysis.Tests;

public sealed class FoliageTests
{
    private static readonly SpacingStep Spacing = new(new LocalDate(2025, 8, 4), "square", 12, null);

    private static double Wave(Instant at, double size, double seconds = 4000) => size * Math.Sin(at.ToUnixTimeSeconds() / seconds);

    /// <summary>A house whose outside is logged: 18 °C and 88 % inside, so that the balance can be solved.</summary>
    private static SyntheticHouse House(double outsideC = 3, double humidityPct = 88) => SyntheticHouse.Week("2025-W42", runInDays: 9)
        .WithAir(t => new Air(18 + Wave(t, 0.2), humidityPct + Wave(t, 1)))
        .WithSource("weather", 5, [("outsideTemperature", t => outsideC + Wave(t, 2, 13750)), ("globalRadiation", Sun)]);

    private static double Sun(Instant at) => Math.Max(0, 400 * Math.Cos((at.ToUnixTimeSeconds() - 43200) * Math.PI / 43200));

    private static SyntheticHouse With(SyntheticHouse house, Func<RiskRules, RiskRules> change) => house.WithRules(change(house.Input.House.Rules));

    [Fact]
    public void Leaf_ColdNightUnderBareGlass_IsColderThanAir_AndAScreenOrAWarmNightLess()
    {
        double Night(SyntheticHouse house) => ReviewPipeline.Run(house.Input).Hours.Where(h => h.Night).Average(h => h.LeafTemperatureC!.Value - h.AirTemperatureC!.Value);
        double cold = Night(House(outsideC: 0)), warm = Night(House(outsideC: 14));
        double screened = Night(House(outsideC: 0).WithColumn("screen", "screenPosition", t => 95 + Wave(t, 5)));

        // The top leaf of the check table (18 °C air, cover 8 °C, 0.1 m/s) is 2.42 K colder; the mean leaf sees some 0.3 to 0.7 of the cover.
        Assert.InRange(cold, -1.8, -0.3);
        Assert.True(screened > cold + 0.1, $"screened {screened}, bare {cold}");
        Assert.True(warm > cold + 0.1, $"warm {warm}, cold {cold}");
    }

    [Fact]
    public void Leaf_OffsetSetByTheGrower_RulesOverTheBalance()
    {
        SyntheticHouse house = With(House(), r => r with { LeafNightOffsetK = 2, SetByUser = r.SetByUser.Add("leafNightOffsetK"), CanopyDifference = false });
        Review review = ReviewPipeline.Run(house.Input);
        Assert.All(review.Hours.Where(h => h.Start.Hour is 1 or 2), h => Assert.Equal(h.AirTemperatureC!.Value - 2, h.LeafTemperatureC!.Value, 0.15) /* that of a dry leaf; dew warms it, transpiration cools it a little */);
    }

    [Fact]
    public void CanopySensor_TakesThePlaceOfTheAssumption()
    {
        SyntheticHouse house = House(humidityPct: 70).WithSource("canopy", 5, [("canopyTemperature", t => 17 + Wave(t, 0.2)), ("canopyHumidity", t => 95 + Wave(t, 1))]);
        Review without = ReviewPipeline.Run(House(humidityPct: 70).Input), with = ReviewPipeline.Run(house.Input);
        Assert.Equal(0, without.RiskHours!.Value);
        Assert.True(with.RiskHours!.Value > 80, $"{with.RiskHours}");
        Assert.Equal(16.2, with.Hours[2].LeafAirDewPointC!.Value, 0.4); // dew point of 17 °C and 95 % (Magnus form)
        Assert.Equal(18, with.Hours[2].AirTemperatureC!.Value, 0.25); // the hour still shows the main sensor
        Assert.DoesNotContain(with.ErrorShares, e => e.Cause is "canopyHumidity" or "canopyTemperature");
        Assert.DoesNotContain(with.NotKnown, u => u.What == "canopyAir");
    }

    [Fact]
    public void CanopySensor_SilentForHours_IsFilledByItsFittedDifference()
    {
        SyntheticHouse whole = House(humidityPct: 70).WithSource("canopy", 5, [("canopyTemperature", t => 17 + Wave(t, 0.2)), ("canopyHumidity", t => 90 + Wave(t, 1))]);
        Instant from = whole.Input.Period.Start + Duration.FromHours(60), to = from + Duration.FromHours(8);
        SyntheticHouse gap = House(humidityPct: 70).WithSource("canopy", 5, [("canopyTemperature", t => t >= from && t < to ? double.NaN : 17 + Wave(t, 0.2)), ("canopyHumidity", t => t >= from && t < to ? double.NaN : 90 + Wave(t, 1))]);
        Review measured = ReviewPipeline.Run(whole.Input), filled = ReviewPipeline.Run(gap.Input);
        for (int h = 61; h < 67; h++)
        {
            Assert.Equal(measured.Hours[h].LeafAirDewPointC!.Value, filled.Hours[h].LeafAirDewPointC!.Value, 0.5);
        }

        Assert.Contains(filled.LeafBasis!.Modelled, m => m.Contains("fitted", StringComparison.Ordinal));
        Assert.DoesNotContain(measured.LeafBasis!.Modelled, m => m.Contains("fitted", StringComparison.Ordinal));
    }

    [Fact]
    public void LeafSensor_ScoresTheModel_ThatWouldHaveRuledWithoutIt()
    {
        Review without = ReviewPipeline.Run(House().Input);
        SyntheticHouse house = House().WithColumn("leaf", "leafTemperature", t => 16 + Wave(t, 0.3));
        Review with = ReviewPipeline.Run(house.Input);
        Assert.Empty(without.LeafScores);
        Assert.Equal(["night", "day"], with.LeafScores.Select(s => s.Part));
        double modelled = without.Hours.Where(h => h.Night).Average(h => h.LeafTemperatureC!.Value);
        Assert.Equal(modelled - 16, with.LeafScores[0].BiasK, 0.3);
        Assert.InRange(with.LeafScores[0].BiasK, with.LeafScores[0].BiasLowK!.Value, with.LeafScores[0].BiasHighK!.Value);
    }

    [Fact]
    public void ClosedCanopy_IsDamperThanTheSensor_UnlessSwitchedOff()
    {
        SyntheticHouse open = House(), closed = open.WithHouse(open.Input.House with { Crops = [open.Input.House.Crops[0] with { Spacing = [Spacing] }] });
        SyntheticHouse off = With(closed, r => r with { CanopyDifference = false });
        ReviewHour damp = ReviewPipeline.Run(closed.Input).Hours[2], plain = ReviewPipeline.Run(off.Input).Hours[2];
        Assert.InRange(damp.LeafAirDewPointC!.Value - plain.LeafAirDewPointC!.Value, 0.1, 0.6);
        Assert.Equal(plain.DewPointC!.Value, plain.LeafAirDewPointC!.Value, 0.001);
        Assert.DoesNotContain(ReviewPipeline.Run(off.Input).ErrorShares, e => e.Cause.StartsWith("canopy", StringComparison.Ordinal));
    }

    [Fact]
    public void WetnessSensor_Rules_OnlyWhenTheNurseryFileSaysSo()
    {
        SyntheticHouse house = House(humidityPct: 60).WithColumn("wet", "leafWetness", t => t.InUtc().Hour is >= 2 and < 6 ? 90 : 5);
        Assert.DoesNotContain(ReviewPipeline.Run(house.Input).Hours, h => h.Wet == true);
        Review ruled = ReviewPipeline.Run(With(house, r => r with { WetnessSensorRules = true }).Input);
        Assert.Equal(7 * 4, ruled.Hours.Count(h => h.Wet == true));
        Assert.Equal(7, ruled.WetPeriods!.Value.Length);
    }

    [Fact]
    public void ErrorShares_AddUpToOne_AndTheirVarianceAgreesWithTheDraws()
    {
        foreach (double drier in (double[])[-1, 1, 3])
        {
            SyntheticHouse house = SyntheticHouse.Week("2025-W42", runInDays: 9).WithAir(t => SyntheticHouse.ChangingAir(t) is Air a ? new Air(a.TemperatureC, a.RelativeHumidityPct - drier) : default)
                .WithRules(new RiskRules { CanopyDifference = false });
            HousePeriod period = LeafState.Add(CanopyCover.Add(AirStates.Add(Quality.Check(Alignment.Align(house.Input)))));
            HourTable hours = HourTable.Of(period);
            FoliageHours foliage = new(period, hours);
            BiasDraws draws = BiasDraws.For(period);
            double[] none = new double[hours.Count];
            double[] counts = [.. Enumerable.Range(0, BiasDraws.Count).Select(d =>
            {
                foliage.UnderErrors(draws.At(d), 0, none);
                return (double)foliage.Risk.AsSpan(hours.FirstOfPeriod).Count(true);
            })];
            double mean = counts.Average(), drawn = Math.Sqrt(counts.Sum(c => (c - mean) * (c - mean)) / (counts.Length - 1));
            ErrorShare[] shares = [.. ErrorShares.Of(period, hours, new FoliageDraws(() => new FoliageHours(period, hours)))];
            double firstOrder = Math.Sqrt(shares.Sum(s => s.Hours * s.Hours));
            Assert.Equal(1, shares.Sum(s => s.Share), 0.01);
            Assert.InRange(firstOrder / drawn, 0.7, 1.3); // JCGM 100:2008 5.1.2 against JCGM 101:2008; the count is curved in its causes
            Assert.Contains(shares[0].Cause, (string[])["relativeHumidity", "leafTemperature"]);
        }
    }

    [Fact]
    public void Run_WithoutWeather_TakesTheNightOffset_AndNamesIt()
    {
        Review review = ReviewPipeline.Run(SyntheticHouse.Week("2025-W42").WithAir(SyntheticHouse.AutumnAir).Input);
        MethodNote note = review.Provenance.Methods.Single(m => m.What == "leaf temperature");
        Assert.StartsWith("Not measured: air temperature, less 1 K between sunset and sunrise", note.How, StringComparison.Ordinal);
        Assert.Contains("energy balance", ReviewPipeline.Run(House().Input).Provenance.Methods.Single(m => m.What == "leaf temperature").How, StringComparison.Ordinal);
    }
}
