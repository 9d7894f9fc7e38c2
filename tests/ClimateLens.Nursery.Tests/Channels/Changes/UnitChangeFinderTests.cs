using ClimateLens.Nursery.Channels;
using ClimateLens.Nursery.Channels.Changes;

namespace ClimateLens.Nursery.Tests.Channels.Changes;

/// <summary>Changes of unit that are made on purpose, and what houses and weather do that looks like one and is none.</summary>
public class UnitChangeFinderTests
{
    private const int StepMinutes = 10, PerDay = 144, Days = 14;

    private static readonly long[] Stamps = [.. Enumerable.Range(0, Days * PerDay).Select(i => 1_759_276_800_000_000 + (i * StepMinutes * 60_000_000L))];

    public static TheoryData<string, string, string> Planted => new()
    {
        { "airTemperature", "Cel", "[degF]" },
        { "airTemperature", "[degF]", "Cel" },
        { "airTemperature", "Cel", "K" },
        { "outsideTemperature", "Cel", "[degF]" },
        { "heatingSetPoint", "Cel", "[degF]" },
        { "dewPoint", "[degF]", "Cel" },
        { "relativeHumidity", "%", "1" },
        { "relativeHumidity", "1", "%" },
        { "mediumMoisture", "%", "1" },
        { "vapourPressureDeficit", "kPa", "hPa" },
        { "vapourPressureDeficit", "hPa", "kPa" },
        { "vapourPressureDeficit", "kPa", "Pa" },
        { "airPressure", "hPa", "kPa" },
        { "airPressure", "hPa", "mm[Hg]" },
        { "illuminance", "klx", "lx" },
        { "illuminance", "lx", "klx" },
        { "globalRadiation", "W/m2", "kW/m2" },
    };

    [Theory]
    [MemberData(nameof(Planted))]
    public void Find_UnitThatChangesAtNoon_IsFoundThereWithItsUnit(string channel, string declared, string other)
    {
        int at = (6 * PerDay) + (12 * 6);
        FoundUnitChange found = Assert.Single(Find(channel, declared, i => Read(channel, True(channel, i), declared, i >= at ? other : declared)));
        Assert.Equal(at, found.At);
        Assert.Equal((other, true), (found.Unit.Code, found.IsAfter));
    }

    [Theory]
    [MemberData(nameof(Planted))]
    public void Find_UnitThatBecomesRight_IsFoundBeforeTheChange(string channel, string declared, string other)
    {
        int at = (6 * PerDay) + (12 * 6);
        FoundUnitChange found = Assert.Single(Find(channel, declared, i => Read(channel, True(channel, i), declared, i < at ? other : declared)));
        Assert.Equal(at, found.At);
        Assert.Equal((other, false), (found.Unit.Code, found.IsAfter));
    }

    [Fact]
    public void Find_ThereAndBack_IsTwoChanges()
    {
        FoundUnitChange[] found = [.. Find("airTemperature", "Cel", i => Read("airTemperature", Air(i), "Cel", i / PerDay is >= 4 and < 9 ? "[degF]" : "Cel"))];
        Assert.Equal([(4 * PerDay, true), (9 * PerDay, false)], found.Select(f => (f.At, f.IsAfter)));
        Assert.All(found, f => Assert.Equal("[degF]", f.Unit.Code));
    }

    [Fact]
    public void Find_LightThatChangesByNight_IsFoundAtTheFirstLight()
    {
        FoundUnitChange found = Assert.Single(Find("illuminance", "klx", i => Read("illuminance", Sun(i) * 50, "klx", i >= 6 * PerDay ? "lx" : "klx")));
        Assert.InRange(found.At, (6 * PerDay) + (6 * 6), (6 * PerDay) + (9 * 6));
    }

