using System.Collections.Immutable;
using System.Globalization;
using ClimateLens.Logs.Describe.Books;
using ClimateLens.Logs.Describe.Clock;
using ClimateLens.Logs.Describe.Meaning;
using ClimateLens.Logs.Describe.Numbers;
using ClimateLens.Nursery.Records;

namespace ClimateLens.Logs.Describe.Drafting;

/// <summary>Puts the findings of files of one kind together: one draft, or one for each house.</summary>
internal sealed class DraftBuilder
{
    private static readonly string[] OutsideChannels = ["outsideTemperature", "outsideHumidity", "globalRadiation", "windSpeed", "windDirection", "rain", "airPressure"];

    private readonly Study _study;
    private readonly TimeGuess _time;
    private readonly FileNumbers _numbers;
    private readonly FileContext _context;
    private readonly FieldNames _names;
    private readonly DescribeOptions _options;

    /// <summary>Takes the study of files of one kind.</summary>
    public DraftBuilder(Study study, TimeGuess time, FileNumbers numbers, DescribeOptions options)
    {
        _study = study;
        _time = time;
        _numbers = numbers;
        _options = options;
        _names = new FieldNames(study.Layout);
        _context = FileContext.Of(study, time, options.House is not null);
    }

    /// <summary>The drafts.</summary>
    public ImmutableArray<DraftExport> Drafts()
    {
        string? tag = HouseTags.Of(_context.Title);
        if (RecordKindVote.Of(_study, _time, _context.Title) is { } book)
        {
            return [Records(new RecordGuess(book.Kind, Sureness.Likely, book.Evidence, RecordFieldsGuess.Of(book.Kind, _study, _time)), tag)];
        }

        var meaning = new FileMeaning(_study, _numbers, _time, _context);
        LongKeys? keys = LongKeys.Of(_study, _time);
        ImmutableArray<ColumnFinding> findings = keys is null ? meaning.Wide() : new LongMeaning(_study, _numbers, keys).Judge(meaning, _time.Has);
        string[] tags = [.. findings.Where(f => !f.Channel.IsUnused).Select(f => f.House).OfType<string>().Distinct(StringComparer.Ordinal)];
        return tags.Length < 2 ? [Readings(findings, keys, tag ?? tags.FirstOrDefault(), _context.IsWeather)] : ByHouse(findings, keys, tags);
    }

    /// <summary>A file with several houses makes an export for each, and one for what they share of the weather.</summary>
    private ImmutableArray<DraftExport> ByHouse(ImmutableArray<ColumnFinding> findings, LongKeys? keys, string[] tags)
    {
        var drafts = ImmutableArray.CreateBuilder<DraftExport>();
        foreach (string tag in tags.Where(t => _options.House is null || string.Equals(t, _options.House, StringComparison.OrdinalIgnoreCase)))
        {
            drafts.Add(Readings([.. findings.Where(f => f.House == tag)], keys, tag, false));
        }

        ColumnFinding[] shared = [.. findings.Where(f => f.House is null && f.Channel.Channels.Any(OutsideChannels.Contains))];
        if (shared.Length > 0 && _options.House is null)
        {
            drafts.Add(Readings([.. shared], keys, null, true));
        }

        return [.. drafts.Select((draft, i) => i == 0 ? draft with { Unused = [.. draft.Unused, .. OfNoHouse(findings)] } : draft)];
    }

    /// <summary>What a file of several houses holds and says of none of them.</summary>
    private IEnumerable<UnusedColumn> OfNoHouse(ImmutableArray<ColumnFinding> findings)
    {
        var lines = new ColumnLines(_study, _numbers, _names);
        return findings.Where(f => f.House is null && !f.Channel.Channels.Any(OutsideChannels.Contains)).Select(f => new UnusedColumn(
            f.Facts.Column + 1, lines.Title(f), f.Channel.IsUnused ? f.Channel.Evidence : $"{string.Join(" or ", f.Channel.Channels)}, but of which house the name does not say"));
    }

    private DraftExport Readings(ImmutableArray<ColumnFinding> findings, LongKeys? keys, string? tag, bool isWeather)
    {
        var lines = new ColumnLines(_study, _numbers, _names);
        ImmutableArray<ColumnFinding> used = SensorNames.Give([.. findings.Where(f => !f.Channel.IsUnused)]);
        string name = _options.Name ?? (isWeather ? "weather" : IsOneVariable(used) ? SensorNames.Id(used[0].Channel.Channels[0]) : "climate");
        DraftKey? house = HouseChoice.Of(tag, isWeather, _options);
        DraftKey?[] stamps = [2 * _time.Tally.Rows > _study.Rows ? DialectLines.Step(_time) : null, Side()];
        var notes = FileNotes.Of(_study, _time, _numbers).ToList();
        if (keys is not null && used.Length > 0)
        {
            notes.Insert(0, $"a long table: {string.Join(" and ", keys.Keys.Select(k => TomlText.Quote(_study.Headers[k].Raw)))} {(keys.Keys.Length == 1 ? "tells" : "tell")} the rows of one time apart; rows of those that are not listed are passed over and counted");
        }

        return new DraftExport(
            name, house is { IsAsked: false } ? house.Values[0].Trim('"') : null, [.. _study.Files.Select(f => f.Name)], Summary(),
            [DraftKey.Of("name", TomlText.Quote(name)), .. house is null ? Array.Empty<DraftKey>() : [house], FilePattern.Of(_study.Files, _options.Folder), .. PackedLines.Of(_study.Files), .. DialectLines.Of(_study, _numbers, _names), .. stamps.OfType<DraftKey>()],
            TimeLines.Of(_study, _time, _names),
            [.. used.Select(lines.Of)],
            Unused(findings, lines),
            [.. notes]);
    }

