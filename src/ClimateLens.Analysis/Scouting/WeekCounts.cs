using System.Globalization;
using ClimateLens.Nursery.Records;
using ClimateLens.Nursery.Time;
using NodaTime;

namespace ClimateLens.Analysis.Scouting;

/// <summary>Affected plants by symptom and week, from scouting records.</summary>
/// <remarks>
/// <b>Rule:</b> each bench's last count of the week, summed over benches (a row without a bench stands for one of its own), so that a bench that is walked twice does not count
/// twice. Symptoms are told apart by their words, case and outer spaces aside. A row without a count or with one below nought says nothing. Choice of this project.
/// </remarks>
internal static class WeekCounts
{
    /// <summary>Plants by symptom, then week; symptoms in the order of their words.</summary>
    public static SortedDictionary<string, SortedDictionary<IsoWeek, double>> Of(IEnumerable<RecordRow> records, DateTimeZone zone)
    {
        SortedDictionary<string, SortedDictionary<IsoWeek, double>> bySymptom = new(StringComparer.Ordinal);
        var counted = records
            .Where(row => row.Kind == RecordKind.Scouting && CountOf(row) is >= 0)
            .GroupBy(row => (Symptom: Text(row, "symptom").ToLowerInvariant(), Week: IsoWeek.Of(row.At.InZone(zone).Date)));
        foreach (var week in counted)
        {
            double plants = week.GroupBy(row => Text(row, "bench"), StringComparer.OrdinalIgnoreCase).Sum(bench => CountOf(bench.MaxBy(row => row.At)!)!.Value);
            if (!bySymptom.TryGetValue(week.Key.Symptom, out SortedDictionary<IsoWeek, double>? weeks))
            {
                bySymptom[week.Key.Symptom] = weeks = [];
            }

            weeks[week.Key.Week] = plants;
        }

        return bySymptom;
    }

    private static double? CountOf(RecordRow row)
        => double.TryParse(Text(row, "count"), NumberStyles.Float, CultureInfo.InvariantCulture, out double count) && double.IsFinite(count) ? count : null;

    private static string Text(RecordRow row, string field) => row.Fields.TryGetValue(field, out string? text) ? text.Trim() : "";
}
