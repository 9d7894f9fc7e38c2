using System.Globalization;
using ClimateLens.Nursery.Records;
using NodaTime;
using NodaTime.Text;

namespace ClimateLens.Analysis.Text;

/// <summary>Fields of a record by type: what is missing or no number is null or empty.</summary>
internal static class RecordText
{
    /// <summary>Text without blanks around it; empty where the row has none.</summary>
    public static string Text(this RecordRow row, string field) => row.Fields.TryGetValue(field, out string? text) ? text.Trim() : "";

    /// <summary>A finite number, or null.</summary>
    public static double? Number(this RecordRow row, string field)
        => double.TryParse(row.Text(field), NumberStyles.Float, CultureInfo.InvariantCulture, out double number) && double.IsFinite(number) ? number : null;

    /// <summary>An instant, or null.</summary>
    public static Instant? Time(this RecordRow row, string field)
        => row.Text(field) is { Length: > 0 } text && InstantPattern.ExtendedIso.Parse(text) is { Success: true } read ? read.Value : null;

    /// <summary>Who made the record: its grader, else its operator; empty where nobody signed.</summary>
    public static string Signed(this RecordRow row) => row.Text("grader") is { Length: > 0 } grader ? grader : row.Text("operator");

    /// <summary>Whether two names mean one bench: capitals do not count, and an empty name is the whole house.</summary>
    public static bool SameBench(string one, string other)
        => one.Length == 0 || other.Length == 0 || string.Equals(one, other, StringComparison.OrdinalIgnoreCase);
}
