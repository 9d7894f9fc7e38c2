using System.Collections.Immutable;
using ClimateLens.Nursery.Problems;
using ClimateLens.Nursery.Settings.Reading;
using ClimateLens.Nursery.Time;

namespace ClimateLens.Nursery.Settings.Tables;

/// <summary>Warns of houses that nothing reads and of accuracies that belong to no series.</summary>
internal static class SeriesCheck
{
    public static void Run(TableReader file, ImmutableArray<HouseSettings> houses, ImmutableArray<ExportSettings> exports)
    {
        if (file.Faults.HasErrors)
        {
            return; // what seems unused may be meant by what is wrong
        }

        foreach ((TableReader table, HouseSettings house) in file.Tables("house", "[[house]]", HouseTable.Keys).Zip(houses))
        {
            ExportSettings[] own = [.. exports.Where(e => e.Kind is null && e.House == house.Id)];
            if (own.Length == 0)
            {
                file.Faults.Warning(FaultCodes.Unused, table.At, $"no export has readings of house {Excerpt.Quoted(house.Id)}", "", $"add house = {Excerpt.Quoted(house.Id)} to an [[export]].");
            }

            ColumnKey[] read = [.. exports.Where(e => e.Kind is null && (e.House == house.Id || e.House == ReadingBatch.WholeNursery)).SelectMany(e => e.Columns).Select(c => new ColumnKey(c.Channel, c.Sensor))];
            foreach ((TableReader sensorTable, SensorSettings sensor) in table.Tables("sensor", "[[house.sensor]]", SensorTable.Keys).Zip(house.Sensors))
            {
                Compare(sensorTable, new ColumnKey(sensor.Channel, sensor.Sensor), read);
            }
        }
    }

    private static void Compare(TableReader sensor, ColumnKey key, ColumnKey[] read)
    {
        if (read.Contains(key))
        {
            return;
        }

        string[] others = [.. read.Where(k => k.Channel == key.Channel && k.Sensor.Length > 0).Select(k => Excerpt.Quoted(k.Sensor)).Distinct()];
        string mend = others.Length > 0 ? $"add sensor = one of {string.Join(", ", others)}." : "add the column to an [[export]], or take this accuracy out.";
        sensor.Faults.Warning(FaultCodes.Unused, sensor.At, $"no column is {key}, so its accuracy is not used", "", mend);
    }
}
