using System.Collections.Immutable;
using ClimateLens.Nursery.Records;
using ClimateLens.Nursery.Settings.Reading;
using ClimateLens.Nursery.Time;
using NodaTime;

namespace ClimateLens.Nursery.Settings.Tables;

/// <summary>[export.time]: where a row's time stands and how it reads.</summary>
internal static class TimeTable
{
    public static readonly string[] Keys =
        ["field", "position", "timeOfDayField", "timeOfDayPosition", "endField", "endPosition", "format", "year", "timeZone"];

    private static readonly FieldRef FirstColumn = new(null, 1);

    public static TimeSettings Read(TableReader export, DialectSettings dialect, DateTimeZone nurseryZone, RecordKind? kind)
    {
        if (export.Table("time", "[export.time]", Keys) is not { } time)
        {
            if (!export.Has("time"))
            {
                export.Faults.Missing(FaultCodes.MissingKey, export.At, "[[export]] has no [export.time]", "", "add [export.time] with field and format.");
            }

            return new TimeSettings(FirstColumn, null, StampWords.Iso, nurseryZone);
        }

        ImmutableArray<FieldRef> fields = TimeFields.Read(time, "field", "position", dialect, required: true);
        FieldRef? timeOfDay = TimeOfDay(time, dialect, fields);
        ImmutableArray<FieldRef> ends = TimeFields.Read(time, "endField", "endPosition", dialect, required: false);
        if (kind is not null)
        {
            TimeFields.NotHere(time, "endField", "endPosition", "is for readings only", "give the end of a watering as a column with channel = \"end\".");
        }
        else if (!ends.IsEmpty && ends.SequenceEqual(fields) && timeOfDay is null)
        {
            string key = time.Has("endField") ? "endField" : "endPosition";
            time.Faults.Error(FaultCodes.Column, time.PlaceOf(key), $"start and end are both {string.Join(", ", ends)}", "another column", "take the key out if a row has one time.");
        }

        bool timeNeeded = kind is null or RecordKind.Waterings || timeOfDay is not null;
        ImmutableArray<string> formats = TimeFormats.Read(time, timeNeeded, fields.Length + (timeOfDay is null ? 0 : 1), timeOfDay is not null);
        DateTimeZone zone = TimeZones.OfStamps(time, nurseryZone) ?? nurseryZone;
        if (formats.All(StampWords.IsUnix) && (zone.MinOffset != Offset.Zero || zone.MaxOffset != Offset.Zero))
        {
            time.NotHere("timeZone", $"stands beside format = \"{formats[0]}\", which counts in UTC", "take it out.");
        }

        return new TimeSettings(fields.FirstOrDefault(FirstColumn), timeOfDay, formats[0], zone)
        {
            MoreFields = fields.Length > 1 ? fields[1..] : [],
            MoreFormats = formats.Length > 1 ? formats[1..] : [],
            Year = TimeFormats.YearOf(time),
            EndFields = kind is null ? ends : [],
            DecimalComma = dialect.DecimalChar == ',' || dialect.EitherDecimalChar,
        };
    }

    private static FieldRef? TimeOfDay(TableReader time, DialectSettings dialect, ImmutableArray<FieldRef> fields)
    {
        FieldRef? timeOfDay = FieldKeys.Read(time, "timeOfDayField", "timeOfDayPosition", dialect, required: false);
        string key = time.Has("timeOfDayField") ? "timeOfDayField" : "timeOfDayPosition";
        if (timeOfDay is not null && fields.Contains(timeOfDay))
        {
            time.Faults.Error(FaultCodes.Column, time.PlaceOf(key), $"date and time of day are both {timeOfDay}", "two columns", "take the key out if date and time stand in one column.");
        }

        return timeOfDay;
    }
}
