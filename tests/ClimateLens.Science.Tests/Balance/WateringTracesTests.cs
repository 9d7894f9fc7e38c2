using ClimateLens.HouseSimulator.Scenario;
using ClimateLens.Science.Balance;
using ClimateLens.Science.Statistics;

namespace ClimateLens.Science.Tests.Balance;

/// <summary>Waterings seen from the humidity alone, on simulated autumns that the thresholds were not chosen by (those were seeds 1 to 8).</summary>
public class WateringTracesTests
{
    private const int HourAndHalf = 18;

    [Fact]
    public void Find_LogWithheld_FindsManyRoundsAndFewOthers()
    {
        int rounds = 0, found = 0, others = 0;
        for (ulong seed = 21; seed <= 26; seed++)
        {
            BalanceInputs logged = new SimulatedHouse(seed).RunIn, blind = Noisy(logged with { LeafWetted = default }, seed);
            List<int> starts = Starts(logged.LeafWetted.Span);
            IReadOnlyList<WateringTrace> traces = WateringTraces.Find(blind, BalanceFit.Of(blind));
            rounds += starts.Count;
            found += starts.Count(start => traces.Any(t => Math.Abs(t.Step - start) <= HourAndHalf));
            others += traces.Count(t => !starts.Exists(start => Math.Abs(t.Step - start) <= HourAndHalf));
            Assert.All(traces, t => Assert.True(t.Score >= WateringTraces.LeastScore && t.RiseGm3 >= WateringTraces.LeastRiseGm3));
        }

        Assert.True(found >= 0.3 * rounds, $"{found} of {rounds}");
        Assert.True(others <= 0.3 * 18, $"{others} in 18 weeks"); // weeks with a boom
    }

    [Fact]
    public void Find_HouseOfDripAlone_CriesWolfLessThanOnceInTwoWeeks()
    {
        int traces = 0;
        for (ulong seed = 21; seed <= 26; seed++)
        {
            BalanceInputs dry = Noisy(new SimulatedHouse(seed, GannetRow.HouseTwo).RunIn, seed);
            traces += WateringTraces.Find(dry, BalanceFit.Of(dry)).Count;
        }

        Assert.True(traces <= 9, $"{traces} in 18 weeks");
    }

    [Fact]
    public void Find_LogKnown_TellsNothingTwice()
    {
        BalanceInputs logged = Noisy(new SimulatedHouse(21).RunIn, 21), blind = logged with { LeafWetted = default };
        List<int> starts = Starts(logged.LeafWetted.Span);
        bool IsRound(WateringTrace trace) => starts.Exists(start => Math.Abs(trace.Step - start) <= HourAndHalf);
        Assert.Contains(WateringTraces.Find(blind, BalanceFit.Of(blind)), IsRound);
        Assert.DoesNotContain(WateringTraces.Find(logged, BalanceFit.Of(logged)), IsRound);
    }

    [Fact]
    public void Find_WithoutAFit_TellsNothing()
    {
        BalanceInputs week = MadeUpBalance.Drivers(1, 3);
        Assert.Empty(WateringTraces.Find(week, BalanceFit.Of(week)));
    }

    private static BalanceInputs Noisy(BalanceInputs inputs, ulong seed)
    {
        var random = new SeededRandom(seed);
        return inputs with { HumidityGm3 = Array.ConvertAll(inputs.HumidityGm3.ToArray(), value => value + (0.05 * random.NextNormal())) };
    }

    private static List<int> Starts(ReadOnlySpan<double> wetted)
    {
        List<int> starts = [];
        int last = -100;
        for (int i = 0; i < wetted.Length; i++)
        {
            if (wetted[i] > 0)
            {
                if (i - last > 12)
                {
                    starts.Add(i);
                }

                last = i;
            }
        }

        return starts;
    }
}
