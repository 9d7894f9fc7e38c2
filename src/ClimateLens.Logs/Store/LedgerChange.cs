namespace ClimateLens.Logs.Store;

/// <summary>What an import makes of several sources: the ledger is written once for all of them.</summary>
internal sealed class LedgerChange
{
    private readonly Dictionary<SourceKey, LedgerSource> _changed = [];
    private readonly List<string> _obsolete = [];

    /// <summary>Number of sources.</summary>
    public int Count => _changed.Count;

    /// <summary>Takes a source as it is to be.</summary>
    /// <param name="source">The source; null where nothing changed.</param>
    /// <param name="obsolete">Files of the store that are then no longer in force.</param>
    public void Take(LedgerSource? source, IEnumerable<string> obsolete)
    {
        if (source is not null)
        {
            _changed.Add(source.Key, source);
            _obsolete.AddRange(obsolete);
        }
    }

    /// <summary>The ledger after the change; new sources stand behind the others.</summary>
    public Ledger Of(Ledger held)
    {
        HashSet<SourceKey> known = [.. held.Sources.Select(s => s.Key)];
        return new Ledger
        {
            Sources = [.. held.Sources.Select(s => _changed.GetValueOrDefault(s.Key, s)), .. _changed.Where(c => !known.Contains(c.Key)).Select(c => c.Value)],
            Obsolete = _obsolete,
        };
    }
}