    [Fact]
    public void Find_ChangeBesideAGap_IsFoundAtTheFirstReadingAfterIt()
    {
        FoundUnitChange found = Assert.Single(Find("airTemperature", "Cel", i => i is > 800 and < 1000 ? double.NaN : Read("airTemperature", Air(i), "Cel", i >= 900 ? "[degF]" : "Cel")));
        Assert.Equal(1000, found.At);
    }

    [Fact]
    public void Find_CodesAmongTheReadings_DoNotHideTheChange()
        => Assert.Equal(900, Assert.Single(Find("airTemperature", "Cel", i => i % 17 == 0 ? -999 : Read("airTemperature", Air(i), "Cel", i >= 900 ? "[degF]" : "Cel"))).At);

    [Fact]
    public void Find_OneDayAfterTheChange_IsNotEnough()
    {
        int at = ((Days - 1) * PerDay) - 12;
        Assert.Empty(Find("airTemperature", "Cel", i => Read("airTemperature", Air(i), "Cel", i >= at ? "[degF]" : "Cel")));
    }

    [Fact]
    public void Find_OneWildDay_IsNoChange()
        => Assert.Empty(Find("airTemperature", "Cel", i => Read("airTemperature", Air(i), "Cel", i / PerDay == 6 ? "[degF]" : "Cel")));

    [Theory]
    [InlineData(2, 18)] // frost-free house that is heated up for a new crop
    [InlineData(-10, 14)] // a cold house: 14 °C is what -10 °C would read in °F
    [InlineData(20, -6)]
    [InlineData(18, 5)]
    public void Find_HeatingThatComesOnOrGoesOff_IsNoChange(double fromC, double toC)
    {
        // The air follows within hours.
        double Share(int i) => Math.Clamp((i - (6.4 * PerDay)) / 24.0, 0, 1);
        Assert.Empty(Find("airTemperature", "Cel", i => fromC + (Share(i) * (toC - fromC)) + Math.Sin(i * 2 * Math.PI / PerDay)));
        Assert.Empty(Find("airTemperature", "[degF]", i => fromC + (Share(i) * (toC - fromC)) + Math.Sin(i * 2 * Math.PI / PerDay)));
    }

    [Fact]
    public void Find_PipesThatBecomeWarm_AreNotLookedAt()
        => Assert.Empty(Find("heatingPipeTemperature", "Cel", i => i < 6 * PerDay ? 18 : 64.4));

    [Fact]
    public void Find_SensorMovedToAWarmerPlace_IsNoChange()
        => Assert.Empty(Find("airTemperature", "Cel", i => Air(i) + (i >= 900 ? 12 : 0)));

    [Fact]
    public void Find_ColdFrontOutside_IsNoChange()
        => Assert.Empty(Find("outsideTemperature", "[degF]", i => (i < 900 ? 12 : i < 912 ? 12 - ((i - 900) * 1.5) : -6) + (2 * Math.Sin(i * 2 * Math.PI / PerDay))));

    [Theory]
    [InlineData(3000)]
    [InlineData(8000)]
    [InlineData(20000)]
    public void Find_LampsThatAreSwitchedOnInAutumn_AreNoChange(double lampsLx)
        => Assert.Empty(Find("illuminance", "lx", i => (Sun(i) * 12000) + (i >= 6 * PerDay && Hour(i) is >= 4 and < 20 ? lampsLx : 0)));

    [Theory]
    [InlineData(2, 2000)]
    [InlineData(5, 5000)]
    [InlineData(8, 8000)]
    [InlineData(20, 10000)]
    public void Find_LampsInThePolarNight_AreNoChange(double twilightLx, double lampsLx)
    {
        // A few hours of twilight around noon; then lamps for sixteen hours, a thousand times as bright.
        double Twilight(int i) => Math.Abs(Hour(i) - 12) >= 3 ? 0 : twilightLx * Math.Cos((Hour(i) - 12) * Math.PI / 6);
        Assert.Empty(Find("illuminance", "lx", i => Twilight(i) + (i >= 6 * PerDay && Hour(i) is >= 4 and < 20 ? lampsLx : 0)));
        Assert.Empty(Find("illuminance", "lx", i => Twilight(i) + (i < 6 * PerDay && Hour(i) is >= 4 and < 20 ? lampsLx : 0)));
    }

