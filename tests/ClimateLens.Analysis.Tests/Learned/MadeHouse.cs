using ClimateLens.Science.Statistics;
using ClimateLens.TestKit;
using NodaTime;

namespace ClimateLens.Analysis.Tests.Learned;

/// <summary>
/// A made-up house with three thermometers and a hygrometer under weather that changes from hour to hour, and four weeks before the
/// reviewed one. All noise comes from the hour, so that every house made is the same.
/// </summary>
internal static class MadeHouse
{
    public const string Week = "2025-W42";

    /// <summary>Thursday of the week, 00:00 local.</summary>
    public static readonly Instant Thursday = Instant.FromUtc(2025, 10, 15, 23, 0);

    /// <summary>The house, with what each column should read instead.</summary>
    /// <param name="spoilt">Column, moment and true reading in, reading out; asked for the reviewed week only.</param>
    /// <param name="days">Days before the week.</param>
    /// <param name="without">Columns that it does not log.</param>
    public static SyntheticHouse With(Func<string, Instant, double, double>? spoilt = null, int days = 28, params string[] without)
    {
        SyntheticHouse bare = SyntheticHouse.Week(Week, runInDays: days);
        Instant start = bare.Input.Period.Start;
        Func<Instant, double> Read(string column, Func<Instant, double> truth)
            => at => spoilt is not null && at >= start ? spoilt(column, at, truth(at)) : truth(at);
        (string, Func<Instant, double>)[] columns =
        [
            ("airTemperature", Read("airTemperature", at => Air(at) + Noise(at, 1, 0.1))),
            ("canopyTemperature", Read("canopyTemperature", at => Air(at) - 0.5 + Noise(at, 2, 0.1))),
            ("leafTemperature", Read("leafTemperature", at => Air(at) - 0.8 + Noise(at, 3, 0.15))),
            ("relativeHumidity", Read("relativeHumidity", at => 85 - (3 * (Air(at) - 18)) + Noise(at, 4, 1))),
        ];
        return bare.WithSource("climate", 5, [.. columns.Where(c => !without.Contains(c.Item1))]).WithHistory();
    }

    /// <summary>Warmer by day, and up to 2 K warmer or colder from one hour to another.</summary>
    private static double Air(Instant at) => SyntheticHouse.AutumnAir(at).TemperatureC + 2 + Noise(at, 0, 0.7);

    private static double Noise(Instant at, ulong which, double spread)
        => spread * new SeededRandom(unchecked(((ulong)at.ToUnixTimeSeconds() / 300 * 16) + which)).NextNormal();
}
