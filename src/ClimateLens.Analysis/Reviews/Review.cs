using System.Collections.Immutable;
using ClimateLens.Analysis.Foliage;
using ClimateLens.Nursery.Records;
using NodaTime;

namespace ClimateLens.Analysis.Reviews;

/// <summary>
/// The result of one house period, whole and immutable; review.json is its image. All numbers SI, all times with offset.
/// A part that is null is unknown, and <see cref="NotKnown"/> says why.
/// </summary>
public sealed record Review
{
    /// <summary>Version of docs/review.schema.json that this follows.</summary>
    public required string SchemaVersion { get; init; }

    /// <summary>The house.</summary>
    public required ReviewedHouse House { get; init; }

    /// <summary>The period.</summary>
    public required ReviewPeriod Period { get; init; }

    /// <summary>How much of the period the data cover.</summary>
    public required Coverage Coverage { get; init; }

    /// <summary>Every hour of the period in time order, with or without data.</summary>
    public required ImmutableArray<ReviewHour> Hours { get; init; }

    /// <summary>Risk hours of the hours with data; null without humidity or temperature.</summary>
    public required Estimate? RiskHours { get; init; }

    /// <summary>Risk hours of the period before, computed alike from the run-in; null where it was not loaded or has no data.</summary>
    public Estimate? RiskHoursBefore { get; init; }

    /// <summary>Counts of the seven days before, for comparison.</summary>
    public WeekBefore? WeekBefore { get; init; }

    /// <summary>What each cause of error brings to the risk hours, greatest first; empty without a total.</summary>
    public ImmutableArray<ErrorShare> ErrorShares { get; init; } = [];

    /// <summary>On what the leaves' temperature and wetness rest: measured, modelled and assumed; null without air.</summary>
    public FoliageBasis? LeafBasis { get; init; }

    /// <summary>The model of leaf temperature against the leaf sensor, by night and by day; empty without one.</summary>
    public ImmutableArray<LeafScore> LeafScores { get; init; } = [];

    /// <summary>Wet periods; null until a film model or a wetness sensor rules.</summary>
    public ImmutableArray<WetPeriod>? WetPeriods { get; init; }

    /// <summary>Ways to tell wet leaves, the film model first; empty without air.</summary>
    public ImmutableArray<WetnessOpinion> WetnessOpinions { get; init; } = [];

    /// <summary>Published limits and where the period stands to them; empty without air.</summary>
    public ImmutableArray<PublishedLimit> PublishedLimits { get; init; } = [];

    /// <summary>Canopy; null until it is modelled or measured.</summary>
    public CanopyState? Canopy { get; init; }

    /// <summary>Waterings in time order; null when nothing tells of waterings (no log, no valve), empty when a log tells of none.</summary>
    public required ImmutableArray<Watering>? Waterings { get; init; }

    /// <summary>Sudden rises of the humidity that nothing logged explains, which may be waterings; null where no balance has skill.</summary>
    public ImmutableArray<WateringHint>? WateringHints { get; init; }

    /// <summary>Floods on dull and on bright days; null without floods or without the weeks before.</summary>
    public FloodReport? Floods { get; init; }

    /// <summary>What-ifs; null until the house balance can answer.</summary>
    public ImmutableArray<WhatIf>? WhatIfs { get; init; }

    /// <summary>Causes; null until they can be told apart.</summary>
    public ImmutableArray<Cause>? Causes { get; init; }

    /// <summary>The vapour balance of the house; null where it was not fitted.</summary>
    public HouseBalanceReport? HouseBalance { get; init; }

    /// <summary>Waterings over the leaves against alike stretches without one; null without them or without the weeks before.</summary>
    public MatchedWaterings? MatchedWaterings { get; init; }

    /// <summary>Pot checks; null when there are none.</summary>
    public PotReport? Pots { get; init; }

    /// <summary>Whether the weather in the pots favoured root rot; null without pot checks.</summary>
    public RootReport? Roots { get; init; }

    /// <summary>Records and what they say; null when there are none.</summary>
    public RecordsReport? Records { get; init; }

