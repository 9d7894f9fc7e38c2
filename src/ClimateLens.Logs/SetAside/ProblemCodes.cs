using System.Reflection;
using ClimateLens.Nursery.Problems;

namespace ClimateLens.Logs.SetAside;

/// <summary>Every problem that the import and the store report.</summary>
public static class ProblemCodes
{
    // Whole files and paths.
    internal static readonly ProblemCode NoFiles = new("import.noFiles", Severity.Warning, "A pattern of an export matches no file.", "Correct the pattern under files, or put the export there.");
    internal static readonly ProblemCode FolderClosed = new("import.folderClosed", Severity.Error, "The system does not let a folder of exports be read; files in it are not seen.", "Give the user of the run the right to read the folder.");
    internal static readonly ProblemCode NotFound = new("import.notFound", Severity.Error, "A file that an export names does not exist.", "Correct the path under files, or put the file there.");
    internal static readonly ProblemCode Folder = new("import.folder", Severity.Error, "A path of an export is a folder.", "Name a file, or a pattern such as folder/*.csv.");
    internal static readonly ProblemCode Packed = new("import.packed", Severity.Error, "A packed file or a workbook cannot be read.", "Unpack it, or save the sheet as CSV.");
    internal static readonly ProblemCode Entry = new("import.entry", Severity.Warning, "An entry of a zip archive is not taken.", "Pack the files again under plain names.");
    internal static readonly ProblemCode NoEntries = new("import.noEntries", Severity.Warning, "A zip archive holds no entry that is taken.", "Give the patterns of the entries: entries = [\"*.csv\"].");
    internal static readonly ProblemCode EntriesLeft = new("import.entriesLeft", Severity.Note, "Some entries of a zip archive are not taken.", "Name them under entries, if they are wanted.");
    internal static readonly ProblemCode Unreadable = new("import.unreadable", Severity.Error, "The system does not let the file be read.", "Close the program that holds it, or change its permissions.");
    internal static readonly ProblemCode Empty = new("import.empty", Severity.Warning, "The file holds nothing.", "Export it again.");
    internal static readonly ProblemCode HeaderOnly = new("import.headerOnly", Severity.Warning, "The file holds no data row.", "Export it again, or correct headerRow and dataRow.");
    internal static readonly ProblemCode Binary = new("import.binary", Severity.Error, "The file is no text in the encoding of the export.", "Save it as text (CSV), or correct encoding.");
    internal static readonly ProblemCode TooLarge = new("import.tooLarge", Severity.Error, "The file is larger than 4 GiB.", "Export shorter periods.");
    internal static readonly ProblemCode RowTooLong = new("import.rowTooLong", Severity.Error, "A row is longer than 64 MiB; nothing of the file is taken.", "Look whether the file holds line ends, and export it again.");
    internal static readonly ProblemCode SameFile = new("import.sameFile", Severity.Note, "The file holds the same bytes as another one of its export; it changes nothing.", "Nothing needs to be done.");
    internal static readonly ProblemCode KeptOld = new("import.keptOld", Severity.Warning, "The settings of the export changed, but files that were imported with the old ones are gone; their rows stay as they were read then.", "Put the files back and import again, if the change matters to them.");

    // Settings that do not fit a file.
    internal static readonly ProblemCode TimeFormat = new("import.timeFormat", Severity.Error, "The time format of the export is no pattern that can be read.", "Use iso, or yyyy MM dd HH mm ss with the marks between them, for example dd-MM-yyyy HH:mm.");
    internal static readonly ProblemCode NoHeader = new("import.noHeader", Severity.Error, "The file ends before the row of its column names.", "Correct headerRow.");
    internal static readonly ProblemCode TimeColumn = new("import.timeColumn", Severity.Error, "The file has no such column for the time; nothing of it is taken.", "Correct field or position under time.");
    internal static readonly ProblemCode Column = new("import.column", Severity.Warning, "The file has no such column; it counts as missing.", "Correct field or position of the column.");
    internal static readonly ProblemCode HeaderTwice = new("import.headerTwice", Severity.Warning, "Several columns of the file bear the name; none is taken.", "Give the column by position.");

