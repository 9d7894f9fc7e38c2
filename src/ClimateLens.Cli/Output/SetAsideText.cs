using System.Globalization;
using ClimateLens.Cli.Commands;
using ClimateLens.Logs.SetAside;
using ClimateLens.Nursery.Imports;
using ClimateLens.Nursery.Problems;

namespace ClimateLens.Cli.Output;

/// <summary>What was set aside, as lines for people.</summary>
internal static class SetAsideText
{
    /// <summary>Files with their reasons, then the rows.</summary>
    public static void Write(TextWriter output, SetAsideListing listing)
    {
        if (listing.Files.IsEmpty)
        {
            output.WriteLine("Nothing is set aside.");
        }

        foreach (SetAsideCounts file in listing.Files)
        {
            WriteFile(output, file);
        }

        if (!listing.Rows.IsEmpty)
        {
            output.WriteLine();
            WriteRows(output, listing);
        }

        if (listing.OlderFiles > 0)
        {
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"Older versions of {Count(listing.OlderFiles, "file")} left out; --all lists what was set aside of them too."));
        }
    }

    private static void WriteFile(TextWriter output, SetAsideCounts file)
    {
        SetAsideFile f = file.File;
        string kind = f.Kind is null ? "" : $" of {f.Kind}";
        output.WriteLine(Messages.Plain($"{f.File} (export \"{f.Source}\"{kind}, {(f.House == "nursery" ? "whole nursery" : "house " + f.House)}{(f.IsOlder ? ", an older version" : "")})"));
        if (f.IsLost)
        {
            output.WriteLine("  The store has lost these rows; the next import of a changed nursery file brings them back.");
        }

        foreach ((string code, int count) in file.Reasons)
        {
            ProblemCode? reason = SetAsideCounts.Explained(code);
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  {count,6}  {code}: {reason?.Meaning} Mend: {reason?.Mend}"));
        }
    }

    private static void WriteRows(TextWriter output, SetAsideListing listing)
    {
        string last = "";
        foreach ((SetAsideFile file, SetAsideRow row) in listing.Rows)
        {
            if (file.RowsPath != last)
            {
                output.WriteLine(Messages.Plain(file.File));
                last = file.RowsPath;
            }

            string column = row.Column is int c ? string.Create(CultureInfo.InvariantCulture, $", column {c}") : "";
            string expected = row.Expected.Length == 0 ? "" : $"; expected {row.Expected}";
            string of = row.Kind == SetAsideKind.Overruled ? "older values " : "";
            output.WriteLine(Messages.Plain(string.Create(CultureInfo.InvariantCulture, $"  line {row.Line}{column}: {of}{Excerpt.Quoted(row.Found)}{expected} [{row.Code}]")));
        }

        if (listing.LeftOff > 0)
        {
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"… and {listing.LeftOff} more; --limit 0 lists them all."));
        }
    }

    private static string Count(int count, string noun) => string.Create(CultureInfo.InvariantCulture, $"{count} {noun}{(count == 1 ? "" : "s")}");
}
