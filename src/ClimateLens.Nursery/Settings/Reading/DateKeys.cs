using System.Globalization;
using ClimateLens.Nursery.Problems;
using ClimateLens.Nursery.Time;
using NodaTime;
using NodaTime.Calendars;
using NodaTime.Text;

namespace ClimateLens.Nursery.Settings.Reading;

/// <summary>Keys that hold a day: a date, or an ISO week as text, which stands for its Monday.</summary>
internal static class DateKeys
{
    private static readonly LocalDate First = new(1990, 1, 1);
    private static readonly LocalDate Last = new(2199, 12, 31);

    /// <summary>The day, or null when it is left out or wrong.</summary>
    public static LocalDate? Date(this TableReader reader, string key, string? example = null)
    {
        switch (reader.Find(key)?.Value)
        {
            case null:
                if (example is not null)
                {
                    reader.Missing(key, example);
                }

                return null;
            case TomlScalar { Value: LocalDate date } scalar:
                return InRange(reader, key, scalar, date);
            case TomlScalar { Value: string text } scalar when text.Contains('W', StringComparison.OrdinalIgnoreCase):
                return OfWeek(reader, key, scalar, text);
            case { } other:
                reader.WrongType(key, other, "a date", MendFor(key, other));
                return null;
        }
    }

    private static LocalDate? OfWeek(TableReader reader, string key, TomlScalar scalar, string text)
    {
        if (IsoWeek.TryParse(text, out IsoWeek week))
        {
            return InRange(reader, key, scalar, week.Monday);
        }

        bool yearOnly = text.Length == 8 && int.TryParse(text.AsSpan(0, 4), NumberStyles.None, CultureInfo.InvariantCulture, out int year) && year is >= 1990 and < 2200;
        string expected = yearOnly ? $"a week from {text[..4]}-W01 to {LastWeekOf(text[..4])}" : "a date, or a week like \"2025-W32\"";
        reader.Faults.Error(FaultCodes.Date, scalar.At, $"{key} = {Excerpt.Quoted(text)}", expected, "look the week up in a calendar with ISO week numbers.");
        return null;
    }

    private static string LastWeekOf(string year)
    {
        int weeks = WeekYearRules.Iso.GetWeeksInWeekYear(int.Parse(year, CultureInfo.InvariantCulture));
        return string.Create(CultureInfo.InvariantCulture, $"{year}-W{weeks}");
    }

    private static LocalDate? InRange(TableReader reader, string key, TomlScalar scalar, LocalDate date)
    {
        if (date >= First && date <= Last)
        {
            return date;
        }

        reader.Faults.Error(FaultCodes.Range, scalar.At, $"{key} = {scalar.Source}", "a year from 1990 to 2199", "look at the year again.");
        return null;
    }

    private static string MendFor(string key, TomlNode value)
    {
        string date = value is TomlScalar { Value: string text } && LocalDatePattern.Iso.Parse(text).Success ? text : "2025-08-04";
        return date == "2025-08-04" ? $"write it as year-month-day without quotes, for example {key} = {date}" : $"write it without quotes: {key} = {date}";
    }
}
