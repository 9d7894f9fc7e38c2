using ClimateLens.Logs.Describe.Reading;
using ClimateLens.Logs.Packed;
using ClimateLens.Logs.SetAside;
using ClimateLens.Logs.Text;
using ClimateLens.Nursery.Problems;
using ClimateLens.Nursery.Settings;

namespace ClimateLens.Logs.Describe;

/// <summary>
/// Opens what the user named: files, packed or not, each entry of an archive and each sheet of a workbook as a text of its own, and pipes, of
/// which it keeps a copy as long as it lives.
/// </summary>
/// <param name="input">Opens the standard input, for the name <c>-</c>; null where there is none.</param>
internal sealed class SourceFiles(Func<Stream>? input) : IDisposable
{
    private static readonly DialectSettings Plain = new("utf-8", ',', '"', '.', null, null, 1, 2, []);

    private readonly List<string> _copies = [];

    /// <summary>The texts of a path; none and what is wrong where it can't be read.</summary>
    public List<SourceText> Of(string path, List<Problem> problems)
    {
        if (Directory.Exists(path))
        {
            problems.Add(ProblemCodes.Folder.In(path, null, null, "a folder", "a file", "Name the files in it."));
            return [];
        }

        try
        {
            bool piped = path == "-" || (File.Exists(path) && DiskFile.LengthOf(path) is null or 0); // pipes and devices have no length
            string disk = piped ? Copy(path) : System.IO.Path.GetFullPath(path);
            return Opened(new ExportFile(disk, path), problems, piped);
        }
        catch (UnpackException e)
        {
            problems.Add(ProblemCodes.Packed.In(path, null, null, e.Found, e.Expected, e.Mend));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            problems.Add(ProblemCodes.Unreadable.In(path, null, null, "a file that cannot be opened", "a file that can be read"));
        }

        return [];
    }

    /// <inheritdoc/>
    public void Dispose() => _copies.ForEach(File.Delete);

    private static List<SourceText> Opened(ExportFile file, List<Problem> problems, bool piped)
    {
        using FileStream? stream = DiskFile.TryOpen(file, out Problem? problem);
        if (problem is not null)
        {
            problems.Add(problem.Code == ProblemCodes.Empty.Code ? ProblemCodes.Empty.In(file.Name, null, null, "0 bytes", "rows of a time and values")
                : problem.Code == ProblemCodes.NotFound.Code ? problem with { Mend = "Correct the path." } : problem);
        }

        PackedKind kind = stream is null ? PackedKind.Unknown : PackedKinds.Of(stream);
        List<SourceText> texts = kind switch
        {
            _ when stream is null => [],
            PackedKind.Zip when ZipEntries.IsArchive(file.Name) || piped => Entries(file, problems),
            PackedKind.Zip or PackedKind.Unknown => NotRead(file, kind, problems),
            PackedKind.Workbook => Sheets(file, stream),
            PackedKind.Gzip => [Text(file, f => Unpacking.Gzip(f))],
            _ => [new SourceText(file.Path, file.Name, stream.Length, () => Disk(file.Path))],
        };
        return [.. texts.Select(text => text with { IsPiped = piped })];
    }

    private static List<SourceText> NotRead(ExportFile file, PackedKind kind, List<Problem> problems)
    {
        problems.Add(OpenedExport.NotRead(file, kind));
        return [];
    }

    private static List<SourceText> Entries(ExportFile file, List<Problem> problems)
    {
        var told = new ProblemList();
        ExportFile[] entries = [.. new ZipEntries(Plain, told).Of(file)];
        problems.AddRange(told.ToImmutable());
        if (entries is [{ Entry: null }])
        {
            throw new UnpackException("an archive whose list cannot be read", "a whole one", "Pack the files again.");
        }

        string[] names = [.. entries.Select(e => e.Entry).OfType<string>()];
        return [.. entries.Where(e => e.Entry is not null).Select(e => Text(e, f => Unpacking.Entry(f, e.Entry!)) with { Entry = e.Entry, Entries = [.. names] })];
    }

    private static List<SourceText> Sheets(ExportFile file, FileStream stream)
    {
        string[] names = [.. WorkbookText.SheetsOf(stream)];
        return names.Length < 2 ? [Text(file, f => WorkbookText.Of(f, Plain)) with { IsWorkbook = true }]
            : [.. names.Select(name => Text(file with { Name = $"{file.Name}/{name}" }, f => WorkbookText.Of(f, Plain with { Sheet = new FieldRef(name, null) })) with { IsWorkbook = true, Sheet = name })];
    }

    /// <summary>A text that is unpacked each time it is walked over; once at once, which tells whether that can be done.</summary>
    private static SourceText Text(ExportFile file, Func<FileStream, Stream> unpack)
    {
        Stream Open()
        {
            using FileStream disk = Disk(file.Path);
            return unpack(disk);
        }

        using Stream first = Open();
        return new SourceText(file.Path, file.Name, first.Length, Open);
    }

    private static FileStream Disk(string path)
        => new(path, new FileStreamOptions { Options = FileOptions.SequentialScan, Share = FileShare.ReadWrite | FileShare.Delete });

    /// <summary>Keeps what comes through a pipe, up to the most that is looked at.</summary>
    private string Copy(string path)
    {
        string copy = System.IO.Path.Combine(System.IO.Path.GetTempPath(), "climatelens-" + System.IO.Path.GetRandomFileName());
        _copies.Add(copy);
        using Stream source = path != "-" ? Disk(path) : input?.Invoke() ?? Stream.Null;
        using Stream bounded = new BoundedStream(source, SourceText.MostBytes);
        using FileStream to = File.Create(copy);
        bounded.CopyTo(to);
        return copy;
    }
}
