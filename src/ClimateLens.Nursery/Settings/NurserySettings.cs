using System.Collections.Immutable;
using ClimateLens.Nursery.Problems;
using ClimateLens.Nursery.Records;
using ClimateLens.Nursery.Time;
using NodaTime;

namespace ClimateLens.Nursery.Settings;

/// <summary>Units that people read. The store and review.json are always SI.</summary>
public enum UnitSystem
{
    /// <summary>°C, kPa, L.</summary>
    Metric,

    /// <summary>°F, psi is not used for VPD: kPa stays; US gallons.</summary>
    Us,
}

/// <summary>A nursery file, read and checked.</summary>
/// <param name="FileName">The nursery file's name as the user gave it.</param>
/// <param name="Name">The nursery's name.</param>
/// <param name="Zone">IANA zone of the place.</param>
/// <param name="LatitudeDeg">North positive, -90 to 90. [°]</param>
/// <param name="LongitudeDeg">East positive, -180 to 180. [°]</param>
/// <param name="ElevationM">Above sea level, -430 to 5000. [m]</param>
/// <param name="Units">Units that people read.</param>
/// <param name="Store">Store folder, relative to the nursery file's folder or absolute.</param>
/// <param name="Site">Site folder, relative to the nursery file's folder or absolute.</param>
/// <param name="Houses">Houses in file order; at least one, ids distinct.</param>
/// <param name="Exports">Exports in file order.</param>
/// <param name="ContentHash">SHA-256 of the file's bytes, lower-case hex.</param>
public sealed record NurserySettings(
    string FileName,
    string Name,
    DateTimeZone Zone,
    double LatitudeDeg,
    double LongitudeDeg,
    double ElevationM,
    UnitSystem Units,
    string Store,
    string Site,
    ImmutableArray<HouseSettings> Houses,
    ImmutableArray<ExportSettings> Exports,
    string ContentHash)
{
    /// <summary>The nursery file's name without its folders, so that a review says the same wherever the files lie.</summary>
    public string ShortFileName => FileName[(FileName.AsSpan().LastIndexOfAny('/', '\\') + 1)..];

    /// <summary>The sample sets this: the nursery is invented, and every page must say so.</summary>
    public bool Invented { get; init; }

    /// <summary>Code of the language of pages, such as <c>nl</c>.</summary>
    public string Language { get; init; } = "en";

    /// <summary>Folder of the nursery's own notebooks, relative to the nursery file's folder or absolute; empty: <c>notebooks</c> beside the file where there is one.</summary>
    public string Notebooks { get; init; } = "";

    /// <summary>By house id, the hash of what the file says that may bear on the house (docs/unattended.md).</summary>
    public ImmutableDictionary<string, string> HouseHashes { get; init; } = ImmutableDictionary<string, string>.Empty;

    /// <summary>What looks wrong in the file and does no harm, in file order.</summary>
    public ImmutableArray<Problem> Warnings { get; init; } = [];
}

/// <summary>One house, its crops and its sensors.</summary>
/// <param name="Id">Short id of letters, digits, '-' and '_'; part of folder names.</param>
/// <param name="Name">What people read.</param>
/// <param name="AreaM2">Growing area, or null. [m²]</param>
/// <param name="Crops">Crops in file order; may be empty.</param>
/// <param name="Sensors">Stated accuracies; may be empty.</param>
/// <param name="Rules">Thresholds in force.</param>
public sealed record HouseSettings(
    string Id,
    string Name,
    double? AreaM2,
    ImmutableArray<CropSettings> Crops,
    ImmutableArray<SensorSettings> Sensors,
    RiskRules Rules)
{
    /// <summary>Cover of the house: <c>singleGlass</c>, <c>twinPane</c>, <c>film</c> or <c>doubleFilm</c>; empty where the file does not tell.</summary>
    public string Glazing { get; init; } = "";

    /// <summary>Names of its benches; empty where the file does not tell, and then any name is taken.</summary>
    public ImmutableArray<string> Benches { get; init; } = [];

    /// <summary>How pots are checked.</summary>
    public PotRules Pots { get; init; } = new();

    /// <summary>What treatments, floors and tanks are held against.</summary>
    public CareRules Care { get; init; } = new();
}