    /// <summary>Risk hours by week beside the plants found affected; null where none were counted.</summary>
    public ScoutingReport? Scouting { get; init; }

    /// <summary>Outlook for the first night after the period; null where neither its risk hours nor a watering cut-off can be told.</summary>
    public OutlookReport? Outlook { get; init; }

    /// <summary>Each series with its flags and what is to be said of it.</summary>
    public required ImmutableArray<SensorReport> Sensors { get; init; }

    /// <summary>What a learned check says of the sensors beside it; null until there is enough to learn from.</summary>
    public SecondOpinionReport? SecondOpinion { get; init; }

    /// <summary>Each source's clock against the sun, the house's own first.</summary>
    public ImmutableArray<ClockReport> Clocks { get; init; } = [];

    /// <summary>The files behind the period and the run-in, with what the import found in each.</summary>
    public ImmutableArray<ImportedFile> Imports { get; init; } = [];

    /// <summary>Findings, most important first, rank from 1.</summary>
    public required ImmutableArray<Finding> Findings { get; init; }

    /// <summary>What the data cannot tell, and why.</summary>
    public required ImmutableArray<Unknown> NotKnown { get; init; }

    /// <summary>How it all came about.</summary>
    public required Provenance Provenance { get; init; }
}

/// <summary>What a cause of error brings to the risk hours of the period by itself.</summary>
/// <param name="Cause"><c>airTemperature</c>, <c>relativeHumidity</c>, <c>leafTemperature</c>, <c>canopyTemperature</c>, <c>canopyHumidity</c>, <c>cover</c>, <c>airSpeed</c>, <c>light</c> or <c>film</c>.</param>
/// <param name="Hours">Risk hours by which one standard deviation of it moves the total. [h]</param>
/// <param name="Share">Its part of the variance of all causes. [1]</param>
public sealed record ErrorShare(string Cause, double Hours, double Share);

/// <summary>The model of leaf temperature against the leaf sensor, over run-in and period.</summary>
/// <param name="Part"><c>night</c> or <c>day</c>.</param>
/// <param name="Hours">Hours in which both tell. [h]</param>
/// <param name="BiasK">Model less sensor, on the mean. [K]</param>
/// <param name="BiasLowK">Lower end of its 5 to 95 % range; null where too little tells. [K]</param>
/// <param name="BiasHighK">Upper end. [K]</param>
/// <param name="RmseK">Root mean square of the differences. [K]</param>
public sealed record LeafScore(string Part, double Hours, double BiasK, double? BiasLowK, double? BiasHighK, double RmseK);

/// <summary>A value with its range: 5 % and 95 % of the draws (or as its method says).</summary>
public sealed record Estimate(double Value, double Low, double High);

/// <summary>The house of a review.</summary>
/// <param name="Id">House id.</param>
/// <param name="Name">House name.</param>
/// <param name="Nursery">Nursery name.</param>
/// <param name="Crop">Species that stands in the period, or null.</param>
/// <param name="Invented">True for demonstration data of an invented nursery.</param>
public sealed record ReviewedHouse(string Id, string Name, string Nursery, string? Crop, bool Invented);

/// <summary>The period of a review.</summary>
/// <param name="From">Start, local midnight.</param>
/// <param name="To">End, exclusive, local midnight.</param>
/// <param name="Week">ISO 8601 week such as <c>2025-W42</c>, or null when it is not one whole week.</param>
/// <param name="TimeZone">IANA zone.</param>
public sealed record ReviewPeriod(OffsetDateTime From, OffsetDateTime To, string? Week, string TimeZone);

/// <summary>How much of a period the data cover.</summary>
/// <param name="ExpectedHours">Hours of the period; 167 or 169 when the clocks change.</param>
/// <param name="HoursWithData">Hours in which both temperature and humidity cover at least half.</param>
/// <param name="Gaps">Stretches without them, in time order.</param>
public sealed record Coverage(int ExpectedHours, int HoursWithData, ImmutableArray<Gap> Gaps);

