using ClimateLens.Science.Statistics;
using CsCheck;

namespace ClimateLens.Science.Tests.Statistics;

public class SeededRandomTests
{
    [Fact]
    public void NextUInt64_StateOneTwoThreeFour_GivesThePublishedNumbers()
    {
        // Output of the authors' reference program, as held by the tests of the rand_xoshiro crate and others.
        var random = new SeededRandom(1, 2, 3, 4);
        ulong[] expected =
        [
            11520, 0, 1509978240, 1215971899390074240, 1216172134540287360, 607988272756665600, 16172922978634559625,
            8476171486693032832, 10595114339597558777, 2904607092377533576,
        ];
        Assert.Equal(expected, expected.Select(_ => random.NextUInt64()));
    }

    [Fact]
    public void SplitMix64_Seed1234567_GivesThePublishedNumbers()
    {
        // Rosetta Code, "Pseudo-random numbers/Splitmix64".
        ulong state = 1234567;
        ulong[] expected =
            [6457827717110365317, 3203168211198807973, 9817491932198370423, 4593380528125082431, 16408922859458223821];
        Assert.Equal(expected, expected.Select(_ => SeededRandom.SplitMix64(ref state)));
    }

    [Fact]
    public void Seed_FillsTheStateWithSplitMix64()
    {
        ulong state = 2025;
        ulong a = SeededRandom.SplitMix64(ref state), b = SeededRandom.SplitMix64(ref state);
        ulong c = SeededRandom.SplitMix64(ref state), d = SeededRandom.SplitMix64(ref state);
        SeededRandom seeded = new(2025), filled = new(a, b, c, d);
        Assert.Equal(Enumerable.Range(0, 20).Select(_ => filled.NextUInt64()), Enumerable.Range(0, 20).Select(_ => seeded.NextUInt64()));
    }

    [Fact]
    public void SameSeed_GivesTheSameNormals_AndAnotherSeedOthers()
    {
        SeededRandom one = new(7), same = new(7), other = new(8);
        double[] first = [.. Enumerable.Range(0, 50).Select(_ => one.NextNormal())];
        Assert.Equal(first, Enumerable.Range(0, 50).Select(_ => same.NextNormal()));
        Assert.NotEqual(first, Enumerable.Range(0, 50).Select(_ => other.NextNormal()));
    }

    [Fact]
    public void NextNormal_Seed2025_GivesTheBitsOfASecondProgram()
    {
        // Written a second time in another language from the same sources; equal to the last bit.
        var random = new SeededRandom(2025);
        double[] expected =
        [
            1.4754595118036335, -0.09011308758295632, -2.058079270700291, 1.373789521941362, 0.384618006518698, -2.8709715098136455,
        ];
        Assert.Equal(expected, expected.Select(_ => random.NextNormal()));
    }

    [Fact]
    public void NextDouble_ManyDraws_FillTheUnitIntervalEvenly()
    {
        var random = new SeededRandom(1);
        int[] tenths = new int[10];
        for (int i = 0; i < 100_000; i++)
        {
            tenths[(int)(10 * random.NextDouble())]++; // 1.0 would fall outside and throw
        }

        // Chi-squared with 9 degrees of freedom: 27.9 is its 99.9 % point.
        Assert.True(tenths.Sum(n => Math.Pow(n - 10_000, 2) / 10_000) < 27.9);
    }

    [Fact]
    public void NextNormal_ManyDraws_HaveTheMomentsAndTailsOfTheNormal()
    {
        var random = new SeededRandom(1);
        double[] draws = [.. Enumerable.Range(0, 200_000).Select(_ => random.NextNormal())];
        Assert.InRange(draws.Average(), -0.01, 0.01);
        Assert.InRange(draws.Average(x => x * x), 0.99, 1.01);
        Assert.InRange(draws.Average(x => x * x * x), -0.03, 0.03);
        Assert.InRange(draws.Average(x => x * x * x * x), 2.93, 3.07);
        Assert.InRange(draws.Count(x => Math.Abs(x) > 1.959964) / 200_000.0, 0.048, 0.052); // 5 %
        double[] pairs = [.. Enumerable.Range(0, 199_999).Select(i => draws[i] * draws[i + 1])];
        Assert.InRange(pairs.Average(), -0.01, 0.01); // the two of a pair are independent
    }

    [Fact]
    public void NextUniform_AnyRange_StaysInside() =>
        Gen.Select(Gen.ULong, Gen.Double[-1e6, 1e6], Gen.Double[0, 1e6]).Sample((seed, low, width) =>
        {
            double value = new SeededRandom(seed).NextUniform(low, low + width);
            return value >= low && (value < low + width || width == 0 || low + width == low);
        });

    [Theory]
    [InlineData(1, 0)]
    [InlineData(double.NaN, 1)]
    [InlineData(0, double.PositiveInfinity)]
    public void NextUniform_NoRange_IsRefused(double low, double high) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new SeededRandom(1).NextUniform(low, high));

    [Fact]
    public void PortableLog_AnyNumber_IsTheLogarithm() =>
        Gen.OneOf(Gen.Double[1e-300, 1], Gen.Double[0.5, 2], Gen.Double[1, 1e300], Gen.Double[1e-12, 1e-6]).Sample(x =>
            Math.Abs(PortableLog.Of(x) - Math.Log(x)) <= 1e-15 * Math.Max(1, Math.Abs(Math.Log(x))));
}
