using ClimateLens.Nursery.Problems;
using ClimateLens.Nursery.Settings.Reading;
using ClimateLens.Nursery.Time;
using NodaTime;

namespace ClimateLens.Nursery.Settings.Tables;

/// <summary>[export.time]: where a row's time stands and how it reads.</summary>
internal static class TimeTable
{
    public static readonly string[] Keys = ["field", "position", "timeOfDayField", "timeOfDayPosition", "format", "timeZone"];

    private static readonly FieldRef FirstColumn = new(null, 1);

    public static TimeSettings Read(TableReader export, DialectSettings dialect, DateTimeZone nurseryZone, bool timeNeeded)
    {
        if (export.Table("time", "[export.time]", Keys) is not { } time)
        {
            if (!export.Has("time"))
            {
                export.Faults.Missing(FaultCodes.MissingKey, export.At, "[[export]] has no [export.time]", "", "add [export.time] with field and format.");
            }

            return new TimeSettings(FirstColumn, null, StampWords.Iso, nurseryZone);
        }

        FieldRef field = FieldKeys.Read(time, "field", "position", dialect, required: true) ?? FirstColumn;
        FieldRef? timeOfDay = FieldKeys.Read(time, "timeOfDayField", "timeOfDayPosition", dialect, required: false);
        if (timeOfDay == field)
        {
            string key = time.Has("timeOfDayField") ? "timeOfDayField" : "timeOfDayPosition";
            time.Faults.Error(FaultCodes.Column, time.PlaceOf(key), $"date and time of day are both {timeOfDay}", "two columns", "take the key out if date and time stand in one column.");
        }

        string format = Format(time, timeNeeded || timeOfDay is not null);
        if (timeOfDay is not null && format != StampWords.Iso && StampPattern.FaultOf(format, timeNeeded: true) is null && !StampPattern.IsDateBlankTime(format))
        {
            time.Faults.Error(FaultCodes.Format, time.PlaceOf("format"), $"format = {Excerpt.Quoted(format)} beside a column for the time of day", "the date, one space and the time", "write it like \"dd-MM-yyyy HH:mm\", though they stand in two columns.");
        }

        return new TimeSettings(field, timeOfDay, format, TimeZones.OfStamps(time, nurseryZone) ?? nurseryZone);
    }

    private static string Format(TableReader time, bool timeNeeded)
    {
        if (time.Text("format", "\"yyyy-MM-dd HH:mm\" as the export writes it, or \"iso\"") is not { } format || format == StampWords.Iso)
        {
            return StampWords.Iso;
        }

        if (StampPattern.FaultOf(format, timeNeeded) is { } fault)
        {
            string? meant = format.Equals(StampWords.Iso, StringComparison.OrdinalIgnoreCase) ? StampWords.Iso : StampRepair.Of(format, timeNeeded);
            time.Faults.Error(FaultCodes.Format, time.PlaceOf("format"), $"format = {Excerpt.Quoted(format)} has {fault}", "yyyy MM dd HH mm ss and the marks between them", meant is not null ? $"did you mean \"{meant}\"?" : "write it as the export does, for example \"dd-MM-yyyy HH:mm\"; words go between 'single quotes'.");
        }

        return format;
    }
}
