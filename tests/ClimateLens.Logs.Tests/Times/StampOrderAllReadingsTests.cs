using System.Text;
using ClimateLens.Logs.Times;
using CsCheck;

namespace ClimateLens.Logs.Tests.Times;

/// <summary>The choice of formats against every reading of a small file, one after the other.</summary>
public sealed class StampOrderAllReadingsTests
{
    private const double Doubt = 0.01; // closer to the limit than this, rounding may decide

    private static readonly string[] Formats = ["dd/MM/yyyy", "MM/dd/yyyy"];

    [Fact]
    public void Decide_AnySmallFile_AgreesWithTheCheapestOfAllReadings()
    {
        Gen<string> day = Gen.OneOf(Gen.Select(Gen.Int[1, 6], Gen.Int[1, 6]), Gen.Select(Gen.Int[13, 28], Gen.Int[1, 6]), Gen.Select(Gen.Int[1, 6], Gen.Int[13, 28])).Select((a, b) => $"{a:00}/{b:00}/2025");
        day.Array[1, 7].Sample(Agrees, iter: 3_000);
    }

    private static bool Agrees(string[] rows)
    {
        StampParser[] parsers = [.. Formats.Select(f => StampParser.TryCompile(f)!)];
        var order = new StampOrder(parsers);
        long?[][] meanings = [.. rows.Select(row => parsers.Select(p => p.TryRead(Encoding.UTF8.GetBytes(row), out LocalStamp stamp) ? stamp.LocalMicros : (long?)null).ToArray())];
        Assert.All(rows, row => Assert.True(order.Add(Encoding.UTF8.GetBytes(row))));
        StampVerdict verdict = order.Decide();

        // Least cost of a reading with a row in a format, both directions; the first format is the lower bit.
        double[,] least = new double[rows.Length, 2];
        double[] total = [double.PositiveInfinity, double.PositiveInfinity];
        for (int i = 0; i < least.Length; i++)
        {
            least[i / 2, i % 2] = double.PositiveInfinity;
        }

        for (int reading = 0; reading < 1 << rows.Length; reading++)
        {
            long?[] times = [.. meanings.Select((m, i) => m[(reading >> i) & 1])];
            if (times.Any(t => t is null))
            {
                continue;
            }

            for (int direction = 0; direction < 2; direction++)
            {
                var steps = new StampSteps(verdict.StepMicros, newestFirst: direction == 1);
                double cost = times.Zip(times.Skip(1)).Sum(pair => (double)steps.CostOf(pair.First!.Value, pair.Second!.Value));
                total[direction] = Math.Min(total[direction], cost);
                for (int i = 0; i < rows.Length; i++)
                {
                    int format = (reading >> i) & 1;
                    least[i, format] = Math.Min(least[i, format], cost);
                }
            }
        }

        bool agrees = Math.Abs(total[0] - total[1]) < Doubt || verdict.NewestFirst == total[1] < total[0];
        for (int i = 0; i < rows.Length; i++)
        {
            bool alike = meanings[i][0] == meanings[i][1];
            double worse = least[i, 1] - least[i, 0];
            bool near = Math.Abs(Math.Abs(worse) - StampOrder.Clear) < Doubt;
            byte expected = Math.Abs(worse) < StampOrder.Clear ? StampVerdict.Undecided : worse > 0 ? (byte)0 : (byte)1;
            agrees &= alike ? verdict.Choices[i] < 2 : near || verdict.Choices[i] == expected;
        }

        return agrees;
    }
}