/// <summary>Counts of the seven days before a period.</summary>
/// <param name="HoursWithData">Hours with usable air temperature and humidity.</param>
/// <param name="LeafWettings">Waterings that wetted leaves; null where no watering is known of those days.</param>
/// <param name="LateLeafWettings">Those of them that ended after the cut-off.</param>
public sealed record WeekBefore(int HoursWithData, int? LeafWettings, int? LateLeafWettings);

/// <summary>A stretch without usable air temperature or humidity, at least three steps long.</summary>
/// <param name="Start">Start.</param>
/// <param name="End">End, exclusive.</param>
/// <param name="Hours">Length. [h]</param>
/// <param name="Why"><c>noReadings</c>, <c>missingValue</c> or <c>failedCheck</c>.</param>
public sealed record Gap(OffsetDateTime Start, OffsetDateTime End, double Hours, string Why);

/// <summary>One hour; null where the data do not carry it.</summary>
/// <param name="Start">Start of the hour.</param>
/// <param name="AirTemperatureC">Mean air temperature. [°C]</param>
/// <param name="RelativeHumidityPct">Mean relative humidity. [%]</param>
/// <param name="VpdKPa">Mean vapour-pressure deficit of the air. [kPa]</param>
/// <param name="DewPointC">Dew point of the mean vapour pressure at the main sensor. [°C]</param>
/// <param name="LeafTemperatureC">Leaf temperature, measured, modelled or assumed. [°C]</param>
/// <param name="DewPointMarginK">Leaf temperature minus the dew point of the air among the leaves. [K]</param>
/// <param name="AbsoluteHumidityGm3">Mean absolute humidity. [g/m³]</param>
/// <param name="Wet">Whether leaves were wet for at least half of the hour; null where that is not known.</param>
/// <param name="Risk">Whether a risk hour is more likely than not.</param>
/// <param name="RiskProbability">Share of the draws in which it is one. [1]</param>
/// <param name="Night">Whether the sun is down in the middle of the hour.</param>
public sealed record ReviewHour(
    OffsetDateTime Start,
    double? AirTemperatureC,
    double? RelativeHumidityPct,
    double? VpdKPa,
    double? DewPointC,
    double? LeafTemperatureC,
    double? DewPointMarginK,
    double? AbsoluteHumidityGm3,
    bool? Wet,
    bool? Risk,
    double? RiskProbability,
    bool Night)
{
    /// <summary>Dew point of the air among the leaves, from which the margin is counted. [°C]</summary>
    public double? LeafAirDewPointC { get; init; }

    /// <summary>Share of the opinions on wet leaves that say wet: between 0 and 1 the hour is unsure. [1]</summary>
    public double? WetOpinionShare { get; init; }

    /// <summary>Whether the opinions on wet leaves part.</summary>
    public bool WetUnsure => WetOpinionShare is > 0 and < 1;
}

/// <summary>A wet period; one that began before the period is told whole.</summary>
/// <param name="Start">Start.</param>
/// <param name="End">End, exclusive.</param>
/// <param name="Hours">Wet hours, dry breaks left out. [h]</param>
/// <param name="MeanTemperatureC">Mean leaf temperature of the wet hours; null when not known. [°C]</param>
/// <param name="Index">Index of Broome et al. 1995, a logit; null where the equation does not speak (under 4 h) or the temperature is not known. [1]</param>
/// <param name="Grade"><c>none</c>, <c>low</c>, <c>moderate</c> or <c>high</c>: how far the weather favoured grey mould; null when not known.</param>
public sealed record WetPeriod(OffsetDateTime Start, OffsetDateTime End, double Hours, double? MeanTemperatureC, double? Index, string? Grade)
{
    /// <summary>Whether its length or temperature lies outside the trials behind the index.</summary>
    public bool OutsideFit { get; init; }

    /// <summary>Hours within it of which it is not known whether leaves were wet. [h]</summary>
    public double UnknownHours { get; init; }

    /// <summary>Whether the data begin or end within it, so that it may be longer than told.</summary>
    public bool Open { get; init; }
}

