using System.Globalization;
using System.Text;
using ClimateLens.Logs.Store;

namespace ClimateLens.Logs.Readings;

/// <summary>What a newer row says of an older one of the same time.</summary>
[Flags]
internal enum RowNews
{
    /// <summary>Nothing new.</summary>
    None = 0,

    /// <summary>A value where the older row had none.</summary>
    Adds = 1,

    /// <summary>Another value.</summary>
    Contradicts = 2,
}

/// <summary>Compares rows cell by cell. A missing cell says nothing: it neither contradicts nor removes a value.</summary>
internal static class RowComparison
{
    /// <summary>Compares a newer row with an older one.</summary>
    /// <param name="newer">Rows with the newer row.</param>
    /// <param name="i">The newer row.</param>
    /// <param name="older">Rows with the older row.</param>
    /// <param name="j">The older row.</param>
    /// <param name="places">For each column of <paramref name="newer"/> its place in <paramref name="older"/>, or -1 where that lacks it.</param>
    public static RowNews Compare(YearRows newer, int i, YearRows older, int j, ReadOnlySpan<int> places)
    {
        RowNews news = RowNews.None;
        for (int c = 0; c < places.Length; c++)
        {
            double value = newer.Columns[c][i];
            double held = places[c] < 0 ? double.NaN : older.Columns[places[c]][j];
            if (!double.IsNaN(value) && value != held)
            {
                news |= double.IsNaN(held) ? RowNews.Adds : RowNews.Contradicts;
            }
        }

        return news;
    }

    /// <summary>The values of a row in SI for the set-aside file: <c>utc; airTemperature=21.5; …</c>.</summary>
    public static byte[] Text(YearRows rows, int row)
    {
        var text = new StringBuilder(Micros.ToIso(rows.Utc[row]));
        for (int c = 0; c < rows.Names.Length; c++)
        {
            if (!double.IsNaN(rows.Columns[c][row]))
            {
                text.Append(CultureInfo.InvariantCulture, $"; {rows.Names[c]}={rows.Columns[c][row]:R}");
            }
        }

        return Encoding.UTF8.GetBytes(text.ToString());
    }
}
