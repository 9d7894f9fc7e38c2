using ClimateLens.Logs.Describe.Reading;

namespace ClimateLens.Logs.Describe.Drafting;

/// <summary>The keys that choose among the sheets of a workbook and the entries of an archive, where there is a choice.</summary>
internal static class PackedLines
{
    /// <summary>The keys.</summary>
    public static IEnumerable<DraftKey> Of(IReadOnlyList<SourceText> files)
    {
        if (files[0].Sheet is { } sheet)
        {
            yield return DraftKey.Of("sheet", TomlText.Quote(sheet), Sureness.Sure, "the workbook has several sheets with rows");
        }

        SourceText[] entries = [.. files.Where(f => f.Entry is not null)];
        if (entries.GroupBy(f => f.Path).Any(archive => archive.Count() < archive.First().Entries.Length))
        {
            yield return DraftKey.Of("entries", TomlText.List(entries.Select(f => f.Entry!).Distinct(StringComparer.Ordinal)), Sureness.Sure, "the archive holds files of other kinds as well; a * in the name takes those to come");
        }
    }
}