/// <summary>Ground cover and closure date.</summary>
/// <param name="Cover">Cover on the last day of the period. [1]</param>
/// <param name="ClosureDate">When the spacing that the crop stands at closes, past or to come; null when that is not expected before its sale (or four months on).</param>
public sealed record CanopyState(Estimate Cover, CanopyClosure? ClosureDate)
{
    /// <summary>Cover day by day over the period.</summary>
    public ImmutableArray<CanopyDay> Days { get; init; } = [];

    /// <summary>Measured widths that the growth curve was fitted to, a mean a day.</summary>
    public ImmutableArray<CanopyWidth> Widths { get; init; } = [];

    /// <summary>The day from which growth is counted.</summary>
    public LocalDate CountedFrom { get; init; }

    /// <summary>What was assumed of crop and start, or empty.</summary>
    public string Assumption { get; init; } = "";

    /// <summary>Where the numbers of growth come from before a plant is measured.</summary>
    public string Growth { get; init; } = "";
}

/// <summary>Ground cover at noon of a day. [1]</summary>
public sealed record CanopyDay(LocalDate Date, Estimate Cover);

/// <summary>Mean width of the plants measured on a day, and its standard error. [cm]</summary>
public sealed record CanopyWidth(LocalDate Date, double WidthCm, double ErrorCm);

/// <summary>When cover reaches 0.95: half of the drawn growth curves have closed by then, 5 % and 95 %; the last null when fewer ever do.</summary>
public sealed record CanopyClosure(LocalDate Value, LocalDate Low, LocalDate? High);

/// <summary>A watering.</summary>
/// <param name="Start">Start.</param>
/// <param name="End">End, or null when neither end nor duration is known.</param>
/// <param name="Method">How the water came, or null when the data do not tell.</param>
/// <param name="WetsLeaves">Whether the method wets leaves, or null with the method.</param>
/// <param name="Bench">Bench or section; empty for the whole house.</param>
/// <param name="Litres">Amount, or null. [L]</param>
/// <param name="Sunset">Sunset of that day, or null in polar day or night.</param>
/// <param name="CutOff">Latest finish that still lets leaves dry before sunset; null when leaves stay dry, and on a day of which no finish lets them dry (then it is late).</param>
/// <param name="AfterCutOff">Whether it ended later; null when that is not known.</param>
/// <param name="AbsoluteHumidityBeforeGm3">Mean of the hour before the start of its round: waterings of the house less than an hour apart, which share these figures. [g/m³]</param>
/// <param name="AbsoluteHumidityAfterGm3">Mean of the hour after the end of its round; null when an end in it is not known. [g/m³]</param>
/// <param name="AbsoluteHumidityRiseGm3">After less before, with sensor error; a difference, not an effect. [g/m³]</param>
/// <param name="RelativeHumidityBeforePct">Mean of the hour before the start of its round. [%]</param>
/// <param name="RelativeHumidityAfterPct">Mean of the hour after the end of its round. [%]</param>
/// <param name="RiskHoursCaused">Risk hours that its lateness caused; null where it was not late, or the week could not be replayed.</param>
/// <param name="Source">Where it comes from: a log's file and line, or a valve column.</param>
public sealed record Watering(
    OffsetDateTime Start,
    OffsetDateTime? End,
    WateringMethod? Method,
    bool? WetsLeaves,
    string Bench,
    double? Litres,
    OffsetDateTime? Sunset,
    OffsetDateTime? CutOff,
    bool? AfterCutOff,
    double? AbsoluteHumidityBeforeGm3,
    double? AbsoluteHumidityAfterGm3,
    Estimate? AbsoluteHumidityRiseGm3,
    double? RelativeHumidityBeforePct,
    double? RelativeHumidityAfterPct,
    Estimate? RiskHoursCaused,
    string Source)
{
    /// <summary>Whether the cut-off comes from the film model with that day's drying, rather than from a fixed number of hours; null without one.</summary>
    public bool? CutOffByFilm { get; init; }

    /// <summary>From its end to sunset, below 0 for later; null where either is not known. [h]</summary>
    public double? HoursToSunset { get; init; }

    /// <summary>What leaves kept wet could have lost from its end to sunset; they hold about 0.2 mm. Null where it wets none or that is not known. [mm]</summary>
    public double? DryingLeftMm { get; init; }

    /// <summary>Highest leaf temperature from the step before it to its end; null where it wets none or that is not known. [°C]</summary>
    public double? LeafTemperatureC { get; init; }

    /// <summary>Strongest sun over the crop in that time; null likewise. [W/m²]</summary>
    public double? SunOverCropWm2 { get; init; }
}

