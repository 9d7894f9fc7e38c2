using System.Collections.Immutable;
using ClimateLens.Analysis.Foliage;
using ClimateLens.Analysis.Reviews;

namespace ClimateLens.TestKit;

/// <summary>Parts of the review made by hand that tell of leaves.</summary>
internal static class SampleLeaves
{
    public static ImmutableArray<ErrorShare> ErrorShares { get; } = [new("relativeHumidity", 9.5, 0.62), new("canopyHumidity", 6, 0.25), new("airSpeed", 3, 0.06), new("film", 1, 0.01)];

    public static FoliageBasis Basis { get; } = new(["Sun: radiation outside.", "Outside temperature."], ["The temperature of the cover over the crop: from outside temperature, sky and wind (error 2 K)."], ["A wind of 2 m/s: none is logged."]);

    public static ImmutableArray<WetnessOpinion> Opinions { get; } =
    [
        new("film", "water film on the leaf", "[STANGHELLINI87]", true, "Needs the air speed at the leaf.", 31, 163) { AgreesHours = 163, Score = new(7, 20, 4, 8, 120, 0.6, -0.2, 1.4) },
        new("humidity", "humidity above a limit", "[SENTELHAS08]", true, "Knows no water from above.", 12, 163) { AgreesHours = 140, Score = new(3, 10, 14, 2, 126, -1.7, null, null) },
        new("decisionTree", "decision tree of the open field", "[KIM02]", false, "Unfit under glass.", 90, 163) { AgreesHours = 104 },
    ];

    public static ImmutableArray<PublishedLimit> Limits { get; } =
    [
        new("humidityFrom85", "Humidity was at or above 85 % for 40 of 163 hours with data.", null, "an extension service"),
        new("wetWithinADay", "Leaves were wet for up to 9 hours within 24.", true, "an extension service"),
        new("powderyMildew", "On 0 of 7 days the weather favoured powdery mildew.", false, "papers on rose"),
    ];

    public static ImmutableArray<WetPeriod> WetPeriods(ImmutableArray<ReviewHour> hours) =>
    [
        new(hours[2].Start, hours[5].Start, 2.5, 15.2, null, "none"),
        new(hours[40].Start, hours[52].Start, 11.25, 17.9, 0.31, "low"),
        new(hours[90].Start, hours[120].Start, 24, 18.4, 1.9, "high") { OutsideFit = true, UnknownHours = 1.5, Open = true },
        new(hours[130].Start, hours[140].Start, 9, null, null, null),
    ];
}
