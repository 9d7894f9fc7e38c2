using System.Globalization;
using ClimateLens.Nursery.Problems;

namespace ClimateLens.Nursery.Settings.Reading;

/// <summary>A place in the nursery file, both counted from 1.</summary>
internal readonly record struct Place(int Line, int Column)
{
    /// <summary>Where a fault of the whole file is shown.</summary>
    public static Place Top => new(1, 1);
}

/// <summary>Collects what is wrong with one nursery file.</summary>
internal sealed class FaultList(string fileName)
{
    private const int Most = 100;

    private readonly List<Problem> _problems = [];

    /// <summary>
    /// Part of the file could not be read at all. Then nothing is said of what seems to be missing, since it may
    /// stand in that part.
    /// </summary>
    public bool PartUnread { get; set; }

    /// <summary>Whether a file that an export names is there; the answer comes from outside, since this project reads no files.</summary>
    public Func<string, bool> FileExists { get; init; } = _ => true;

    public bool HasErrors => _problems.Any(p => p.Severity == Severity.Error);

    public void Error(string code, Place at, string found, string expected, string mend)
        => _problems.Add(new Problem(code, Severity.Error, fileName, at.Line, at.Column, found, expected, mend));

    public void Warning(string code, Place at, string found, string expected, string mend)
        => _problems.Add(new Problem(code, Severity.Warning, fileName, at.Line, at.Column, found, expected, mend));

    /// <summary>An error that says something is not there.</summary>
    public void Missing(string code, Place at, string found, string expected, string mend)
    {
        if (!PartUnread)
        {
            Error(code, at, found, expected, mend);
        }
    }

    /// <summary>All in file order; beyond the first hundred only their number is told.</summary>
    public IReadOnlyList<Problem> InFileOrder()
    {
        Problem[] sorted = [.. _problems.OrderBy(p => p.Line).ThenBy(p => p.Column).ThenBy(p => p.Code, StringComparer.Ordinal)];
        if (sorted.Length <= Most)
        {
            return sorted;
        }

        string more = (sorted.Length - Most).ToString(CultureInfo.InvariantCulture);
        Problem rest = new(FaultCodes.More, HasErrors ? Severity.Error : Severity.Warning, fileName, null, null, $"{more} more problems are not listed", "", "mend these first, then check again.");
        return [.. sorted[..Most], rest];
    }
}
