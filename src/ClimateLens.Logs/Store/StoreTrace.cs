using System.Globalization;
using ClimateLens.Logs.Import;
using ClimateLens.Nursery;
using ClimateLens.Nursery.Records;
using ClimateLens.Nursery.Settings;
using NodaTime;

namespace ClimateLens.Logs.Store;

/// <summary>
/// Traces of what <see cref="StoreQuery"/> would load. A trace covers at least all of that, in half weeks; where it covers more it may change
/// while the input does not, which costs a look at the input and no more.
/// </summary>
/// <param name="nursery">The nursery.</param>
/// <param name="ledger">What is imported.</param>
internal sealed class StoreTrace(NurserySettings nursery, LedgerIndex ledger)
{
    private readonly string[] _maker =
        [$"{CodeAccount.Of(typeof(StoreTrace).Assembly)} {DateTimeZoneProviders.Tzdb.VersionId}", nursery.ContentHash, nursery.ShortFileName];

    /// <summary>The trace of a house period and of what is loaded before it.</summary>
    public InputTrace Of(HouseSettings house, Interval period, Duration runIn, Duration history)
    {
        IReadOnlyList<(ExportSettings Export, LedgerSource Source)> sources = ledger.Of(house.Id);
        long to = Micros.Of(period.End);

        // Where plants were counted, weeks before are looked back at, each with the records that it has by itself.
        bool looksBack = sources.Any(s => s.Export.Kind == RecordKind.Scouting && s.Source.PartsOf(house.Id, long.MinValue, to).Any());
        Instant start = period.Start - Duration.Max(runIn, history);
        long from = Micros.Of(looksBack ? Instant.Min(start, ScoutedWeeks.First(period, nursery.Zone).In(nursery.Zone).Start - runIn) : start);
        long recordsFrom = looksBack ? long.MinValue : Micros.Of(start - StoreQuery.CropTime);
        Sum sum = new();
        using Digest hash = new();
        hash.Texts(_maker);
        hash.Texts(house.Id, Text(Micros.Of(period.Start)), Text(to), runIn.ToString(), history.ToString());
        foreach ((ExportSettings export, LedgerSource source) in sources)
        {
            hash.Texts("source", export.Name, export.House, source.Kind ?? "", source.Settings);
            if (export.Kind is null)
            {
                long shift = Micros.ShiftOf(export);
                LedgerPart[] parts = [.. source.PartsOf(house.Id, from + shift, to + shift)];
                Readings(hash, export, parts, from + shift, to + shift);
                sum.Count(parts, from + shift, to + shift);
                if (export.House == house.Id)
                {
                    sum.Look(parts, Micros.Of(period.Start) + shift, to + shift);
                }
            }
            else
            {
                foreach (LedgerPart part in source.PartsOf(house.Id, recordsFrom, to))
                {
                    Part(hash, part, recordsFrom, to, isTold: true);
                }
            }

            Files(hash, source, from, to);
        }

        return new InputTrace(hash.Finish()[..32], sum.HasReadings, (long)sum.Values);
    }

    /// <summary>The step of a batch is that of all rows of its years: it is told by them one by one where each has the same beyond doubt.</summary>
    private static void Readings(Digest hash, ExportSettings export, IReadOnlyList<LedgerPart> parts, long from, long to)
    {
        bool isTold = export.StepSeconds is not null || (parts.All(p => p.Trace?.StepMicros is not null) && parts.Select(p => p.Trace!.StepMicros).Distinct().Count() == 1);
        foreach (LedgerPart part in parts)
        {
            hash.Numbers(export.StepSeconds ?? part.Trace?.StepMicros ?? 0);
            Part(hash, part, from, to, isTold);
        }
    }

    private static void Part(Digest hash, LedgerPart part, long from, long to, bool isTold)
    {
        hash.Texts("part", part.House, part.Year.ToString(CultureInfo.InvariantCulture));
        if (isTold && part.Trace is PartTrace trace)
        {
            ReadOnlySpan<byte> halves = trace.Within(from, to);
            hash.Numbers(halves.Length);
            hash.Add(halves);
        }
        else
        {
            hash.Texts(part.Stored.Sha256);
        }
    }

    private static void Files(Digest hash, LedgerSource source, long from, long to)
    {
        SourceKey key = source.Key;
        (Instant start, Instant end) = (Micros.ToInstant(from), Micros.ToInstant(to));
        foreach (LedgerFile file in source.Files.Where(f => ImportSheets.Of(f, key).TellsOf(start, end))
            .OrderBy(f => f.File, StringComparer.Ordinal).ThenBy(f => f.Sha256, StringComparer.Ordinal))
        {
            hash.Texts("file", file.File, file.Sha256, file.Sheet?.Sha256 ?? "", Text(file.First ?? file.From ?? 0), Text(file.Last ?? file.To ?? 0));
            hash.Numbers(file.RowsRead, file.Accepted, file.SetAside, file.Duplicates, file.Blank, file.CellsNotRead, file.Conflicts);
        }
    }

    private static string Text(long number) => number.ToString(CultureInfo.InvariantCulture);

    /// <summary>What there is to read, summed up.</summary>
    private sealed class Sum
    {
        private bool _some, _maybe;

        public bool? HasReadings => _some ? true : _maybe ? null : false;

        public double Values { get; private set; }

        /// <summary>Counts values, those of a half week that lies partly within by its share.</summary>
        public void Count(IReadOnlyList<LedgerPart> parts, long from, long to)
        {
            foreach (LedgerPart part in parts)
            {
                ReadOnlySpan<byte> halves = part.Trace is null ? [] : part.Trace.Within(from, to);
                for (int at = 0; at < halves.Length; at += PartTrace.EntryBytes)
                {
                    long start = PartTrace.StartOf(PartTrace.HalfIn(halves[at..]));
                    Values += PartTrace.ValuesIn(halves[at..]) * (double)(Math.Min(to, start + PartTrace.HalfMicros) - Math.Max(from, start)) / PartTrace.HalfMicros;
                }
            }
        }

        /// <summary>Looks whether there are rows in a stretch of time.</summary>
        public void Look(IReadOnlyList<LedgerPart> parts, long from, long to)
        {
            foreach (LedgerPart part in parts.Where(p => p.First < to && p.Last >= from))
            {
                ReadOnlySpan<byte> halves = part.Trace is null ? [] : part.Trace.Within(from, to);
                _maybe |= part.Trace is null || halves.Length > 0;
                for (int at = 0; at < halves.Length; at += PartTrace.EntryBytes)
                {
                    long start = PartTrace.StartOf(PartTrace.HalfIn(halves[at..]));
                    _some |= start >= from && start + PartTrace.HalfMicros <= to;
                }
            }
        }
    }
}
