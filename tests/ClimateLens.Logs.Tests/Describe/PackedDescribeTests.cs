using System.Diagnostics;
using System.Text;
using ClimateLens.Logs.Describe;
using ClimateLens.Logs.Tests.Made;
using ClimateLens.TestKit;

namespace ClimateLens.Logs.Tests.Describe;

/// <summary>Files that are packed, workbooks and pipes are described as the text in them.</summary>
public sealed class PackedDescribeTests : IDisposable
{
    private const string Climate = "Time,Temp (°C),RH (%)\n";
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Gzip_IsDescribedAsItsText_AndNamedAsItLies()
    {
        (string name, byte[] bytes) = MadePacking.Pack(Encoding.UTF8.GetBytes(Log()), "gz");
        DraftExport draft = Assert.Single(Describe((name, bytes)).Exports);
        Assert.Equal("[\"made.csv.gz\"]", Value(draft, "files"));
        Assert.Equal(["airTemperature", "relativeHumidity"], Channels(draft));
        Assert.Contains(draft.Notes, n => n.StartsWith("a trial reading took 40 of 40 rows", StringComparison.Ordinal));
    }

    [Fact]
    public void Zip_OfFilesOfOneKind_IsOneDraft()
    {
        DraftExport draft = Assert.Single(Describe(("week.zip", Zip(("1.csv", Log()), ("2.csv", Log(2))))).Exports);
        Assert.Equal("[\"week.zip\"]", Value(draft, "files"));
        Assert.DoesNotContain(draft.Keys, k => k.Key == "entries");
        Assert.Contains(draft.Notes, n => n.StartsWith("a trial reading took 80 of 80 rows", StringComparison.Ordinal));
    }

    [Fact]
    public void Zip_OfFilesOfTwoKinds_IsADraftForEach_WithItsEntries()
    {
        Description description = Describe(("all.zip", Zip(("a.csv", Log()), ("b.csv", "Zeit;Außentemperatur °C\n" + string.Concat(Enumerable.Range(0, 30).Select(i => $"1.7.2025 10:{i:00};1{i % 10},5\n"))))));
        Assert.Equal(["[\"a.csv\"]", "[\"b.csv\"]"], description.Exports.Select(e => Value(e, "entries")));
        Assert.All(description.Exports, e => Assert.Equal("[\"all.zip\"]", Value(e, "files")));
        Assert.All(description.Exports, e => Assert.Contains(e.Notes, n => n.Contains("set 0 aside", StringComparison.Ordinal)));
    }

    [Fact]
    public void Zip_WithOtherFilesInIt_SaysWhatIsLeft()
        => Assert.Single(Describe(("week.zip", Zip(("1.csv", Log()), ("photo.jpg", "x")))).Problems, p => p.Code == "import.entriesLeft");

    [Fact]
    public void Workbook_NeedsNoKeysOfText()
    {
        DraftExport draft = Assert.Single(Describe(("x.xlsx", MadeWorkbook.Of(("Data", false, Rows(20))))).Exports);
        Assert.DoesNotContain(draft.Keys, k => k.Key is "delimiter" or "encoding" or "sheet");
        Assert.Equal("\"iso\"", draft.Time.Single(k => k.Key == "format").Values[0]);
        Assert.Equal(["airTemperature", "relativeHumidity"], Channels(draft));
    }

    [Fact]
    public void Workbook_OfSeveralSheets_IsADraftForEach()
    {
        Description description = Describe(("x.xlsx", MadeWorkbook.Of(("House 1", false, Rows(20)), ("Hidden", true, Rows(20)), ("House 2", false, Rows(25)), ("Empty", false, []))));
        Assert.Empty(description.Problems);
        Assert.Equal(["\"House 1\"", "\"House 2\""], description.Exports.Select(e => Value(e, "sheet")));
        Assert.All(description.Exports, e => Assert.Equal("[\"x.xlsx\"]", Value(e, "files")));
        Assert.Contains(description.Exports[1].Notes, n => n.StartsWith("a trial reading took 25 of 25 rows", StringComparison.Ordinal));
    }

