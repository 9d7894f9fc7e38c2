using ClimateLens.Analysis.Causes;
using ClimateLens.Science.Balance;
using ClimateLens.Science.Statistics;

namespace ClimateLens.Analysis.Tests.Causes;

/// <summary>The learned response against made-up houses of which all is known.</summary>
public sealed class LearnedResponseTests
{
    private const double RiseGm3 = 3, LingersHours = 2;

    [Fact]
    public void Of_HouseThatFollowsItsDrivers_BeatsBothReferencesAndFindsTheWater()
    {
        BalanceInputs house = House(days: 28, noise: 0.1);
        LearnedResponse learned = LearnedResponse.Of(house)!;
        Assert.True(learned.Score.HasSkill, $"{learned.Score}");
        Assert.Equal(7, learned.Score.HeldOutDays);
        (double value, double one, double other) = learned.Effect(house, house with { LeafWetted = new double[house.Steps] }, MeanAfterWater(house));
        double truth = MeanAfterWater(house)(Lingering(house.LeafWetted.ToArray()));
        Assert.InRange(value / truth, 0.8, 1.2);
        Assert.True(Math.Min(one, other) > 0, $"{one}, {other}");
    }

    [Fact]
    public void Of_Noise_HasNoMoreSkillThanAConstant()
    {
        BalanceInputs house = House(days: 28, noise: 0.1);
        SeededRandom random = new(3);
        // A constant beats the noisy mean of 21 days by 1 - 1/(1 + 1/21) and no more.
        Assert.InRange(LearnedResponse.Of(house with { HumidityGm3 = Enumerable.Range(0, house.Steps).Select(_ => 12 + random.NextNormal()).ToArray() })!.Score.DailyCurve.Skill, -1, 1 - (21.0 / 22) + 0.02);
    }

    [Fact]
    public void Of_SameReadings_GivesTheSame()
        => Assert.Equal(LearnedResponse.Of(House(21, 0.2))!.Score.ResidualGm3.ToArray(), LearnedResponse.Of(House(21, 0.2))!.Score.ResidualGm3.ToArray());

    [Fact]
    public void Of_FourDays_LearnsNothing() => Assert.Null(LearnedResponse.Of(House(4, 0.1)));

    [Fact]
    public void Of_ColumnThatIsNotLogged_GoesWithoutIt()
    {
        LearnedResponse learned = LearnedResponse.Of(House(28, 0.1) with { SunWm2 = default })!;
        Assert.True(double.IsFinite(learned.Score.DailyCurve.Skill));
    }

    private static Func<double[], double> MeanAfterWater(BalanceInputs house)
        => effect => effect.Where((_, i) => house.LeafWetted.Span[Math.Max(0, i - 8)..(i + 1)].ToArray().Any(w => w > 0)).Average();

    /// <summary>Humidity follows outside and sun; water puts <see cref="RiseGm3"/> on it, which fades.</summary>
    private static BalanceInputs House(int days, double noise)
    {
        SeededRandom random = new(11);
        int steps = 96 * days;
        double[] humidity = new double[steps], air = new double[steps], outside = new double[steps], sun = new double[steps], water = new double[steps];
        for (int day = 0; day < days; day++)
        {
            double wet = 6 + (4 * random.NextDouble()), bright = 100 + (300 * random.NextDouble());
            int at = random.NextDouble() < 0.6 ? (96 * day) + 30 + (int)(40 * random.NextDouble()) : -1;
            for (int i = 96 * day; i < 96 * (day + 1); i++)
            {
                (outside[i], air[i]) = (wet, 20);
                sun[i] = bright * Math.Max(0, Math.Sin(2 * Math.PI * ((i % 96) - 24) / 96));
                water[i] = i == at ? 1 : 0;
            }
        }

        double[] fading = Lingering(water);
        for (int i = 0; i < steps; i++)
        {
            humidity[i] = 3 + outside[i] + (0.01 * sun[i]) + fading[i] + (noise * random.NextNormal());
        }

        return new BalanceInputs
        {
            StepHours = 0.25,
            Day = Enumerable.Range(0, steps).Select(i => i / 96).ToArray(),
            HumidityGm3 = humidity,
            AirC = air,
            OutsideGm3 = outside,
            SunWm2 = sun,
            LeafWetted = water,
            FloorWetted = new double[steps],
        };
    }

    private static double[] Lingering(double[] water)
    {
        double[] fading = new double[water.Length];
        for (int i = 0; i < water.Length; i++)
        {
            fading[i] = ((i == 0 ? 0 : fading[i - 1]) * Math.Exp(-0.25 / LingersHours)) + (RiseGm3 * water[i]);
        }

        return fading;
    }
}