    internal static readonly ProblemCode OtherRows = new("import.otherRows", Severity.Note, "Rows of a long table belong to none of the columns of the export; they are passed over, as columns are that nobody takes.", "Add an [[export.column]] with a where that fits them, if they are wanted.");
    internal static readonly ProblemCode WhereNothing = new("import.whereNothing", Severity.Warning, "No row of a long table belongs to any of the columns of the export.", "Correct the texts under where; they must stand in the file just so.");
    internal static readonly ProblemCode WhereField = new("import.whereField", Severity.Error, "The file has no such column for a condition under where; no row fits it.", "Correct the header text under where.");

    internal static readonly ProblemCode NulTail = new("import.nulTail", Severity.Note, "The file ends in NUL bytes, as when a logger sets room aside beforehand or lost its power while writing; they are passed over.", "Nothing needs to be done.");

    // Rows set aside.
    internal static readonly ProblemCode Time = new("import.time", Severity.Warning, "The time of the row cannot be read; the row is set aside.", "Correct format under time, or the row.");
    internal static readonly ProblemCode TimeSkipped = new("import.timeSkipped", Severity.Warning, "The clock never showed this time: it was put forward in spring; the row is set aside.", "If the logger's clock is never changed, give its fixed offset as timeZone under time, for example +01:00.");
    internal static readonly ProblemCode TimeTwice = new("import.timeTwice", Severity.Warning, "The clock showed this time twice, since it was put back in autumn, and the order of the rows does not tell which is meant; the row is set aside.", "If the logger's clock is never changed, give its fixed offset as timeZone under time, for example +01:00.");
    internal static readonly ProblemCode TimeOrder = new("import.timeOrder", Severity.Warning, "The time of the row reads in two ways by the formats of the export, and the order of the rows does not tell which is meant; the row is set aside.", "If the file has one format only, give that one as format under time; else correct the row.");
    internal static readonly ProblemCode TimeEnd = new("import.timeEnd", Severity.Warning, "The interval of the row ends before it starts, or its end cannot be read; the row is set aside.", "Correct endField under time, or the row.");
    internal static readonly ProblemCode Fields = new("import.fields", Severity.Warning, "The row has more or fewer fields than the header; it is set aside.", "Correct the row, the delimiter or headerRow.");
    internal static readonly ProblemCode Torn = new("import.torn", Severity.Warning, "A cell of the row has not the form that all others of its column have, above and below: as when a piece of the file was lost, and the row is made of two. The row is set aside.", "Correct the row, if its values matter.");
    internal static readonly ProblemCode TimeLeap = new("import.timeLeap", Severity.Warning, "The time of the row leaps far away from those of the rows above and below, which follow each other: as when a digit was lost. The row is set aside.", "Correct the time of the row, if its values matter.");
    internal static readonly ProblemCode Quotes = new("import.quotes", Severity.Warning, "A quote is not closed or stands inside a field; the row is set aside.", "Correct the row, or quoteChar.");
    internal static readonly ProblemCode Bytes = new("import.bytes", Severity.Warning, "The row holds bytes that are no text in the encoding of the export; it is set aside.", "Correct encoding (windows-1252 is usual for older programs), or the row.");
    internal static readonly ProblemCode FieldTooLong = new("import.fieldTooLong", Severity.Warning, "A field is longer than 64 KiB; the row is set aside.", "Correct the row.");
    internal static readonly ProblemCode HeaderAgain = new("import.headerAgain", Severity.Note, "The row repeats the header; it is set aside.", "Nothing needs to be done.");
    internal static readonly ProblemCode HeaderChanged = new("import.headerChanged", Severity.Note, "The row names the columns anew, in another order or number; it is set aside, and the rows below it are read by the new names.", "Nothing needs to be done, if the names still mean the same.");
    internal static readonly ProblemCode HeaderStrange = new("import.headerStrange", Severity.Warning, "In the middle of the file the columns are named anew, and what is read cannot be found by the new names; that row and those below it are set aside.", "Put the rows from there on into a file of their own, with an [[export]] that fits it.");
    internal static readonly ProblemCode SummaryRow = new("import.summaryRow", Severity.Note, "The row holds totals or averages and no reading; it is set aside.", "Nothing needs to be done.");
    internal static readonly ProblemCode House = new("import.house", Severity.Warning, "The row names a house that the nursery file does not have; it is set aside.", "Correct the row, or add the house to the nursery file.");

