using ClimateLens.Logs.Packed;
using ClimateLens.Logs.SetAside;
using ClimateLens.Logs.Store;
using ClimateLens.Logs.Text;
using ClimateLens.Nursery.Problems;
using ClimateLens.Nursery.Settings;

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
    /// <param name="dialect">How they are cut; decides what of a workbook is read.</param>
    /// <param name="problems">Where files are reported that cannot be read.</param>
    public static List<Candidate> Of(IReadOnlyList<ExportFile> files, IReadOnlyList<LedgerFile> known, DialectSettings dialect, ProblemList problems)
    {
        long[] sizes = [.. files.Select(SizeOf)];
        HashSet<long> knownSizes = [.. known.Select(f => f.Size)];
        HashSet<long> several = [.. sizes.GroupBy(size => size).Where(same => same.Count() > 1).Select(same => same.Key)];
        bool all = knownSizes.Contains(LedgerFile.UnknownSize);
        var hashes = new string?[files.Count];
        var faults = new Problem?[files.Count];
        Parallel.For(0, files.Count, new ParallelOptions { MaxDegreeOfParallelism = Threads }, i =>
        {
            // The size of what a packed file holds is not known: the same log may have been read before, unpacked or packed otherwise.
            bool isPacked = sizes[i] > 0 && (files[i].Entry is not null || PackedKinds.MayBePacked(files[i].Path));
            if (sizes[i] > 0 && (all || isPacked || knownSizes.Contains(sizes[i]) || several.Contains(sizes[i])))
            {
                hashes[i] = HashOf(files[i], dialect, out faults[i]);
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
    private static long SizeOf(ExportFile file) => DiskFile.LengthOf(file.Path) ?? -1;

    private static string? HashOf(ExportFile file, DialectSettings dialect, out Problem? fault)
    {
        using OpenedExport? opened = OpenedExport.TryOpen(file, dialect, out fault);
        try
        {
            return opened?.Sha256();
        }
        catch (ExportReadException)
        {
            fault = ProblemCodes.Unreadable.In(file.Name, null, null, "a file that cannot be read", "a file that can be read");
            return null;
        }
    }
}
