using System.Collections.Immutable;
using System.Text;
using ClimateLens.Nursery.Imports;
using ClimateLens.Nursery.Problems;
using ClimateLens.Nursery.Settings;

namespace ClimateLens.Logs.Sheets;

/// <summary>What is noted of a file while it is read.</summary>
internal sealed class FileFacts
{
    private const int UnusedNamed = 40;

    private ImmutableArray<TimeFormatCount> _formats = [];
    private ImmutableArray<string> _unused = [];
    private int _unusedCount;

    /// <summary>Its values, steps and gaps; null for records.</summary>
    public SeriesStatistics? Series { get; set; }

    /// <summary>Notes the columns that the nursery file takes nothing from.</summary>
    /// <param name="names">Names in the header; empty when the file has none.</param>
    /// <param name="fields">Number of fields.</param>
    /// <param name="used">0-based fields that are taken; others than 0 to <paramref name="fields"/> - 1 are passed over.</param>
    public void Columns(IReadOnlyList<string> names, int fields, IEnumerable<int> used)
    {
        HashSet<int> taken = [.. used];
        int[] left = [.. Enumerable.Range(0, fields).Where(i => !taken.Contains(i))];
        _unusedCount = left.Length;
        _unused = [.. left.Take(UnusedNamed).Select(i => NameOf(i < names.Count ? names[i] : "", i))];
    }

    /// <summary>Notes how many rows' times were read by each format, in the order of the settings.</summary>
    public void TimeFormats(IEnumerable<(string Format, int Rows)> formats)
        => _formats = [.. formats.Where(f => f.Rows > 0).Select(f => new TimeFormatCount(f.Format, f.Rows))];

    /// <summary>All that is known of the file.</summary>
    /// <param name="dialect">How it was cut.</param>
    /// <param name="encoding">Encoding that it was read in.</param>
    /// <param name="reasons">What was set aside.</param>
    /// <param name="stepSeconds">Step as the nursery file gives it or the stamps keep it, or null. [s]</param>
    public ImportDetails Details(DialectSettings dialect, Encoding encoding, ReasonList reasons, int? stepSeconds)
    {
        int? step = stepSeconds ?? Series?.StepSeconds;
        return new ImportDetails
        {
            Dialect = new ImportDialect(encoding.WebName, $"{dialect.Delimiter}", $"{dialect.QuoteChar}", $"{dialect.DecimalChar}", $"{dialect.GroupChar}", dialect.HeaderRow),
            TimeFormats = _formats,
            UnusedColumns = _unused,
            UnusedColumnCount = _unusedCount,
            Reasons = reasons.ToImmutable(),
            StepSeconds = step,
            StepShare = step is int seconds ? Series?.StepShare(seconds) : null,
            Gaps = step is int length ? Series?.Gaps(length) : null,
            Channels = Series?.Channels() ?? [],
            Clock = null,
        };
    }

    private static string NameOf(string name, int index)
        => name.Length == 0 ? $"column {index + 1}" : Excerpt.Of(name);
}
