using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using ClimateLens.Nursery.Clock;
using ClimateLens.Nursery.Settings;
using ClimateLens.Nursery.Time;
using ClimateLens.TestKit;
using NodaTime;

namespace ClimateLens.Nursery.Tests.Clock;

/// <summary>Two weeks of readings under a made-up sky, by a clock that may be wrong, and what is said of it.</summary>
internal sealed record SkyReadings(string Zone = "Europe/London", string? StampZone = null)
{
    public double Latitude { get; init; } = 53.2;

    public double Longitude { get; init; } = -0.6;

    /// <summary>Latitude of the sky itself, where it is not that of the nursery file.</summary>
    public double? TrueLatitude { get; init; }

    /// <summary>Longitude of the sky itself.</summary>
    public double? TrueLongitude { get; init; }

    public Instant From { get; init; } = Instant.FromUtc(2025, 6, 9, 0, 0);

    public int Days { get; init; } = 14;

    public int StepMinutes { get; init; } = 10;

    public StampSide Side { get; init; } = StampSide.Instant;

    public string Column { get; init; } = "globalRadiation";

    /// <summary>How far the stamp lies after the moment. [min]</summary>
    public Func<Instant, double> AheadMin { get; init; } = _ => 0;

    /// <summary>What the sensor reads of the sky at a moment.</summary>
    public Func<Instant, double, double> Reads { get; init; } = (_, wm2) => wm2;

    public ClockCheck Check() => SourceClock.Check(Nursery(), Exported().Time.Zone, Batch());

    public ReadingBatch Batch()
    {
        SyntheticSky sky = new(TrueLatitude ?? Latitude, TrueLongitude ?? Longitude);
        SortedDictionary<long, double> rows = [];
        for (Instant at = From; at < From + Duration.FromDays(Days); at += Duration.FromMinutes(StepMinutes))
        {
            rows[(at + Duration.FromMinutes(AheadMin(at))).ToUnixTimeTicks() / 10] = Reads(at, sky.Wm2(at));
        }

        return new ReadingBatch("1", "climate", Side, StepMinutes * 60, [.. rows.Keys], ImmutableSortedDictionary<string, double[]>.Empty.Add(Column, [.. rows.Values]));
    }

    public NurserySettings Nursery() => NurseryFile.Parse("nursery.toml", Encoding.UTF8.GetBytes(string.Create(CultureInfo.InvariantCulture, $"""
        [nursery]
        name = "Gannet Row"
        timeZone = "{Zone}"
        latitude = {Latitude}
        longitude = {Longitude}
        elevationM = 18
        [[house]]
        id = "1"
        [[export]]
        name = "climate"
        house = "1"
        files = ["a.csv"]
          [export.time]
          field = "Time"
          format = "iso"
          {(StampZone is null ? "" : $"timeZone = \"{StampZone}\"")}
          [[export.column]]
          field = "Sun"
          channel = "globalRadiation"
          unit = "W/m2"
        """)));

    private ExportSettings Exported() => Nursery().Exports[0];
}