/// <summary>A sudden rise of the humidity that sun, vents, outside air and the waterings known do not explain: a watering that nobody wrote down, or a door, a spray, a hose on the floor.</summary>
/// <param name="At">When it began.</param>
/// <param name="RiseGm3">Humidity a quarter of an hour on, less what the balance expects. [g/m³]</param>
/// <param name="Score">That rise over its usual scatter at that time of day; 4 or more. [1]</param>
public sealed record WateringHint(OffsetDateTime At, double RiseGm3, double Score);

/// <summary>The period replayed another way.</summary>
public sealed record WhatIf(string Name, Estimate RiskHours, Estimate RiskHoursAvoided);

/// <summary>A cause's share of the risk hours.</summary>
public sealed record Cause(string Name, Estimate RiskHours);

/// <summary>Records of a kind that were read for the period.</summary>
/// <param name="Count">Rows in the period.</param>
/// <param name="Note">When the last one was where the period has none, else empty.</param>
public sealed record RecordCount(int Count, string Note);

/// <summary>A series of the house and how far it can be trusted.</summary>
/// <param name="Source">Export name.</param>
/// <param name="Channel">Channel name.</param>
/// <param name="Sensor">Sensor name; empty for the only one.</param>
/// <param name="Flags">Steps of the period by flag.</param>
/// <param name="Notes">What is to be said, in plain sentences.</param>
public sealed record SensorReport(string Source, string Channel, string Sensor, FlagCounts Flags, ImmutableArray<string> Notes)
{
    /// <summary>Every stretch of the period that a check put in doubt or failed, in time order.</summary>
    public ImmutableArray<FlaggedStretch> Flagged { get; init; } = [];
}

/// <summary>A stretch of a series in which every value has the same flag from the same checks.</summary>
/// <param name="Start">Start of its first step.</param>
/// <param name="End">End of its last step.</param>
/// <param name="Flag"><c>suspect</c> or <c>fail</c>.</param>
/// <param name="Checks">Checks that say so, for example <c>grossRange</c>.</param>
public sealed record FlaggedStretch(OffsetDateTime Start, OffsetDateTime End, string Flag, ImmutableArray<string> Checks);

/// <summary>Steps by flag; the codes are those of <see cref="ClimateLens.Nursery.Time.QualityFlag"/>.</summary>
public sealed record FlagCounts(int Pass, int NotEvaluated, int Suspect, int Fail, int Missing);

/// <summary>A ranked statement with evidence and what to do.</summary>
/// <param name="Id">Stable id, for example <c>lateOverheadWatering</c>.</param>
/// <param name="Rank">1 is first.</param>
/// <param name="Text">The statement, as a finished plain sentence in metric units.</param>
/// <param name="Action">What to do, or empty.</param>
/// <param name="Caution">Caution, source or "common practice", or empty.</param>
/// <param name="Evidence">What it rests on: sentences with numbers and times.</param>
public sealed record Finding(string Id, int Rank, string Text, string Action, string Caution, ImmutableArray<string> Evidence)
{
    /// <summary>What to do in a few words.</summary>
    public string Title { get; init; } = "";

    /// <summary>Risk hours of the period that doing so would have avoided; null where that is not known or nothing that could be. [h]</summary>
    public Estimate? RiskHoursAvoided { get; init; }
}

/// <summary>Something that the data cannot tell.</summary>
/// <param name="What">Key of the review, for example <c>causes</c>.</param>
/// <param name="Why">Why, and what would make it known.</param>
public sealed record Unknown(string What, string Why);
