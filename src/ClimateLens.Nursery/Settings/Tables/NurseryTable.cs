using System.Collections.Immutable;
using ClimateLens.Nursery.Languages;
using ClimateLens.Nursery.Settings.Reading;
using NodaTime;

namespace ClimateLens.Nursery.Settings.Tables;

/// <summary>The whole file: [nursery], [[house]] and [[export]].</summary>
internal static class NurseryTable
{
    public static readonly string[] FileKeys = ["nursery", "house", "export"];

    public static readonly string[] Keys =
        ["name", "invented", "timeZone", "latitude", "longitude", "elevationM", "units", "language", "store", "site", "notebooks"];

    private const string DefaultStore = "store";
    private const string DefaultSite = "site";

    /// <summary>The settings; with placeholders where a fault was reported.</summary>
    public static NurserySettings Read(TomlTable root, FaultList faults, string fileName, string hash)
    {
        TableReader file = new(root, "the file", faults, FileKeys);
        TableReader nursery = file.Table("nursery", "[nursery]", Keys) ?? NoNursery(file);
        DateTimeZone? zone = TimeZones.OfPlace(nursery);
        (double latitude, double longitude, double elevation) = Place(nursery, zone);
        (string store, string site) = Folders(nursery);
        UnitSystem units = nursery.Choice("units", ["metric", "us"]) == "us" ? UnitSystem.Us : UnitSystem.Metric;
        string name = nursery.Text("name", "\"Gannet Row\"") ?? "";
        bool invented = nursery.Flag("invented") ?? false;

        ImmutableArray<HouseSettings> houses = HouseTable.ReadAll(file);
        ImmutableArray<ExportSettings> exports = ExportTable.ReadAll(file, houses, zone ?? DateTimeZone.Utc);
        SeriesCheck.Run(file, houses, exports);
        return new(fileName, name, zone ?? DateTimeZone.Utc, latitude, longitude, elevation, units, store, site, houses, exports, hash)
        {
            Invented = invented,
            Language = nursery.Choice("language", [.. Language.Codes]) ?? Language.English.Code,
            Notebooks = nursery.Text("notebooks") ?? "",
            HouseHashes = faults.HasErrors ? ImmutableDictionary<string, string>.Empty : HouseHashes.Of(root, houses.Select(h => h.Id)), // a file without faults has only known keys, so no depth that a stack could not bear
        };
    }

    private static TableReader NoNursery(TableReader file)
    {
        if (!file.Has("nursery"))
        {
            file.Faults.Missing(FaultCodes.MissingKey, Reading.Place.Top, "there is no [nursery] table", "", "add [nursery] with name, timeZone, latitude, longitude and elevationM.");
        }

        // The table's own keys are not asked for one by one: a list without faults takes them.
        return new TableReader(new TomlTable(Reading.Place.Top, TableOrigin.Implied), "[nursery]", new FaultList(""), Keys);
    }

    private static (double Latitude, double Longitude, double Elevation) Place(TableReader nursery, DateTimeZone? zone)
    {
        double? latitude = nursery.Number("latitude", -90, 90, "degrees, north positive", "53.2");
        double? longitude = nursery.Number("longitude", -180, 180, "degrees, east positive", "-0.6");
        double? elevation = nursery.Number("elevationM", -430, 5000, "metres above sea level", "18");
        if (zone is not null && longitude is { } east)
        {
            TimeZones.CompareWithLongitude(nursery, zone, east);
        }

        return (latitude ?? 0, longitude ?? 0, elevation ?? 0);
    }

    private static (string Store, string Site) Folders(TableReader nursery)
    {
        string store = nursery.Text("store") ?? DefaultStore;
        string site = nursery.Text("site") ?? DefaultSite;
        if (Plain(store) == Plain(site))
        {
            string key = nursery.Has("site") ? "site" : "store";
            nursery.Faults.Error(FaultCodes.Repeated, nursery.PlaceOf(key), "store and site are the same folder", "two folders", "give one of them another name.");
        }

        return (store, site);
    }

    private static string Plain(string folder)
    {
        string plain = folder.Replace('\\', '/').TrimEnd('/');
        return (plain.StartsWith("./", StringComparison.Ordinal) ? plain[2..] : plain).ToUpperInvariant();
    }
}
