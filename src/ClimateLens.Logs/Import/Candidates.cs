using ClimateLens.Logs.SetAside;
using ClimateLens.Logs.Store;
using ClimateLens.Logs.Text;
using ClimateLens.Nursery.Problems;

namespace ClimateLens.Logs.Import;

/// <summary>
/// Hashes the files of an export as far as that tells whether they are known. Every file that may be known is hashed in
/// every run: its size and its time of change alone would let a correction pass that keeps both.
/// </summary>
internal static class Candidates
{
    private const int Threads = 2;

    /// <summary>The files, in their order, each with its hash where one is needed before it is read.</summary>
    /// <param name="files">The files.</param>
    /// <param name="known">What the ledger knows.</param>
    /// <param name="problems">Where files are reported that cannot be read.</param>
    public static List<Candidate> Of(IReadOnlyList<ExportFile> files, IReadOnlyList<LedgerFile> known, ProblemList problems)
    {
        long[] sizes = [.. files.Select(SizeOf)];
        HashSet<long> knownSizes = [.. known.Select(f => f.Size)];
        HashSet<long> several = [.. sizes.GroupBy(size => size).Where(same => same.Count() > 1).Select(same => same.Key)];
        bool all = knownSizes.Contains(LedgerFile.UnknownSize);
        var hashes = new string?[files.Count];
        var faults = new Problem?[files.Count];
        Parallel.For(0, files.Count, new ParallelOptions { MaxDegreeOfParallelism = Threads }, i =>
        {
            if (all || knownSizes.Contains(sizes[i]) || several.Contains(sizes[i]))
            {
                hashes[i] = HashOf(files[i], out faults[i]);
            }
        });

        var candidates = new List<Candidate>();
        for (int i = 0; i < hashes.Length; i++)
        {
            if (faults[i] is Problem fault)
            {
                problems.Add(fault);
            }
            else
            {
                candidates.Add(new Candidate(files[i], hashes[i]));
            }
        }

        return candidates;
    }

    /// <summary>Size of a file; -1 where it cannot be told, which the reading then reports. [bytes]</summary>
    private static long SizeOf(ExportFile file)
    {
        var info = new FileInfo(file.Path);
        return info.Exists ? info.Length : -1;
    }

    private static string? HashOf(ExportFile file, out Problem? fault)
    {
        fault = null;
        try
        {
            return ContentHash.OfFile(file.Path);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            fault = ProblemCodes.Unreadable.In(file.Name, null, null, "a file that cannot be read", "a file that can be read");
            return null;
        }
    }
}