/// <summary>A crop of a house.</summary>
/// <param name="Species">Trade name, lower case, for example <c>cyclamen</c>.</param>
/// <param name="Potted">Date of potting, or null.</param>
/// <param name="Pinched">Date of pinch, or null.</param>
/// <param name="Sale">First date of sale, or null while it stands.</param>
/// <param name="PotDiameterCm">Pot size, or null. [cm]</param>
/// <param name="Spacing">Spacing steps in time order.</param>
public sealed record CropSettings(
    string Species,
    LocalDate? Potted,
    LocalDate? Pinched,
    LocalDate? Sale,
    double? PotDiameterCm,
    ImmutableArray<SpacingStep> Spacing)
{
    /// <summary>What else to watch for: <c>powderyMildew</c>.</summary>
    public ImmutableArray<string> WatchFor { get; init; } = [];

    /// <summary>Pathogens by numbers of the user's own.</summary>
    public ImmutableArray<PathogenSettings> Pathogens { get; init; } = [];
}

/// <summary>A pathogen by the five numbers of the general model of Magarey, Sutton and Thayer 2005, and the dry break that it outlives.</summary>
/// <param name="Name">What people read.</param>
/// <param name="LowestC">No infection at and below. [°C]</param>
/// <param name="BestC">Fewest wet hours needed. [°C]</param>
/// <param name="HighestC">No infection at and above. [°C]</param>
/// <param name="LeastHours">Wet hours needed at the best temperature. [h]</param>
/// <param name="MostHours">Wet hours that suffice at any temperature between the limits. [h]</param>
/// <param name="LongestDryHours">Longest dry break that does not end a wet period. [h]</param>
/// <param name="Source">Where the numbers come from, as the user wrote it.</param>
public sealed record PathogenSettings(string Name, double LowestC, double BestC, double HighestC, double LeastHours, double MostHours, double LongestDryHours, string Source);

/// <summary>Pots set at a distance from a date on.</summary>
/// <param name="From">First day at this spacing.</param>
/// <param name="Pattern"><c>square</c>, <c>triangular</c> or <c>rectangular</c>.</param>
/// <param name="DistanceCm">Centre to centre. [cm]</param>
/// <param name="RowDistanceCm">Second distance of a rectangular pattern, else null. [cm]</param>
public sealed record SpacingStep(LocalDate From, string Pattern, double DistanceCm, double? RowDistanceCm);

/// <summary>A sensor's stated accuracy.</summary>
/// <param name="Channel">Channel name.</param>
/// <param name="Sensor">Sensor name as in the export's column; empty for the only one.</param>
/// <param name="Accuracy">Half-width of the stated ± range. [SI unit of the channel]</param>
/// <param name="Source">Where the figure comes from, as the user wrote it; may be empty.</param>
public sealed record SensorSettings(string Channel, string Sensor, double Accuracy, string Source);

/// <summary>Thresholds of a risk hour and of watering, with defaults and their sources in docs/science/risk-hours.md.</summary>
/// <param name="MarginK">Risk when leaf temperature minus the air's dew point is below this. [K]</param>
/// <param name="TemperatureLowC">Lowest temperature of the pathogen's range. [°C]</param>
/// <param name="TemperatureHighC">Highest temperature of the pathogen's range. [°C]</param>
/// <param name="LeafNightOffsetK">Assumed air minus leaf temperature between sunset and sunrise. [K]</param>
/// <param name="LeafNightOffsetErrorK">Half-width of the assumption. [K]</param>
/// <param name="DryingHours">Hours of drying assumed to be needed before sunset: the first watering cut-off. [h]</param>
public sealed record RiskRules(
    double MarginK = 1.0,
    double TemperatureLowC = 5,
    double TemperatureHighC = 30,
    double LeafNightOffsetK = 1.0,
    double LeafNightOffsetErrorK = 0.5,
    double DryingHours = 4)
{
    /// <summary>Half-width of the error of a leaf temperature from the energy balance. [K]</summary>
    public double LeafBalanceErrorK { get; init; } = 0.4;

    /// <summary>Whether the air among closing leaves is taken to differ from the main sensor's where no sensor hangs in the canopy.</summary>
    public bool CanopyDifference { get; init; } = true;

    /// <summary>Air among the leaves of a closed canopy minus main sensor. [K]</summary>
    public double CanopyTemperatureK { get; init; } = -0.5;

    /// <summary>Standard error of that. [K]</summary>
    public double CanopyTemperatureErrorK { get; init; } = 0.5;

    /// <summary>Relative humidity among the leaves of a closed canopy minus main sensor. [points of %]</summary>
    public double CanopyHumidityPct { get; init; } = 5;

    /// <summary>Standard error of that. [points of %]</summary>
    public double CanopyHumidityErrorPct { get; init; } = 4;

    /// <summary>A day with less sun over the crop is dull. [MJ/m²]</summary>
    public double DullDayMJm2 { get; init; } = 2;

    /// <summary>Whether a leaf-wetness sensor rules over the film model.</summary>
    public bool WetnessSensorRules { get; init; }

    /// <summary>Names of the rules that the nursery file sets; the others are defaults and are shown as assumed.</summary>
    public ImmutableSortedSet<string> SetByUser { get; init; } = ImmutableSortedSet<string>.Empty;
}

