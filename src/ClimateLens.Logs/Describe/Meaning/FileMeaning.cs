using System.Collections.Immutable;
using ClimateLens.Logs.Describe.Clock;
using ClimateLens.Logs.Describe.Numbers;
using ClimateLens.Logs.Describe.Words;
using ClimateLens.Nursery.Channels;

namespace ClimateLens.Logs.Describe.Meaning;

/// <summary>Guesses what the columns of a file of readings are.</summary>
/// <param name="study">The file.</param>
/// <param name="numbers">Its numbers.</param>
/// <param name="time">How its time reads.</param>
/// <param name="context">What the whole file says.</param>
internal sealed class FileMeaning(Study study, FileNumbers numbers, TimeGuess time, FileContext context)
{
    private const double HouseIsHeatedC = 5;

    /// <summary>The columns of a wide table.</summary>
    public ImmutableArray<ColumnFinding> Wide()
    {
        int[] columns = [.. Enumerable.Range(0, study.Headers.Length).Where(c => !time.Has(c))];
        int[] values = [.. columns.Where(c => IsValue(numbers.Columns[c]))];
        return Judge([.. columns.Select(c => (numbers.Columns[c], Named(c, values.Length == 1 && values[0] == c), ImmutableArray<(int, string)>.Empty))]);
    }

    /// <summary>Judges columns, or the rows of keys of a long table, together, since they explain each other.</summary>
    public ImmutableArray<ColumnFinding> Judge(IReadOnlyList<(ColumnFacts Facts, HeaderText Header, ImmutableArray<(int Column, string Text)> Where)> columns)
    {
        var guesses = columns.Select(c => (Facts: new ColumnFacts(c.Facts.Column, c.Header, c.Facts.Tally, c.Facts.Values, c.Facts.Codes), c.Where, Guess: Guess(c.Header, c.Facts))).ToList();
        (ColumnFacts Facts, string Channel)[] known = [.. guesses.Where(g => g.Guess.Channels.Length == 1).Select(g => (g.Facts, g.Guess.Channels[0]))];
        var scale = TemperatureScale.Of(
            [.. known.Where(k => k.Channel is "airTemperature" or "outsideTemperature" or "canopyTemperature")],
            [.. known.Where(k => k.Channel is "relativeHumidity" or "outsideHumidity"), .. guesses.Select(g => (g.Facts, Channel: Relative(g.Facts.Header))).Where(r => r.Channel.Length > 0)], context);
        var units = new UnitRules(scale, context, facts => DeficitUnit(known, scale, facts));
        bool bothZero = ZerosTogether(known);
        ColumnFinding[] findings = [.. guesses.Select(g => Finding(g.Facts, Settle(g.Guess, known, scale, g.Facts), units, bothZero) with { Where = g.Where, House = HouseTags.Of(g.Facts.Header) ?? g.Where.Select(w => HouseTags.OfKey(study.Headers[w.Column], w.Text)).FirstOrDefault(tag => tag is not null) })];
        return [.. OtherTimes.Asked(study, time, Namesakes.Asked(Twins.Without(findings)))];
    }

    private static bool IsValue(ColumnFacts facts) => facts.IsNumeric || SwitchWords.All(facts.Tally);

    /// <summary>A single value column without a name of its own is what the title or the file's name says.</summary>
    private HeaderText Named(int column, bool alone)
    {
        HeaderText header = study.Headers[column];
        return alone && !header.Words.Any(w => w.Idea is not (Idea.Value or Idea.Unit or Idea.Number or Idea.Sensor or Idea.Average or Idea.House))
            ? HeaderText.Of($"{context.Title.Raw} {header.Name}", header.Unit?.Written ?? "") is var titled && header.Unit is null ? titled with { Unit = context.Title.Unit ?? titled.Unit } : HeaderText.Of($"{context.Title.Raw} {header.Name}", header.Unit!.Written)
            : header;
    }