    // What was taken for granted about the times of a file.
    internal static readonly ProblemCode TimeFormats = new("import.timeFormats", Severity.Note, "The export lists several formats for its times; each row was read by the one that keeps time moving, and this many rows took each.", "Nothing needs to be done, unless the file has one format only: then give that one.");
    internal static readonly ProblemCode TimeYears = new("import.timeYears", Severity.Note, "The times name no year and run over a new year; the year given under time holds for the oldest row.", "Look whether the years are right; else correct year under time.");
    internal static readonly ProblemCode TimeStep = new("import.timeStep", Severity.Note, "The times stray around a regular step, as when a logger cuts them to whole minutes; each reading counts for the step that it was meant for.", "Nothing needs to be done; stepMinutes sets another step.");

    // Cells that become missing.
    internal static readonly ProblemCode Number = new("import.number", Severity.Warning, "The cell is neither a number nor a code for a missing value; it counts as missing and the rest of the row stands.", "Correct decimalChar or groupChar, or add the text to missingValues.");
    internal static readonly ProblemCode CutShort = new("import.cutShort", Severity.Warning, "The last cell of the row may have lost its end: no line end follows, or a piece of it stands in the next line. It counts as missing and the rest of the row stands.", "Nothing needs to be done where the file goes on growing: the whole row is read by the next import. Else correct the row.");
    internal static readonly ProblemCode Decimal = new("import.decimal", Severity.Warning, "The cell is a number with the other decimal mark than the nursery file gives; it counts as missing and the rest of the row stands.", "Where both marks occur, write decimalChar = \".,\" for the column; else correct decimalChar.");
    internal static readonly ProblemCode Unit = new("import.unit", Severity.Warning, "The cell names another unit than the nursery file gives the column; it counts as missing and the rest of the row stands.", "Correct unit of the column; where the file changes its unit in the middle, add unitChanges.");
    internal static readonly ProblemCode NoValue = new("import.noValue", Severity.Note, "The column holds a text that means no value; it counts as missing.", "Nothing needs to be done.");
    internal static readonly ProblemCode MissingCode = new("import.missingCode", Severity.Warning, "The column holds a number that its channel cannot have and that looks like a code for a missing value; it is stored as it stands and fails its check in every review.", "If it is one, add it to missingValues of the column and import again.");
    internal static readonly ProblemCode Switch = new("import.switch", Severity.Warning, "The cell is neither on nor off; it counts as missing and the rest of the row stands.", "Use 0 and 1, on and off, true and false or yes and no, or add the text to missingValues.");
    internal static readonly ProblemCode Method = new("import.method", Severity.Warning, "The cell names no way of watering that is known; the word is kept, but the watering cannot be judged by it. The rest of the row stands.", "Use overheadBoom, sprinkler, hose, drip, ebbAndFlow, floodFloor or fog, or an everyday word for them (docs/nursery-file.md).");
    internal static readonly ProblemCode Level = new("import.level", Severity.Warning, "The cell is no moisture level from 1 to 5 in halves; the row is set aside.", "Use 1 (dry) to 5 (saturated).");
    internal static readonly ProblemCode Bench = new("import.bench", Severity.Warning, "The pot check names a bench that the house does not have; it is set aside.", "Correct the row, or add the bench to benches in the nursery file.");
    internal static readonly ProblemCode WeightBelowDry = new("import.weightBelowDry", Severity.Warning, "The pot weighs less than the dry pot of the nursery file; the row is set aside.", "Look at the scales and their unit, or weigh a dry pot anew (dryWeightG).");
    internal static readonly ProblemCode OutsideCrop = new("import.outsideCrop", Severity.Warning, "The pot check lies outside the time of every crop of its house; it is set aside.", "Correct the date, or the days of the crop in the nursery file.");
    internal static readonly ProblemCode TimeCell = new("import.timeCell", Severity.Warning, "The cell is no time in the format of the export; it counts as missing and the rest of the row stands.", "Write it like the time of the row.");

