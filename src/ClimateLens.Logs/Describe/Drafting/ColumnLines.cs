using System.Collections.Immutable;
using ClimateLens.Logs.Describe.Meaning;
using ClimateLens.Logs.Describe.Numbers;

namespace ClimateLens.Logs.Describe.Drafting;

/// <summary>The keys of [[export.column]].</summary>
/// <param name="study">The file.</param>
/// <param name="numbers">Its numbers.</param>
/// <param name="names">Points at its columns.</param>
internal sealed class ColumnLines(Study study, FileNumbers numbers, FieldNames names)
{
    /// <summary>A column of readings.</summary>
    public DraftColumn Of(ColumnFinding finding)
    {
        int column = finding.Facts.Column;
        var keys = ImmutableArray.CreateBuilder<DraftKey>();
        keys.Add(names.Key(column));
        if (!finding.Where.IsEmpty)
        {
            string pairs = string.Join(", ", finding.Where.Select(w => $"{TomlText.Quote(names.Name(w.Column) ?? "")} = {TomlText.Quote(w.Text)}"));
            keys.Add(DraftKey.Of("where", $"{{ {pairs} }}"));
        }

        keys.Add(new DraftKey("channel", [.. finding.Channel.Channels.Select(TomlText.Quote)], finding.Channel.Sureness, finding.Channel.Evidence));
        if (finding.Unit is { } unit)
        {
            keys.Add(new DraftKey("unit", [.. unit.Codes.Select(TomlText.Quote)], unit.Sureness, unit.Evidence));
        }

        if (finding.Sensor.Length > 0)
        {
            keys.Add(DraftKey.Of("sensor", TomlText.Quote(finding.Sensor), null, "several columns are of this channel"));
        }

        if (finding.IsCounter)
        {
            keys.Add(DraftKey.Of("counter", "true", Sureness.Likely, "it only rises, and starts again"));
        }

        keys.AddRange(Numbers(column, finding.ZeroIsMissing));
        Sureness least = finding.IsAsked ? Sureness.Unsure : keys.Max(k => k.Sureness ?? Sureness.Sure);
        return new DraftColumn(column + 1, Title(finding), keys.ToImmutable(), least);
    }

    /// <summary>The header of a column, or what its rows are called.</summary>
    public string Title(ColumnFinding finding)
        => finding.Where.IsEmpty ? study.Headers[finding.Facts.Column].Raw : string.Join(" / ", finding.Where.Select(w => w.Text).Append(study.Headers[finding.Facts.Column].Raw).Where(t => t.Length > 0));

    private IEnumerable<DraftKey> Numbers(int column, bool zeroIsMissing)
    {
        string[] own = [.. numbers.Missing.ByColumn.GetValueOrDefault(column, []), .. zeroIsMissing ? ["0"] : Array.Empty<string>()];
        if (own.Length > 0)
        {
            yield return DraftKey.Of("missingValues", TomlText.List(own), Sureness.Likely, zeroIsMissing ? "0 where there is no value" : "far from all other values");
        }

        if (numbers.ColumnMarks.TryGetValue(column, out string? mark))
        {
            yield return DraftKey.Of("decimalChar", TomlText.Quote(mark), Sureness.Likely, "this column has the other mark than most");
        }
    }
}
