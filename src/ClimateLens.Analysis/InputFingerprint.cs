using System.Globalization;
using System.Runtime.InteropServices;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Analysis.Stages;
using ClimateLens.Nursery;
using ClimateLens.Nursery.Languages;
using ClimateLens.Nursery.Records;
using ClimateLens.Nursery.Settings;
using ClimateLens.Nursery.Time;
using NodaTime;

namespace ClimateLens.Analysis;

/// <summary>A hash over all that a review looks at: equal fingerprints give equal reviews, so that a page need not be made again.</summary>
public static class InputFingerprint
{
    private static readonly WorkedOutOnce<HouseInput, string> OfEarlier = new(Of);
    private static readonly WorkedOutOnce<RecordRow, string> OfRecord = new(Of);

    /// <summary>SHA-256 over settings, readings, records, files, this tool's version and the time-zone data, as lower-case hex.</summary>
    /// <remarks>
    /// Of the nursery file what may bear on the house, not its bytes: a review names the hash of the file that it was made from, and stands while a remark or another
    /// house is changed. Every text is preceded by its length, so that no two inputs run into the same bytes.
    /// </remarks>
    public static string Of(HouseInput input)
    {
        using Digest hash = new();
        foreach (HouseInput earlier in input.Earlier)
        {
            hash.Texts("earlier", OfEarlier.Of(earlier));
        }

        hash.Texts(ProvenanceOf.Tool, ReviewAssembly.SchemaVersion, ProvenanceOf.TimeZoneData);
        if (!Language.Current.IsEnglish)
        {
            hash.Texts(Language.Current.Code);
        }

        Nursery(hash, input.Nursery, input.House.Id);
        House(hash, input.House);
        hash.Texts(Time(input.Period.Start), Time(input.Period.End), Time(input.RunIn.Start), Time(input.RunIn.End));
        foreach (ReadingBatch batch in input.Batches)
        {
            Batch(hash, batch);
        }

        hash.Texts("history");
        foreach (ReadingBatch batch in input.History)
        {
            Batch(hash, batch);
        }

        foreach (RecordRow row in input.EarlierWaterings)
        {
            hash.Texts(OfRecord.Of(row));
        }

        hash.Texts("records");
        foreach (RecordRow row in input.Records)
        {
            hash.Texts(OfRecord.Of(row));
        }

        foreach (ImportSheet file in RelevantFiles.Of(input))
        {
            hash.Texts("file", file.File, file.Sha256, file.House, file.Source, file.SheetSha256);
            hash.Numbers(file.RowsRead, file.Accepted, file.SetAside, file.Duplicates, file.Blank, file.CellsNotRead, file.Conflicts);
        }

        return hash.Finish();
    }

    private static void Nursery(Digest hash, NurserySettings nursery, string house)
    {
        hash.Texts(nursery.ShortFileName, nursery.HouseHashes.GetValueOrDefault(house, nursery.ContentHash), nursery.Name, nursery.Zone.Id, nursery.Invented ? "invented" : "");
        hash.Numbers(nursery.LatitudeDeg, nursery.LongitudeDeg, nursery.ElevationM);
        foreach (ExportSettings export in nursery.Exports.Where(e => e.House.Length == 0 || e.House == house))
        {
            hash.Texts("export", export.Name, export.House, export.Kind?.ToString() ?? "");
            foreach (ColumnSettings column in export.Columns)
            {
                hash.Texts(column.Channel, column.Sensor, column.Method?.ToString() ?? "", column.Bench);
                hash.Numbers(column.LitresPerMinute ?? double.NaN);
            }
        }
    }

    private static void House(Digest hash, HouseSettings house)
    {
        RiskRules rules = house.Rules;
        hash.Texts("house", house.Id, house.Name);
        hash.Numbers(rules.MarginK, rules.TemperatureLowC, rules.TemperatureHighC, rules.LeafNightOffsetK, rules.LeafNightOffsetErrorK, rules.DryingHours, rules.LeafBalanceErrorK);
        hash.Numbers(rules.CanopyTemperatureK, rules.CanopyTemperatureErrorK, rules.CanopyHumidityPct, rules.CanopyHumidityErrorPct);
        hash.Texts(house.Glazing, rules.CanopyDifference ? "canopy" : "", rules.WetnessSensorRules ? "wetness sensor" : "");
        hash.Texts([.. rules.SetByUser]);
        foreach (SensorSettings sensor in house.Sensors)
        {
            hash.Texts("sensor", sensor.Channel, sensor.Sensor, sensor.Source);
            hash.Numbers(sensor.Accuracy);
        }

        foreach (CropSettings crop in house.Crops)
        {
            hash.Texts("crop", crop.Species, Date(crop.Potted), Date(crop.Pinched), Date(crop.Sale), string.Join(' ', crop.WatchFor));
            foreach (PathogenSettings pathogen in crop.Pathogens)
            {
                hash.Texts("pathogen", pathogen.Name, pathogen.Source);
                hash.Numbers(pathogen.LowestC, pathogen.BestC, pathogen.HighestC, pathogen.LeastHours, pathogen.MostHours, pathogen.LongestDryHours);
            }

            foreach (SpacingStep step in crop.Spacing)
            {
                hash.Texts("spacing", Date(step.From), step.Pattern);
                hash.Numbers(step.DistanceCm, step.RowDistanceCm ?? double.NaN);
            }
        }
    }

    private static void Batch(Digest hash, ReadingBatch batch)
    {
        hash.Texts("batch", batch.House, batch.Source, batch.StampSide.ToString());
        hash.Numbers(batch.StepSeconds, batch.UtcMicros.Length);
        hash.Add(MemoryMarshal.AsBytes(batch.UtcMicros.AsSpan()));
        foreach ((string name, double[] values) in batch.Columns)
        {
            hash.Texts(name);
            hash.Add(MemoryMarshal.AsBytes(values.AsSpan()));
        }
    }

    private static string Of(RecordRow row)
    {
        using Digest hash = new();
        hash.Texts("record", row.Kind.ToString(), row.House, row.Source, Time(row.At), row.File);
        hash.Numbers(row.Line, row.Fields.Count);
        foreach ((string name, string text) in row.Fields)
        {
            hash.Texts(name, text);
        }

        return hash.Finish();
    }

    private static string Time(Instant instant) => instant.ToUnixTimeTicks().ToString(CultureInfo.InvariantCulture);

    private static string Date(LocalDate? date) => date is LocalDate d ? NodaTime.Text.LocalDatePattern.Iso.Format(d) : "";
}