    [Fact]
    public void Find_SunThatFadesIntoThePolarNight_IsNoChange()
        => Assert.Empty(Find("globalRadiation", "W/m2", i => 200 * Math.Pow(0.4, i / (double)PerDay) * Math.Max(0, Math.Sin((Hour(i) - 6) * Math.PI / 12))));

    [Fact]
    public void Find_BlackoutScreen_IsNoChange()
        => Assert.Empty(Find("illuminance", "lx", i => Sun(i) * 30000 * (i >= 6 * PerDay && Hour(i) is < 9 or >= 16 ? 0.001 : 1)));

    [Fact]
    public void Find_DullWeekAfterABrightOne_IsNoChange()
        => Assert.Empty(Find("globalRadiation", "W/m2", i => Sun(i) * (i < 6 * PerDay ? 800 : 60)));

    [Fact]
    public void Find_DrySpellAfterADampOne_IsNoChange()
        => Assert.Empty(Find("vapourPressureDeficit", "kPa", i => 0.08 * Math.Pow(10, Math.Clamp((i - (6.2 * PerDay)) / 72.0, 0, 1)) * (0.5 + Sun(i))));

    [Fact]
    public void Find_WindAndVents_AreNotLookedAt()
    {
        Assert.Empty(Find("windSpeed", "m/s", i => i < 900 ? 2 : 7.2));
        Assert.Empty(Find("ventPosition", "%", i => i < 900 ? 0.5 : 50));
    }

    private static IReadOnlyList<FoundUnitChange> Find(string channel, string declared, Func<int, double> value)
    {
        Channel known = ChannelCatalogue.Get(channel);
        Assert.True(UnitCatalogue.TryGet(known.Quantity, declared, out Unit? unit));
        return UnitChangeFinder.Find(Stamps, [.. Enumerable.Range(0, Stamps.Length).Select(value)], known, unit);
    }

    /// <summary>A true value, written in one unit and read as another.</summary>
    private static double Read(string channel, double si, string declared, string written)
    {
        Quantity quantity = ChannelCatalogue.Get(channel).Quantity;
        Assert.True(UnitCatalogue.TryGet(quantity, declared, out Unit? read) & UnitCatalogue.TryGet(quantity, written, out Unit? wrote));
        return read!.ToSi(wrote!.FromSi(si));
    }

    private static double True(string channel, int i) => channel switch
    {
        "airTemperature" or "heatingSetPoint" => Air(i),
        "outsideTemperature" => Air(i) - 8 + (3 * Math.Sin(i / (2.0 * PerDay))),
        "dewPoint" => Air(i) - 5,
        "relativeHumidity" or "mediumMoisture" => 80 - (4 * (Air(i) - 18)) + Math.Sin(i / 7.0),
        "vapourPressureDeficit" => 0.3 + (0.6 * Sun(i)) + (0.05 * Math.Sin(i / 9.0)),
        "airPressure" => 101 + (1.5 * Math.Sin(i / (1.5 * PerDay))),
        "illuminance" => 40000 * Sun(i),
        _ => 600 * Sun(i),
    };

    private static double Hour(int i) => i % PerDay * StepMinutes / 60.0;

    private static double Air(int i) => 18 + (3 * Sun(i)) + (0.3 * Math.Sin(i / 5.0)) + (2 * Math.Sin(i / (3.0 * PerDay)));

    /// <summary>From 6 to 18 h, every day of another brightness, with clouds.</summary>
    private static double Sun(int i)
        => Math.Max(0, Math.Sin((Hour(i) - 6) * Math.PI / 12)) * (0.6 + (0.35 * Math.Sin(i / PerDay * 2.1))) * (0.85 + (0.15 * Math.Sin(i * 1.7)));
}