    [Fact]
    public void WorkbookOfAnOlderKind_IsDescribed()
    {
        DraftExport draft = Assert.Single(Describe(("x.xls", MadeOldWorkbook.Of(Rows(20)))).Exports);
        Assert.Equal(["airTemperature", "relativeHumidity"], Channels(draft));
        Assert.Contains(draft.Notes, n => n.StartsWith("a trial reading took 20 of 20 rows", StringComparison.Ordinal));
    }

    [Fact]
    public void StandardInput_IsDescribed_AndAsksWhereTheFilesLie()
    {
        Description description = FileDescriber.Describe(["-"], new DescribeOptions("1") { Input = () => new MemoryStream(MadePacking.Pack(Encoding.UTF8.GetBytes(Log()), "gz").Bytes) });
        DraftExport draft = Assert.Single(description.Exports);
        Assert.True(draft.Keys.Single(k => k.Key == "files").IsAsked);
        Assert.Equal(["airTemperature", "relativeHumidity"], Channels(draft));
        Assert.Contains(draft.Notes, n => n.StartsWith("a trial reading took 40 of 40 rows", StringComparison.Ordinal));
    }

    [Fact]
    public async Task NamedPipe_IsDescribed()
    {
        if (OperatingSystem.IsWindows())
        {
            return; // it has no such files
        }

        string pipe = _folder.PathOf("pipe");
        using (Process made = Process.Start("mkfifo", pipe))
        {
            await made.WaitForExitAsync();
        }

        Task<Description> described = Task.Run(() => FileDescriber.Describe([pipe], new DescribeOptions("1")));
        await File.WriteAllTextAsync(pipe, Log());
        Assert.Equal(["airTemperature", "relativeHumidity"], Channels(Assert.Single((await described.WaitAsync(TimeSpan.FromSeconds(60))).Exports)));
    }

    [Theory]
    [InlineData("x.csv", "", "import.empty")]
    [InlineData("x.zip", "PK\u0003\u0004 and no more", "import.packed")]
    [InlineData("x.xlsx", "\u00D0\u00CF\u0011\u00E0 and no more", "import.packed")]
    [InlineData("x.7z", "7z\u00BC\u00AF", "import.binary")]
    public void WhatCannotBeRead_IsAProblem(string name, string text, string code)
    {
        Description description = Describe((name, Encoding.Latin1.GetBytes(text)));
        Assert.Empty(description.Exports);
        Assert.Equal(code, Assert.Single(description.Problems).Code);
    }

    private Description Describe(params (string Name, byte[] Bytes)[] files)
    {
        foreach ((string name, byte[] bytes) in files)
        {
            File.WriteAllBytes(_folder.PathOf(name), bytes);
        }

        return FileDescriber.Describe([.. files.Select(f => _folder.PathOf(f.Name))], new DescribeOptions("1", Folder: _folder.Path));
    }

    private static string Log(int day = 1) => Climate + string.Concat(Enumerable.Range(0, 40).Select(i => $"2025-07-0{day}T10:{i:00},{18 + (i % 7)}.{i % 10},{70 + (i % 12)}\n"));

    private static object?[][] Rows(int count) => [["Time", "Temp (°C)", "RH (%)"], .. Enumerable.Range(0, count).Select(i => (object?[])[new DateTime(2025, 7, 1, 0, i, 0), 18.5 + (i % 7), 70.0 + i])];

    private static string Value(DraftExport draft, string key) => draft.Keys.Single(k => k.Key == key).Values[0];

    private static IEnumerable<string> Channels(DraftExport draft) => draft.Columns.Select(c => c.Keys.Single(k => k.Key == "channel").Values[0].Trim('"'));

    private static byte[] Zip(params (string Name, string Text)[] entries)
    {
        using var packed = new MemoryStream();
        using (var zip = new System.IO.Compression.ZipArchive(packed, System.IO.Compression.ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach ((string name, string text) in entries)
            {
                using Stream stream = zip.CreateEntry(name).Open();
                stream.Write(Encoding.UTF8.GetBytes(text));
            }
        }

        return packed.ToArray();
    }
}
