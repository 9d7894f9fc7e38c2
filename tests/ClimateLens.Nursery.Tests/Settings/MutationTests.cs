using System.Text;
using ClimateLens.Nursery.Problems;
using ClimateLens.Nursery.Settings;

namespace ClimateLens.Nursery.Tests.Settings;

/// <summary>Whatever happens to a good file, it is read or its faults are told; nothing else is thrown.</summary>
public class MutationTests
{
    private const int Seed = 20250901;
    private const int Rounds = 250;

    private static readonly byte[] Good = Encoding.UTF8.GetBytes(NurseryText.Fullest);

    [Fact]
    public void GoodFile_WithBytesChanged_IsReadOrRefused() => Run(random =>
    {
        byte[] bytes = [.. Good];
        for (int i = random.Next(1, 6); i > 0; i--)
        {
            bytes[random.Next(bytes.Length)] = (byte)random.Next(256);
        }

        return bytes;
    });

    [Fact]
    public void GoodFile_WithMarksOfTomlScattered_IsReadOrRefused() => Run(random =>
    {
        byte[] bytes = [.. Good];
        for (int i = random.Next(1, 6); i > 0; i--)
        {
            bytes[random.Next(bytes.Length)] = "[]{}=\"'#,.\n\r\\- 0"u8[random.Next(16)];
        }

        return bytes;
    });

    [Fact]
    public void GoodFile_WithAPieceCutOut_IsReadOrRefused() => Run(random =>
    {
        int start = random.Next(Good.Length);
        int end = random.Next(start, Good.Length);
        return [.. Good[..start], .. Good[end..]];
    });

    [Fact]
    public void GoodFile_WithLinesSwappedAndDoubled_IsReadOrRefused() => Run(random =>
    {
        List<string> lines = [.. NurseryText.Fullest.Split('\n')];
        for (int i = random.Next(1, 6); i > 0; i--)
        {
            int one = random.Next(lines.Count);
            int two = random.Next(lines.Count);
            (lines[one], lines[two]) = (lines[two], lines[one]);
            lines.Insert(random.Next(lines.Count), lines[random.Next(lines.Count)]);
        }

        return Encoding.UTF8.GetBytes(string.Join('\n', lines));
    });

    private static void Run(Func<Random, byte[]> mutate)
    {
        Random random = new(Seed);
        int refused = 0;
        for (int round = 0; round < Rounds; round++)
        {
            byte[] bytes = mutate(random);
            try
            {
                Assert.NotEmpty(NurseryFile.Parse("nursery.toml", bytes).Houses);
            }
            catch (NurseryFileException fault)
            {
                refused++;
                Check(fault, bytes);
            }
        }

        Assert.InRange(refused, Rounds / 4, Rounds); // or the mutations do nothing
    }

    private static void Check(NurseryFileException fault, byte[] bytes)
    {
        int lines = bytes.Count(b => b == '\n') + 1;
        Assert.Contains(fault.Problems, p => p.Severity == Severity.Error);
        Assert.All(fault.Problems, p =>
        {
            Assert.False(Excerpt.HasHidden(p.ToString()), p.ToString());
            Assert.InRange(p.Line ?? 1, 1, lines);
            Assert.InRange(p.Column ?? 1, 1, bytes.Length + 1);
        });
        Assert.Equal(fault.Problems.OrderBy(p => p.Line ?? int.MaxValue).Select(p => p.Line), fault.Problems.Select(p => p.Line));
    }
}
