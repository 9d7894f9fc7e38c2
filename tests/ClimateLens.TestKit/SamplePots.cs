using System.Collections.Immutable;
using ClimateLens.Analysis.Pots;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery.Records;
using ClimateLens.Science.Treatments;
using NodaTime;

namespace ClimateLens.TestKit;

/// <summary>Pots, roots and records of a made-up review.</summary>
internal static class SamplePots
{
    public static RootReport Roots { get; } = new("act",
    [
        new("dryThenSaturated", "1 pot went dry and was seen saturated within a day (Bench <A>).", "roots damaged by drying or flooding are open to infection"),
        new("coolWetMedium", "The medium was under 20 °C and wet (level 4 or more) in 5 pot checks.", "University of Massachusetts Extension 2015"),
    ]);

    public static PotReport Pots(ReviewPeriod period)
    {
        OffsetDateTime At(int day, int hour) => (period.From.LocalDateTime + Period.FromDays(day) + Period.FromHours(hour)).InZoneLeniently(SampleReviews.London).ToOffsetDateTime();
        LocalDate first = period.From.Date;
        return new PotReport(
            58,
            [new("first thing", 5, 5, 2, 1), new("late morning", 5, 4, 2, 0), new("early afternoon", 5, 2, 2, 0)],
            [.. Enumerable.Range(0, 7).Select(d => new PotDayReport(first.PlusDays(d), d > 4, 3, d > 4 ? 1 : 2, d > 4 ? 4 : 10))],
            [new("KL", 40, 5), new("", 18, 3)],
            new PotBandReport(2, 4, 56, 4, 6, 12, 5),
            [new(At(1, 9), "<A>", 3.8, 1.5, "tooWet"), new(At(3, 9), "B", 1.8, 2, "tooDry")],
            [
                new("<A>", 30, 3.1, 2.4, 5, [new(At(0, 7), 3.5, 4), new(At(0, 12), 1.3, 4), new(At(1, 7), 4.6, 4), new(At(6, 7), 3, 4)], [At(0, 14), At(1, 9)]),
                new("B", 26, 2.9, 0, 0, [new(At(0, 7), 3, 4)], []),
            ],
            [new("<A>", At(0, 12), 1.3, At(1, 7), 4.6)],
            [new(At(0, 12), "<A>", "7", 1, LeafSign.SevereFlagging, 2, true), new(At(2, 12), "B", "", null, LeafSign.Wilted, null, null)],
            new AgreementReport(
                ["KL", "MB"],
                [new("KL", "MB", 12, 3, new(0.62, 0.3, 0.82), new(0.8, 0.45, 0.94), new(-0.3, -0.5, -0.1), 0.4, 9, [new(3, 3, 6), new(3, 3.5, 4), new(4.5, 5, 2)])],
                [new("KL", 8, new(0.1, -0.2, 0.4))],
                23),
            new DryingReport(
                40,
                0.3,
                [
                    new("<A>", new(0.05, 0.04, 0.06), 0.6, new(At(6, 15), 2.6, 4), new(At(7, 7), new(2.3, 1.8, 2.8)), new(At(7, 15), new(1.9, 1.3, 2.5)), true),
                    new("B", new(0.04, 0.02, 0.06), 0.5, null, null, null, false),
                ],
                new DryingScore(34, 0.41, 0.36, 0.47, 0.91)));
    }

    public static RecordsReport Records(ReviewPeriod period)
    {
        OffsetDateTime At(int day, int hour) => (period.From.LocalDateTime + Period.FromDays(day) + Period.FromHours(hour)).InZoneLeniently(SampleReviews.London).ToOffsetDateTime();
        LocalDate first = period.From.Date;
        return new RecordsReport(
            ImmutableSortedDictionary<string, RecordCount>.Empty
                .Add("potChecks", new RecordCount(58, ""))
                .Add("tanks", new RecordCount(0, "none in this period; the last one 9 days before its end"))
                .Add("treatments", new RecordCount(2, "")),
            [
                new(At(1, 9), "", "drench", "root rot", "propamocarb", ["28"], 60, 6, At(2, 8)),
                new(At(3, 9), "B", "spray", "grey mould", "<i>x</i>", ["12", "9"], null, null, null),
            ],
            first.PlusDays(-60),
            [new("28", "carbamates", 2, 2, At(1, 9), ResistanceRisk.Medium, false), new("9", "", 1, 1, At(3, 9), ResistanceRisk.NotKnown, false)],
            [new(At(-20, 9), "B", "paclobutrazol", 26, "tomato", true, 3)],
            [new("free chlorine", "flood tank", 1, 2, "mg/L", 4, 1, [new(At(2, 9), "B", WateringMethod.EbbAndFlow, 0.4), new(At(4, 9), "", null, null)])],
            [new(At(1, 12), "potCheck", "<A>", "KL", At(1, 9), At(2, 8))],
            [new("width", first.PlusDays(-6), first.PlusDays(1), 0.2, 1.4)],
            [new(At(1, 10), "B", "grey mould", 3)]);
    }
}
