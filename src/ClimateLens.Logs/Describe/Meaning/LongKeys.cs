using System.Collections.Immutable;
using ClimateLens.Logs.Describe.Clock;
using ClimateLens.Logs.Describe.Cutting;
using ClimateLens.Logs.Describe.Numbers;
using ClimateLens.Logs.Describe.Reading;
using ClimateLens.Logs.Describe.Words;

namespace ClimateLens.Logs.Describe.Meaning;

/// <summary>The columns of a long table that tell its rows of one time apart: sensor, station, variable.</summary>
/// <param name="Keys">Those columns.</param>
/// <param name="Variable">The one of them that says what is measured, or -1: then the headers of the values do.</param>
/// <param name="Unit">The column with the unit, or -1.</param>
internal sealed record LongKeys(ImmutableArray<int> Keys, int Variable, int Unit)
{
    private const int MostTexts = 100;
    private const double Alone = 0.98;
    private const double Repeated = 0.75;

    /// <summary>Finds them; null when each time has one row.</summary>
    public static LongKeys? Of(Study study, TimeGuess time)
    {
        int[] columns = [.. Enumerable.Range(0, study.Headers.Length).Where(c => !time.Has(c))];
        int[] words = [.. columns.Where(c => IsKey(study, c))];
        int unit = Array.Find([.. words.Select(c => (int?)c)], c => AreUnits(study.Numbers[c!.Value])) ?? -1;
        int variable = Array.Find([.. words.Where(c => c != unit).Select(c => (int?)c)], c => AreVariables(study, c!.Value)) ?? -1;
        string[] stamps = [.. study.Sample.Select(r => time.Source.Text(r.Cells))];
        double alone = Share(stamps);
        variable = alone < Repeated ? variable : -1;
        if (alone >= Alone)
        {
            return null;
        }

        int[] others = [.. words.Where(c => c != unit && c != variable && study.Numbers[c].Texts.Count + Whole(study.Numbers[c]) > 1).OrderBy(c => study.Headers[c].HasAny(Idea.Sensor, Idea.House) ? 0 : 1)];
        var keys = new List<int>(variable < 0 ? [] : [variable]);
        foreach (int other in others)
        {
            if (keys.Count > 0 && Share(Pairs(study.Sample, stamps, keys)) >= Alone)
            {
                break;
            }

            if (Share(Pairs(study.Sample, stamps, [.. keys, other])) > (keys.Count == 0 ? Share(stamps) : Share(Pairs(study.Sample, stamps, keys))) + 0.02)
            {
                keys.Add(other);
            }
        }

        bool tells = keys.Count > 0 && (variable >= 0 || Share(Pairs(study.Sample, stamps, keys)) >= 0.9);
        return tells ? new LongKeys([.. keys.Order()], variable, unit) : null;
    }

    /// <summary>The texts of the keys that occur together, in the order of the file.</summary>
    public List<(string[] Texts, List<SampleRow> Rows)> Combinations(Study study)
    {
        var found = new Dictionary<string, (string[] Texts, List<SampleRow> Rows)>(StringComparer.Ordinal);
        foreach (SampleRow row in study.Sample)
        {
            string[] texts = [.. Keys.Select(k => k < row.Cells.Length ? row.Cells[k] : "")];
            string key = string.Join('\u001f', texts);
            if (!found.TryGetValue(key, out (string[] Texts, List<SampleRow> Rows) place))
            {
                found.Add(key, place = (texts, []));
            }

            place.Rows.Add(row);
        }

        return [.. found.Values.Where(f => f.Texts.All(t => t.Length > 0))];
    }

    private static bool IsKey(Study study, int column)
    {
        NumberTally tally = study.Numbers[column];
        bool words = study.Layout.Sorts[column] == CellSort.Text && !tally.ManyTexts && tally.Texts.Count <= MostTexts;
        bool codes = study.Layout.Sorts[column] == CellSort.Number && study.Headers[column].HasAny(Idea.Sensor, Idea.House) && !study.Headers[column].HasAny(Idea.Temperature, Idea.Humidity)
            && study.Sample.Select(r => column < r.Cells.Length ? r.Cells[column] : "").Distinct().Take(MostTexts).Count() < Math.Min(MostTexts, study.Sample.Count / 2);
        return (words || codes) && tally.Filled > 0 && tally.Empty < 0.02 * tally.Filled;
    }

    private static int Whole(NumberTally tally) => tally.Of(NumberShape.Whole) > 0 ? 2 : 0;

    private static bool AreUnits(NumberTally tally) => tally.Texts.Count > 0 && tally.Texts.Keys.All(t => UnitWords.Of(t) is not null);

    private static bool AreVariables(Study study, int column)
    {
        string[] texts = [.. study.Numbers[column].Texts.Keys];
        Idea[] measured = [Idea.Temperature, Idea.Humidity, Idea.VapourPressureDeficit, Idea.HumidityDeficit, Idea.CarbonDioxide, Idea.Radiation, Idea.Light, Idea.Par, Idea.DewPoint, Idea.Wind, Idea.Rain, Idea.Pressure, Idea.Vent, Idea.Screen, Idea.Pipe, Idea.Moisture, Idea.Wetness];
        int known = texts.Count(t => HeaderText.Of(t).HasAny(measured));
        return known > 0 && known * 2 >= texts.Length;
    }

    private static IReadOnlyCollection<string> Pairs(IReadOnlyList<SampleRow> rows, string[] stamps, List<int> keys)
        => [.. rows.Select((r, i) => stamps[i] + '\u001f' + string.Join('\u001f', keys.Select(k => k < r.Cells.Length ? r.Cells[k] : "")))];

    private static double Share(IReadOnlyCollection<string> texts) => texts.Count == 0 ? 1 : texts.Distinct(StringComparer.Ordinal).Count() / (double)texts.Count;
}
