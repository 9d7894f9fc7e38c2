using ClimateLens.Logs.Describe.Reading;

namespace ClimateLens.Logs.Describe.Cutting;

/// <summary>Finds the mark of lines that are remarks.</summary>
internal static class Comments
{
    /// <summary>The mark, or null when no such line is there.</summary>
    public static char? Of(LineSample sample, RowModel model, CutGuess cut)
    {
        foreach (char mark in (char[])['#', '%', '!', '*'])
        {
            bool used = sample.All.Exists(line => line.Text.StartsWith(mark) && line.Number > 1 && line.Text.Length > 1 && !model.Fits(cut.Cutter.Cut(line.Text)));
            if (used && mark != cut.Delimiter)
            {
                return mark;
            }
        }

        return null;
    }
}