    internal static readonly ProblemCode UnitChange = new("import.unitChange", Severity.Warning, "From one reading to the next the values of a column change as if its unit did, and stay so; nothing is converted.", "If the unit did change, add unitChanges to the column and import again.");
    // Whole files, told again in every run while they stay as they are.
    internal static readonly ProblemCode NothingTaken = new("import.nothingTaken", Severity.Warning, "Every row of the file was set aside when it was read, so it adds nothing.", "Look into its set-aside file, and correct the export or its settings.");

    // Rows that contradict each other.
    internal static readonly ProblemCode Conflict = new("import.conflict", Severity.Warning, "The store held other values for this time, from an older file; the newer file wins and the older values are set aside.", "Look which values are right; where two files hold them, remove the wrong one. A file that was corrected needs nothing more.");
    internal static readonly ProblemCode Repeated = new("import.repeated", Severity.Warning, "A later row of the same file has the same time and other values; the later row stands and this one is set aside.", "Look which row is right. If the file holds several sensors below each other, give each its own export.");
    internal static readonly ProblemCode Replaced = new("import.replaced", Severity.Warning, "An earlier version of the file held this row and the newer one, which covers its time, does not; the row is set aside.", "Nothing needs to be done if it was taken out on purpose; else give the newer export another name.");
    internal static readonly ProblemCode Overruled = new("import.overruled", Severity.Warning, "The store holds other values for this time, and since its ledger was lost nobody knows which file is the newer one; the values in the store stand and these are set aside.", "Look which file is right. If it is this one, change it a little (a line end is enough) and import again: it then counts as newer.");

    // The store itself.
    internal static readonly ProblemCode Damaged = new("store.damaged", Severity.Warning, "A file of the store was missing or damaged; its source was built again from the exports, which are all there.", "Nothing needs to be done.");
    internal static readonly ProblemCode DamagedLost = new("store.lost", Severity.Warning, "A file of the store was missing or damaged, and not all exports behind it are there any more: the rows that only they held are gone from the store. What is left of the damaged file is kept under store/damaged.", "Put the exports back and import again, or put back a copy of the store.");
    internal static readonly ProblemCode StrayTimes = new("store.strayTimes", Severity.Warning, "Some rows lie years away from all others of their export, as when a logger's clock is reset; they are kept, but do not count when the weeks of a house are looked for.", "Look at the logger's clock and its battery; correct the times in the export, if the rows matter.");
    internal static readonly ProblemCode LedgerLost = new("store.ledgerLost", Severity.Warning, "The store's ledger is missing or damaged; it was built again from the readings and the exports.", "Nothing needs to be done.");

    // Files that were to be described.
    internal static readonly ProblemCode NotDescribed = new("describe.noTable", Severity.Error, "The file holds no table that could be described.", "Export it again as text (CSV) with a time and values in each row.");
    internal static readonly ProblemCode NoTime = new("describe.noTime", Severity.Error, "No column of the file holds times that can be read.", "Export it with date and time in each row.");
    internal static readonly ProblemCode NoChannel = new("describe.noChannel", Severity.Warning, "No column of the file is a channel or a field that is known.", "Name the columns yourself: docs/nursery-file.md lists the channels.");
    internal static readonly ProblemCode KindsDiffer = new("describe.kinds", Severity.Warning, "The files are not of one kind: they are cut, encoded or headed otherwise; each kind has a draft of its own.", "Describe the files of one kind at a time, or give every draft its own name.");
    internal static readonly ProblemCode Question = new("describe.question", Severity.Warning, "The file leaves a question open; it stands in the draft, marked ASK.", "Answer it in the draft.");
    internal static readonly ProblemCode DraftRead = new("describe.trial", Severity.Warning, "A trial reading with the draft did not take every row.", "Look through the draft; climatelens check shows the rows.");

    /// <summary>All codes, in the order of docs/problems.md.</summary>
    public static IReadOnlyList<ProblemCode> All { get; } = // last, since it takes up the fields above
        [.. typeof(ProblemCodes).GetFields(BindingFlags.Static | BindingFlags.NonPublic).Select(f => f.GetValue(null)).OfType<ProblemCode>()];
}
