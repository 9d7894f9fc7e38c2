using ClimateLens.Nursery.Settings;
using ClimateLens.Nursery.Time;

namespace ClimateLens.Logs.Store;

/// <summary>Finds what the ledger knows of an export and of a house, without a walk through all of them: ten thousand houses have as many times three.</summary>
internal sealed class LedgerIndex
{
    private readonly Dictionary<SourceKey, LedgerSource> _sources;
    private readonly Dictionary<string, List<(ExportSettings Export, LedgerSource Source)>> _houses = new(StringComparer.Ordinal);

    public LedgerIndex(NurserySettings nursery, Ledger ledger)
    {
        _sources = ledger.Sources.DistinctBy(s => s.Key).ToDictionary(s => s.Key);
        foreach (HouseSettings house in nursery.Houses)
        {
            _houses[house.Id] = [];
        }

        foreach (ExportSettings export in nursery.Exports)
        {
            if (SourceOf(export) is LedgerSource source)
            {
                IEnumerable<string> houses = export.House == ReadingBatch.WholeNursery ? _houses.Keys : source.Parts.Select(p => p.House).Append(export.House).Distinct();
                foreach (string house in houses)
                {
                    if (_houses.TryGetValue(house, out List<(ExportSettings Export, LedgerSource Source)>? of))
                    {
                        of.Add((export, source));
                    }
                }
            }
        }
    }

    /// <summary>The source of an export; null where none of its files was imported.</summary>
    public LedgerSource? SourceOf(ExportSettings export) => _sources.GetValueOrDefault(SourceKey.Of(export));

    /// <summary>The exports that tell of a house, in the order of the nursery file, with their sources: its own, those of the whole nursery, and records of others that name it.</summary>
    /// <param name="houseId">House id.</param>
    public IReadOnlyList<(ExportSettings Export, LedgerSource Source)> Of(string houseId) => _houses.GetValueOrDefault(houseId) ?? [];
}