/// <summary>A kind of file and how it reads. Keys follow the open Table Dialect and Table Schema words where they have one.</summary>
/// <param name="Name">Source name: letters, digits, '-' and '_'; part of folder names; distinct within house and kind.</param>
/// <param name="House">House id, or <see cref="ReadingBatch.WholeNursery"/>.</param>
/// <param name="Kind">Record kind, or null for readings.</param>
/// <param name="Files">Paths or globs relative to the nursery file's folder.</param>
/// <param name="Dialect">How the text is cut into fields.</param>
/// <param name="Time">How a row's time reads.</param>
/// <param name="Columns">The columns to take; others are named in the import sheet as not used.</param>
/// <param name="StepSeconds">Nominal step of readings, or null: the most frequent difference. [s]</param>
/// <param name="StampSide">What a stamp labels.</param>
/// <param name="Line">Line of the table in the nursery file, for messages.</param>
public sealed record ExportSettings(
    string Name,
    string House,
    RecordKind? Kind,
    ImmutableArray<string> Files,
    DialectSettings Dialect,
    TimeSettings Time,
    ImmutableArray<ColumnSettings> Columns,
    int? StepSeconds,
    StampSide StampSide,
    int Line);

/// <summary>How delimited text is cut into fields.</summary>
/// <param name="Encoding"><c>utf-8</c>, <c>utf-16le</c>, <c>utf-16be</c>, <c>windows-1252</c> or <c>iso-8859-1</c>; a byte order mark wins.</param>
/// <param name="Delimiter">One character.</param>
/// <param name="QuoteChar">One character; doubled inside a quoted field.</param>
/// <param name="DecimalChar">Decimal mark.</param>
/// <param name="GroupChar">Mark between groups of three digits, or null.</param>
/// <param name="CommentChar">Rows that start with it are skipped, or null.</param>
/// <param name="HeaderRow">1-based row of the names, counted over all lines; 0 when the file has none.</param>
/// <param name="DataRow">1-based row at which data start.</param>
/// <param name="MissingValues">Texts that mean "no value", beside the empty text.</param>
public sealed record DialectSettings(
    string Encoding,
    char Delimiter,
    char QuoteChar,
    char DecimalChar,
    char? GroupChar,
    char? CommentChar,
    int HeaderRow,
    int DataRow,
    ImmutableArray<string> MissingValues)
{
    /// <summary>1-based rows of the names where they stand in several rows, in order; the last one is <see cref="HeaderRow"/>. Empty for one row or none.</summary>
    public ImmutableArray<int> HeaderRows { get; init; } = [];

    /// <summary>Widths of the columns of a fixed-width file; empty when a delimiter stands between fields. [characters]</summary>
    public ImmutableArray<int> Widths { get; init; } = [];

    /// <summary>Sheet of a workbook by name or by 1-based position, or null: the only one with rows.</summary>
    public FieldRef? Sheet { get; init; }

    /// <summary>Patterns of the entries of a zip archive to take; empty: all with the ending of a text file.</summary>
    public ImmutableArray<string> Entries { get; init; } = [];

    /// <summary>Whether both '.' and ',' are decimal marks: <c>decimalChar = ".,"</c>.</summary>
    public bool EitherDecimalChar { get; init; }

    /// <summary>The marks of numbers together.</summary>
    public NumberMarks Marks => new(DecimalChar, EitherDecimalChar, GroupChar);
}

/// <summary>The marks of numbers.</summary>
/// <param name="DecimalChar">Decimal mark.</param>
/// <param name="EitherDecimalChar">Whether both '.' and ',' are decimal marks.</param>
/// <param name="GroupChar">Mark between groups of three digits, or null.</param>
public readonly record struct NumberMarks(char DecimalChar, bool EitherDecimalChar, char? GroupChar);

