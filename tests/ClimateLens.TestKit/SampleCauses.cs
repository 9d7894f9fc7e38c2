using System.Collections.Immutable;
using ClimateLens.Analysis.Reviews;
using NodaTime;

namespace ClimateLens.TestKit;

/// <summary>Parts of the review made by hand that tell of causes.</summary>
public static class SampleCauses
{
    public static ImmutableArray<Cause> Shares(double riskHours) =>
    [
        new("lateWatering", new Estimate(11.25, 7.5, 14)),
        new("leafWetting", new Estimate(8.5, 3, 15.25)),
        new("closedCanopy", new Estimate(4, 0.5, 9)),
        new("weather", new Estimate(riskHours - 23.75, 4, 22)),
    ];

    public static ImmutableArray<WhatIf> WhatIfs { get; } =
    [
        new("waterBeforeCutOff", new Estimate(29, 22, 40), new Estimate(12, 8, 15)),
        new("waterOffLeaves", new Estimate(22, 12, 33), new Estimate(19, 11, 26)),
        new("widerSpacing", new Estimate(35, 25, 47), new Estimate(6, 1, 11)),
        new("all", new Estimate(17, 4, 26), new Estimate(24, 15, 33)),
    ];

    public static HouseBalanceReport Balance { get; } = new(
        28,
        [
            new("sunTranspiration", 0.0922, 0.0093, "g/(m² h) per W/m²", 0, 1.47, "", true, "[FAO56]"),
            new("leak", 0.05, null, "m/h", 0.05, 12, "low", false, "[EP406] (memory)"),
            new("windLeak", 0.13, 0.4, "m/h per m/s", 0, 2, "", false, "[BAPTISTA99] (memory)"),
        ],
        0.53,
        7,
        0.77,
        0.61,
        true,
        ["Vent position is not logged: all exchange with the outside is one number, and what more venting would do cannot be told."])
    {
        Learned = new LearnedResponseReport("planeAndTrees", 7, 0.82, 0.7, 0.43, 0.51, "learned", new Estimate(1.14, 1.02, 1.42)),
    };

    public static OutlookReport Outlook { get; } = new(
        new LocalDateTime(2025, 10, 20, 17, 52).WithOffset(Offset.FromHours(1)),
        new LocalDateTime(2025, 10, 21, 7, 41).WithOffset(Offset.FromHours(1)),
        new Estimate(7.7, 4, 12.8),
        new OutlookScore(18, 0.81, 0.47, 2.44),
        new LocalDateTime(2025, 10, 20, 13, 28).WithOffset(Offset.FromHours(1)),
        new LocalDateTime(2025, 10, 20, 10, 20).WithOffset(Offset.FromHours(1)),
        7,
        0.84);

    public static ImmutableArray<WateringHint> Hints { get; } = [new WateringHint(new LocalDateTime(2025, 10, 15, 15, 10).WithOffset(Offset.FromHours(1)), 1.3, 6.2)];

    public static FloodReport Floods { get; } = new(
        2,
        [new Flood(new LocalDateTime(2025, 10, 14, 9, 30).WithOffset(Offset.FromHours(1)), "Bench 4", 1.4, true), new Flood(new LocalDateTime(2025, 10, 16, 9, 30).WithOffset(Offset.FromHours(1)), "", 4.1, false)],
        new FloodEffect(6, 5, new Estimate(0.8, 0.4, 1.2), 0.11),
        new FloodEffect(9, 8, new Estimate(0.3, 0, 0.6), 0.09));

    public static MatchedWaterings Matched { get; } = new(
        17,
        13,
        1239,
        new Estimate(0.95, 0.63, 1.29),
        new Estimate(1.08, 0.76, 1.27),
        true,
        [new EffectPoint(-1, 0, -0.1, 0.1), new EffectPoint(0, 0.05, -0.1, 0.2), new EffectPoint(1, 1.4, 1, 1.8)],
        [new MatchedCovariate("hour of the day", 2.97, 0.03), new MatchedCovariate("sun", 0.69, -0.31)],
        ["wind"],
        100,
        0.09);
}
