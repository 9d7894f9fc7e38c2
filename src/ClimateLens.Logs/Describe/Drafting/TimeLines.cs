using System.Collections.Immutable;
using ClimateLens.Logs.Describe.Clock;

namespace ClimateLens.Logs.Describe.Drafting;

/// <summary>The keys of [export.time].</summary>
internal static class TimeLines
{
    /// <summary>The keys.</summary>
    public static ImmutableArray<DraftKey> Of(Study study, TimeGuess time, FieldNames names)
    {
        var keys = ImmutableArray.CreateBuilder<DraftKey>();
        keys.AddRange(names.Keys(time.Source.Columns));
        if (time.End is { } end)
        {
            keys.Add(names.List(end.Columns, "endField", "endPosition") with { Sureness = Sureness.Likely, Evidence = "always after the first time: a row is an interval" });
        }

        keys.Add(Format(time));
        if (time.IsYearless)
        {
            keys.Add(new DraftKey("year", ["2025"], Sureness.Unsure, "the stamps name no year: write that of the oldest row"));
        }

        if (Zone(study, time) is { } zone)
        {
            keys.Add(zone);
        }

        return keys.ToImmutable();
    }

    private static DraftKey Format(TimeGuess time)
    {
        if (time.Sureness == Sureness.Unsure)
        {
            string rest = time.Formats[0].Order is "dMy" or "Mdy" ? "day or month first? " : "";
            return new DraftKey("format", [.. time.Formats.Select(f => TomlText.Quote(f.Text))], Sureness.Unsure, $"{rest}{time.Evidence}");
        }

        string value = time.Formats.Length == 1 ? TomlText.Quote(time.Formats[0].Text) : TomlText.List(time.Formats.Select(f => f.Text));
        string serial = time.Formats[0].Text == "excel1900" ? "; a workbook that counts from 1904 would need excel1904" : "";
        return DraftKey.Of("format", value, serial.Length > 0 ? Sureness.Likely : time.Sureness, time.Evidence + serial);
    }

    private static DraftKey? Zone(Study study, TimeGuess time)
    {
        if (time.NamesOffset)
        {
            return null;
        }

        string[] headers = [.. time.Source.Columns.Select(c => study.Headers[c].Raw)];
        if (headers.Select(ZoneWords.Of).FirstOrDefault(zone => zone is not null) is { } named)
        {
            return DraftKey.Of("timeZone", TomlText.Quote(named), Sureness.Likely, "the header says so");
        }

        return study.Layout.Titles.Select(ZoneWords.OfTitle).FirstOrDefault(zone => zone is not null) is { } titled
            ? new DraftKey("timeZone", [TomlText.Quote(titled)], Sureness.Unsure, "a line above the names speaks of it; without this key the stamps follow the clock of the nursery's zone")
            : null;
    }
}