    /// <summary>A column of a long table that is left out of all rows is told once.</summary>
    private ImmutableArray<UnusedColumn> Unused(ImmutableArray<ColumnFinding> findings, ColumnLines lines)
    {
        var unused = ImmutableArray.CreateBuilder<UnusedColumn>();
        foreach (var column in findings.GroupBy(f => f.Facts.Column))
        {
            ColumnFinding[] left = [.. column.Where(f => f.Channel.IsUnused)];
            bool whole = left.Length == column.Count() && left.Select(f => f.Channel.Evidence).Distinct().Count() == 1;
            unused.AddRange(whole && left.Length > 1
                ? [new UnusedColumn(column.Key + 1, _study.Headers[column.Key].Raw, left[0].Channel.Evidence)]
                : left.Select(f => new UnusedColumn(f.Facts.Column + 1, lines.Title(f), f.Channel.Evidence)));
        }

        return unused.ToImmutable();
    }

    private DraftExport Records(RecordGuess book, string? tag)
    {
        bool namesHouse = book.Fields.Any(f => f.Field == RecordFields.House);
        string word = RecordKinds.WordOf(book.Kind);
        string name = _options.Name ?? SensorNames.Id(word);
        DraftKey? house = namesHouse ? null : HouseChoice.Of(tag, false, _options);
        int[] used = [.. book.Fields.Select(f => f.Column)];
        return new DraftExport(
            name, house is { IsAsked: false } ? house.Values[0].Trim('"') : null, [.. _study.Files.Select(f => f.Name)], Summary(),
            [
                DraftKey.Of("name", TomlText.Quote(name)), .. house is null ? Array.Empty<DraftKey>() : [house], DraftKey.Of("kind", TomlText.Quote(word), book.Sureness, book.Evidence),
                FilePattern.Of(_study.Files, _options.Folder), .. PackedLines.Of(_study.Files), .. DialectLines.Of(_study, _numbers, _names),
            ],
            TimeLines.Of(_study, _time with { End = null }, _names),
            [.. book.Fields.Select(Field)],
            [.. Enumerable.Range(0, _study.Headers.Length).Where(c => !_time.Source.Has(c) && !used.Contains(c)).Select(c => new UnusedColumn(c + 1, _study.Headers[c].Raw, _study.Numbers[c].Filled == 0 ? "empty in every row" : "no field of this kind of record"))],
            FileNotes.Of(_study, _time, _numbers));
    }

    private DraftColumn Field(RecordColumn field)
    {
        DraftKey[] unit = field.Unit is { } known ? [new DraftKey("unit", [.. known.Codes.Select(TomlText.Quote)], known.Sureness, known.Evidence)] : [];
        DraftKey[] keys = [_names.Key(field.Column), DraftKey.Of("channel", TomlText.Quote(field.Field), field.Sureness, field.Evidence), .. unit];
        return new DraftColumn(field.Column + 1, _study.Headers[field.Column].Raw, [.. keys], keys.Max(k => k.Sureness ?? Sureness.Sure));
    }

    private bool IsOneVariable(ImmutableArray<ColumnFinding> used) => used.Length == 1 && _study.Layout.Fields <= 3;

    /// <summary>Only the header can tell whether a time names the start or the end of what it stands for.</summary>
    private DraftKey? Side()
    {
        Words.HeaderText header = _study.Headers[_time.Source.First];
        bool start = header.Has(Words.Idea.Start);
        bool end = header.Has(Words.Idea.End);
        return _time.End is not null || start == end ? null
            : DraftKey.Of("stamps", start ? "\"intervalStart\"" : "\"intervalEnd\"", Sureness.Likely, $"the header of the time says {(start ? "start" : "end")}");
    }

    private string Summary()
    {
        OrderTally order = _time.Order;
        string files = _study.Files.Length == 1 ? _study.File.Label : string.Create(CultureInfo.InvariantCulture, $"{_study.Files.Length} files, {_study.Files[0].Label} to {_study.Files[^1].Label}");
        string span = order.Count == 0 || _time.IsYearless ? "" : string.Create(CultureInfo.InvariantCulture, $", {Day(order.Earliest)} to {Day(order.Latest)}");
        return string.Create(CultureInfo.InvariantCulture, $"{files}: {_study.Rows} rows{(_time.Sureness == Sureness.Unsure ? "" : span)}.");
    }

    private static string Day(long micros) => DateTime.UnixEpoch.AddTicks(micros * 10).ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);
}
