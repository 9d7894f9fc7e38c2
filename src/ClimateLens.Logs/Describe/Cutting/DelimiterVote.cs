using System.Globalization;
using ClimateLens.Logs.Describe.Reading;

namespace ClimateLens.Logs.Describe.Cutting;

/// <summary>
/// Finds what stands between the cells: the mark by which most lines have the same number of cells, and the cells are numbers, stamps
/// and words that hold no other such mark.
/// </summary>
internal static class DelimiterVote
{
    private const double GoodEnough = 0.5;
    private const double SameEverywhere = 0.97;
    private const double Regular = 0.8;
    private static readonly char[] Marks = [';', '\t', '|', ',', ' '];

    /// <summary>The best way to cut; null when no mark makes a table.</summary>
    public static CutGuess? Of(LineSample sample)
    {
        List<string> lines = [.. sample.All.Select(line => line.Text)];
        char quote = QuoteOf(lines);
        Trial[] trials = [.. Marks.Select(mark => Trial.Of(mark, quote, lines)).OrderByDescending(t => t.Score)];
        Trial tabs = Array.Find(trials, t => t.Mark == '\t')!;
        Trial best = trials[0].Mark == ' ' && tabs.Fields > 1 && tabs.Consistency > Regular ? tabs : trials[0]; // cutting at blanks cuts at tabs as well, and passes over empty cells
        if (best.Score < GoodEnough || (best.Mark == ' ' && best.Consistency < SameEverywhere))
        {
            return FixedWidths.Of(lines, quote) ?? (best.Score > GoodEnough / 2 ? Guess(best, quote, trials) : null);
        }

        return Guess(best, quote, trials);
    }

    private static CutGuess Guess(Trial best, char quote, Trial[] trials)
    {
        bool near = trials.Any(t => t != best && t.Score > best.Score * 0.9 && !(best.Mark == '\t' && t.Mark == ' '));
        string evidence = string.Create(CultureInfo.InvariantCulture, $"{best.Lines} of {best.All} lines looked at have {best.Fields} cells");
        return new CutGuess(best.Cutter, best.Mark, [], quote, best.Fields, near || best.Consistency < 0.8 ? Sureness.Likely : Sureness.Sure, evidence);
    }

    /// <summary>Apostrophes are quotes where they stand around many cells and double quotes around none.</summary>
    private static char QuoteOf(List<string> lines)
    {
        int single = lines.Count(line => Quoted(line, '\''));
        int twin = lines.Count(line => Quoted(line, '"'));
        return single > twin && single * 2 > lines.Count ? '\'' : '"';
    }

    private static bool Quoted(string line, char quote)
    {
        int at = line.IndexOf(quote);
        return at >= 0 && line.IndexOf(quote, at + 1) > 0;
    }

    /// <summary>What cutting by one mark gives.</summary>
    private sealed record Trial(char Mark, Cutter Cutter, int Fields, int Lines, int All, double Clean)
    {
        public double Consistency => All == 0 ? 0 : Lines / (double)All;

        public double Score => Fields < 2 ? 0 : Consistency * Clean * Clean;

        public static Trial Of(char mark, char quote, List<string> lines)
        {
            Cutter cutter = mark == ' ' ? new BlankCutter(quote) : new DelimiterCutter(mark, quote);
            string[][] cut = [.. lines.Select(cutter.Cut)];
            int fields = cut.GroupBy(cells => cells.Length).OrderByDescending(g => g.Count() * (g.Key > 1 ? 1.0 : 0.5)).ThenByDescending(g => g.Key).Select(g => g.Key).FirstOrDefault();
            string[][] usual = [.. cut.Where(cells => cells.Length == fields)];
            long cells = usual.Sum(row => (long)row.Length);
            long clean = usual.Sum(row => (long)row.Count(cell => IsClean(cell, mark)));
            return new Trial(mark, cutter, fields, usual.Length, lines.Count, cells == 0 ? 0 : clean / (double)cells);
        }

        private static bool IsClean(string cell, char mark)
        {
            foreach (char other in Marks)
            {
                if (other != mark && other != ' ' && (other != ',' || mark == ' ') && cell.Contains(other))
                {
                    return CellSorts.Of(cell) is CellSort.Number;
                }
            }

            return true;
        }
    }
}
