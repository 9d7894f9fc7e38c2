using System.Globalization;

namespace ClimateLens.Logs.Describe.Drafting;

/// <summary>Gives drafts of one house that would have one name names of their own.</summary>
internal static class DistinctNames
{
    /// <summary>The drafts with distinct names.</summary>
    /// <param name="drafts">The drafts.</param>
    /// <param name="given">Whether the user gave the name.</param>
    public static IEnumerable<DraftExport> Of(IReadOnlyList<DraftExport> drafts, bool given)
    {
        var seen = new Dictionary<(string?, string), int>();
        foreach (DraftExport draft in drafts)
        {
            int count = seen[(draft.House, draft.Name)] = seen.GetValueOrDefault((draft.House, draft.Name)) + 1;
            if (count == 1)
            {
                yield return draft;
                continue;
            }

            string name = string.Create(CultureInfo.InvariantCulture, $"{draft.Name}-{count}");
            yield return draft with { Name = name, Keys = draft.Keys.SetItem(0, DraftKey.Of("name", TomlText.Quote(name), null, given ? "the name was taken" : "")) };
        }
    }
}
