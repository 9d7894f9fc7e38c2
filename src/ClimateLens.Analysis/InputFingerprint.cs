using System.Globalization;
using System.Runtime.InteropServices;
using System.Text;
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
    private static readonly WorkedOutOnce<string> OfEarlier = new(Of);

    /// <summary>SHA-256 over settings, readings, records, files, this tool's version and the time-zone data, as lower-case hex.</summary>
    /// <remarks>
    /// The nursery file's own hash is part of it, since a review names that hash. Every text is preceded by its length, so that
    /// no two inputs run into the same bytes.
    /// </remarks>
    public static string Of(HouseInput input)
    {
        using Digest hash = new();
        foreach (HouseInput earlier in input.Earlier)
        {
            Texts(hash, "earlier", OfEarlier.Of(earlier));
        }

        Texts(hash, ProvenanceOf.Tool, ReviewAssembly.SchemaVersion, ProvenanceOf.TimeZoneData);
        if (!Language.Current.IsEnglish)
        {
            Texts(hash, Language.Current.Code);
        }

        Nursery(hash, input.Nursery);
        House(hash, input.House);
        Texts(hash, Time(input.Period.Start), Time(input.Period.End), Time(input.RunIn.Start), Time(input.RunIn.End));
        foreach (ReadingBatch batch in input.Batches)
        {
            Batch(hash, batch);
        }

        Texts(hash, "history");
        foreach (ReadingBatch batch in input.History)
        {
            Batch(hash, batch);
        }

        foreach (RecordRow row in input.EarlierWaterings)
        {
            Record(hash, row);
        }

        Texts(hash, "records");
        foreach (RecordRow row in input.Records)
        {
            Record(hash, row);
        }

        foreach (ImportSheet file in RelevantFiles.Of(input))
        {
            Texts(hash, "file", file.File, file.Sha256, file.House, file.Source, file.SheetSha256);
            Numbers(hash, file.RowsRead, file.Accepted, file.SetAside, file.Duplicates, file.Blank, file.CellsNotRead, file.Conflicts);
        }

        return hash.Finish();
    }

    private static void Nursery(Digest hash, NurserySettings nursery)
    {
        Texts(hash, nursery.ShortFileName, nursery.ContentHash, nursery.Name, nursery.Zone.Id, nursery.Invented ? "invented" : "");
        Numbers(hash, nursery.LatitudeDeg, nursery.LongitudeDeg, nursery.ElevationM);
        foreach (ExportSettings export in nursery.Exports)
        {
            Texts(hash, "export", export.Name, export.House, export.Kind?.ToString() ?? "");
            foreach (ColumnSettings column in export.Columns)
            {
                Texts(hash, column.Channel, column.Sensor, column.Method?.ToString() ?? "", column.Bench);
                Numbers(hash, column.LitresPerMinute ?? double.NaN);
            }
        }
    }

    private static void House(Digest hash, HouseSettings house)
    {
        RiskRules rules = house.Rules;
        Texts(hash, "house", house.Id, house.Name);
        Numbers(hash, rules.MarginK, rules.TemperatureLowC, rules.TemperatureHighC, rules.LeafNightOffsetK, rules.LeafNightOffsetErrorK, rules.DryingHours, rules.LeafBalanceErrorK);
        Numbers(hash, rules.CanopyTemperatureK, rules.CanopyTemperatureErrorK, rules.CanopyHumidityPct, rules.CanopyHumidityErrorPct);
        Texts(hash, house.Glazing, rules.CanopyDifference ? "canopy" : "", rules.WetnessSensorRules ? "wetness sensor" : "");
        Texts(hash, [.. rules.SetByUser]);
        foreach (SensorSettings sensor in house.Sensors)
        {
            Texts(hash, "sensor", sensor.Channel, sensor.Sensor, sensor.Source);
            Numbers(hash, sensor.Accuracy);
        }

        foreach (CropSettings crop in house.Crops)
        {
            Texts(hash, "crop", crop.Species, Date(crop.Potted), Date(crop.Pinched), Date(crop.Sale), string.Join(' ', crop.WatchFor));
            foreach (PathogenSettings pathogen in crop.Pathogens)
            {
                Texts(hash, "pathogen", pathogen.Name, pathogen.Source);
                Numbers(hash, pathogen.LowestC, pathogen.BestC, pathogen.HighestC, pathogen.LeastHours, pathogen.MostHours, pathogen.LongestDryHours);
            }

            foreach (SpacingStep step in crop.Spacing)
            {
                Texts(hash, "spacing", Date(step.From), step.Pattern);
                Numbers(hash, step.DistanceCm, step.RowDistanceCm ?? double.NaN);
            }
        }
    }

    private static void Batch(Digest hash, ReadingBatch batch)
    {
        Texts(hash, "batch", batch.House, batch.Source, batch.StampSide.ToString());
        Numbers(hash, batch.StepSeconds, batch.UtcMicros.Length);
        hash.Add(MemoryMarshal.AsBytes(batch.UtcMicros.AsSpan()));
        foreach ((string name, double[] values) in batch.Columns)
        {
            Texts(hash, name);
            hash.Add(MemoryMarshal.AsBytes(values.AsSpan()));
        }
    }

    private static void Record(Digest hash, RecordRow row)
    {
        Texts(hash, "record", row.Kind.ToString(), row.House, row.Source, Time(row.At), row.File);
        Numbers(hash, row.Line, row.Fields.Count);
        foreach ((string name, string text) in row.Fields)
        {
            Texts(hash, name, text);
        }
    }

    private static void Texts(Digest hash, params ReadOnlySpan<string> texts)
    {
        foreach (string text in texts)
        {
            byte[] bytes = Encoding.UTF8.GetBytes(text);
            Numbers(hash, bytes.Length);
            hash.Add(bytes);
        }
    }

    private static void Numbers(Digest hash, params ReadOnlySpan<double> numbers) => hash.Add(MemoryMarshal.AsBytes(numbers));

    private static string Time(Instant instant) => instant.ToUnixTimeTicks().ToString(CultureInfo.InvariantCulture);

    private static string Date(LocalDate? date) => date is LocalDate d ? NodaTime.Text.LocalDatePattern.Iso.Format(d) : "";
}