/// <summary>How a row's time reads.</summary>
/// <param name="Field">Column that holds date and time, or the first part of them.</param>
/// <param name="TimeOfDayField">Column that holds the time of day where it stands apart, else null.</param>
/// <param name="Format">
/// Unicode (UTS 35) date pattern of the field, or of all fields joined by one space (<see cref="StampPattern"/>), or one of <see cref="StampWords"/>.
/// </param>
/// <param name="Zone">Zone of the stamps: IANA, or a fixed offset for a clock that is never changed.</param>
public sealed record TimeSettings(FieldRef Field, FieldRef? TimeOfDayField, string Format, DateTimeZone Zone)
{
    /// <summary>Columns whose texts follow that of <see cref="Field"/>, each after one space.</summary>
    public ImmutableArray<FieldRef> MoreFields { get; init; } = [];

    /// <summary>Formats that rows may have instead of <see cref="Format"/>; each row is read by the one that keeps time moving.</summary>
    public ImmutableArray<string> MoreFormats { get; init; } = [];

    /// <summary>Year of the oldest stamp, where stamps name none, else null.</summary>
    public int? Year { get; init; }

    /// <summary>Columns with the end of a row's interval, joined by one space; none where a row has one time.</summary>
    public ImmutableArray<FieldRef> EndFields { get; init; } = [];

    /// <summary>Whether numbers of days or seconds may have a decimal comma.</summary>
    public bool DecimalComma { get; init; }

    /// <summary>All columns of the time, in their order.</summary>
    public ImmutableArray<FieldRef> Fields => [Field, .. MoreFields, .. TimeOfDayField is null ? ImmutableArray<FieldRef>.Empty : [TimeOfDayField]];

    /// <summary>All formats, in their order.</summary>
    public ImmutableArray<string> Formats => [Format, .. MoreFormats];
}

/// <summary>A column of a file, by header text or by 1-based position.</summary>
/// <param name="Name">Header text after trimming, or null when given by position.</param>
/// <param name="Position">1-based position, or null when given by name.</param>
public sealed record FieldRef(string? Name, int? Position)
{
    /// <summary>The name in quotes, or "column N".</summary>
    public override string ToString() => Name is null ? $"column {Position}" : $"\"{Name}\"";
}

/// <summary>A condition on a row: the field of that header holds that text.</summary>
/// <param name="Field">Header text.</param>
/// <param name="Text">What it holds, without blanks around it.</param>
public sealed record FieldCondition(string Field, string Text);

/// <summary>One column to take.</summary>
/// <param name="Field">Where it stands.</param>
/// <param name="Channel">Channel name (readings) or field name (records).</param>
/// <param name="Sensor">Sensor or line name; empty for the only one.</param>
/// <param name="Unit">Unit code as written by the user; empty for text fields.</param>
/// <param name="Line">Line in the nursery file, for messages.</param>
public sealed record ColumnSettings(FieldRef Field, string Channel, string Sensor, string Unit, int Line)
{
    /// <summary>For a valve column or a water meter: how the water reaches the crop.</summary>
    public WateringMethod? Method { get; init; }

    /// <summary>For a valve column: flow while open, or null. [L/min]</summary>
    public double? LitresPerMinute { get; init; }

    /// <summary>For a valve column or a water meter: bench or section that it serves; empty for the whole house.</summary>
    public string Bench { get; init; } = "";

    /// <summary>The column is read only from rows whose fields of these names hold these texts; empty: from every row.</summary>
    public ImmutableArray<FieldCondition> Where { get; init; } = [];

    /// <summary>Texts that mean "no value" in this column beside the dialect's.</summary>
    public ImmutableArray<string> MissingValues { get; init; } = [];

    /// <summary>Marks of this column's numbers, or null: those of the export.</summary>
    public NumberMarks? Marks { get; init; }

    /// <summary>Whether it counts up and starts anew, so that its differences are the amounts. The store holds the count as logged.</summary>
    public bool Counter { get; init; }

    /// <summary>Units that the file changes to, in order of time.</summary>
    public ImmutableArray<UnitChange> UnitChanges { get; init; } = [];
}

/// <summary>A unit that a column has from a time on.</summary>
/// <param name="From">First time at which it holds, by the clock of the file.</param>
/// <param name="Unit">Unit code.</param>
public sealed record UnitChange(LocalDateTime From, string Unit);