    private ChannelGuess Guess(HeaderText header, ColumnFacts facts)
        => facts.Tally.Filled == 0 ? ChannelGuess.Unused("empty in every row")
        : !IsValue(facts) ? ChannelGuess.Unused("texts, no numbers")
        : facts.Count == 0 && facts.Tally.Numbers > 0 ? ChannelGuess.Unused("a code for \"no value\" in every row")
        : ChannelRules.Of(header, facts, context) is var guess && study.Layout.StrayNames is > 0 and int names && !guess.IsUnused
        ? ChannelGuess.Either($"{names} names stand over {study.Layout.Fields} cells: is it this?", [.. guess.Channels])
        : header.OtherUnit is { } other && !guess.IsUnused
        ? ChannelGuess.Either($"the name has two units, {header.Unit!.Written} and {other.Written}: is it this?", [.. guess.Channels])
        : guess;

    /// <summary>Deficits and dew points bear witness also where no channel takes them.</summary>
    private static string Relative(HeaderText header) => header.Has(Idea.VapourPressureDeficit) ? "vapourPressureDeficit" : header.Has(Idea.DewPoint) ? "dewPoint" : "";

    private static ColumnFinding Finding(ColumnFacts facts, ChannelGuess guess, UnitRules units, bool bothZero)
    {
        if (guess.IsUnused)
        {
            return new ColumnFinding(facts, guess, null);
        }

        Channel channel = ChannelCatalogue.Get(guess.Channels[0]);
        bool zero = (channel.Name == "relativeHumidity" && facts.Values.Contains(0) && facts.Median > 10) || (channel.Name == "airTemperature" && bothZero);
        ColumnFacts judged = zero ? new ColumnFacts(facts.Column, facts.Header, facts.Tally, [.. facts.Values.Select(v => v == 0 ? double.NaN : v)], facts.Codes) : facts;
        UnitGuess? unit = guess.Channels.Length == 1 ? units.Of(channel, judged)
            : UnitGuess.Ask("it goes with the channel", [.. guess.Channels.Select(c => units.Of(ChannelCatalogue.Get(c), judged)).OfType<UnitGuess>().SelectMany(u => u.Codes).Distinct()]);
        return new ColumnFinding(judged, guess, unit)
        {
            ZeroIsMissing = zero,
            IsCounter = channel.Gridding == Gridding.Amount && Counters.Is(facts),
        };
    }

    /// <summary>A deficit that may be one of two channels is the one that agrees with temperature and humidity.</summary>
    private static ChannelGuess Settle(ChannelGuess guess, (ColumnFacts Facts, string Channel)[] known, TemperatureScale scale, ColumnFacts facts)
    {
        if (!guess.Channels.Contains("humidityDeficit") || guess.Channels.Length < 2 || DeficitUnit(known, scale, facts) is not { } unit)
        {
            return guess;
        }

        return new ChannelGuess([unit == "g/m3" ? "humidityDeficit" : "vapourPressureDeficit"], Sureness.Likely, $"a deficit; in {unit} it agrees with temperature and humidity of the file");
    }

    private static string? DeficitUnit((ColumnFacts Facts, string Channel)[] known, TemperatureScale scale, ColumnFacts deficit)
    {
        ColumnFacts? air = known.FirstOrDefault(k => k.Channel == "airTemperature").Facts;
        ColumnFacts? humidity = known.FirstOrDefault(k => k.Channel == "relativeHumidity").Facts;
        string? code = air?.Header.Unit?.Measures(Quantity.Temperature) == true ? air.Header.Unit.Code : scale.Code;
        return air is null || humidity is null || code is null || air.Values.Length != deficit.Values.Length || humidity.Values.Length != deficit.Values.Length
            ? null
            : AirCheck.DeficitUnit(TemperatureScale.Celsius(air, code), TemperatureScale.Percent(humidity), deficit.Values);
    }

    /// <summary>In a heated house temperature and humidity are not 0 at once: the logger had no value.</summary>
    private static bool ZerosTogether((ColumnFacts Facts, string Channel)[] known)
    {
        ColumnFacts? air = known.FirstOrDefault(k => k.Channel == "airTemperature").Facts;
        ColumnFacts? humidity = known.FirstOrDefault(k => k.Channel == "relativeHumidity").Facts;
        return air is not null && humidity is not null && air.Values.Length == humidity.Values.Length && air.Values.Zip(humidity.Values).Any(v => v.First == 0 && v.Second == 0)
            && !air.Values.Any(v => v is not 0 && v < HouseIsHeatedC);
    }
}
