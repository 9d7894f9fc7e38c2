using ClimateLens.Logs.SetAside;
using ClimateLens.Nursery.Problems;
using ClimateLens.Nursery.Settings;

namespace ClimateLens.Logs.Text;

/// <summary>Finds the columns of the settings in a file's header.</summary>
/// <param name="file">The export's name.</param>
/// <param name="names">Names in the header, trimmed; empty when the file has none.</param>
/// <param name="fields">Number of fields of the header, or of the first row when there is none.</param>
/// <param name="headerLine">Line of the header, or null.</param>
internal sealed class ColumnFinder(string file, IReadOnlyList<string> names, int fields, int? headerLine)
{
    private const int NamesShown = 12;

    /// <summary>0-based index of a column; or -1 and what is wrong.</summary>
    public int Find(FieldRef field, ProblemCode missing, string purpose, out Problem? problem)
    {
        problem = null;
        if (field.Position is int position)
        {
            if (position >= 1 && position <= fields)
            {
                return position - 1;
            }

            problem = missing.In(file, headerLine, null, $"{fields} columns, no {field} for {purpose}", $"a position from 1 to {fields}");
            return -1;
        }

        return FindByName(field.Name!.Trim(), missing, purpose, out problem);
    }

    private int FindByName(string name, ProblemCode missing, string purpose, out Problem? problem)
    {
        problem = null;
        int[] found = [.. Enumerable.Range(0, names.Count).Where(i => names[i] == name)];
        if (found.Length == 0)
        {
            found = [.. Enumerable.Range(0, names.Count).Where(i => string.Equals(names[i], name, StringComparison.OrdinalIgnoreCase))];
        }

        if (found.Length == 0)
        {
            string tidy = Tidy(name);
            found = [.. Enumerable.Range(0, names.Count).Where(i => string.Equals(Tidy(names[i]), tidy, StringComparison.OrdinalIgnoreCase))];
        }

        if (found.Length == 1)
        {
            return found[0];
        }

        problem = found.Length == 0 ? Missing(name, missing, purpose) : Ambiguous(name, found, missing, purpose);
        return -1;
    }

    /// <summary>The words of a name with one blank between them, whatever kind of blank the file has there.</summary>
    private static string Tidy(string name) => string.Join(' ', name.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    private Problem Missing(string name, ProblemCode missing, string purpose)
    {
        if (names.Count == 0)
        {
            return missing.In(file, null, null, $"no header, so no column {SafeText.Quote(name)} for {purpose}", "a position, since headerRow is 0");
        }

        string shown = string.Join(", ", names.Take(NamesShown).Select(SafeText.Quote)) + (names.Count > NamesShown ? $" and {names.Count - NamesShown} more" : "");
        string? near = NearestName.Of(name, names);
        string expected = near is null ? $"one of {shown}" : $"one of {shown}; the nearest is {SafeText.Quote(near)}";
        return missing.In(file, headerLine, null, $"no column {SafeText.Quote(name)} for {purpose}", expected);
    }

    private Problem Ambiguous(string name, int[] found, ProblemCode missing, string purpose)
    {
        string positions = string.Join(", ", found.Select(i => i + 1));
        ProblemCode code = missing.Severity == Severity.Error ? missing : ProblemCodes.HeaderTwice;
        return code.In(file, headerLine, found[1] + 1, $"{found.Length} columns named {SafeText.Quote(name)} for {purpose}", $"one; they stand at {positions}", ProblemCodes.HeaderTwice.Mend);
    }
}
