using ClimateLens.HouseSimulator;
using ClimateLens.HouseSimulator.Physics;
using ClimateLens.HouseSimulator.Weather;
using NodaTime;

namespace ClimateLens.EndToEnd.Tests.Simulator;

public class HousePhysicsTests
{
    public static TheoryData<string> Houses => ["1", "2"];

    [Theory]
    [MemberData(nameof(Houses))]
    public void Water_WholeAutumn_InIsOutPlusStored(string id)
    {
        HouseRun run = House(id);
        HouseBook book = run.Book;
        double given = run.Waterings.Sum(w => w.LitresPerM2 * w.Share);
        Assert.Equal(given, book.Given, 1e-9);
        double left = book.Ventilated + book.FloorDrained + book.GlassDrained + book.MovedOut;
        Assert.True(given > 30);
        Assert.Equal(book.StoredAtStart + given - left, run.WaterStored, 1e-9);
    }

    [Theory]
    [MemberData(nameof(Houses))]
    public void Heat_WholeAutumn_InIsStored(string id)
    {
        HouseRun run = House(id);
        Assert.Equal(run.Book.HeatAtStart + run.Book.HeatIn, run.HeatStored, 1e-3); // of about 1.8e6 J/m² stored
    }

    [Theory]
    [MemberData(nameof(Houses))]
    public void State_EveryMinute_IsThatOfAWorkingHouse(string id)
    {
        HouseMinute[] minutes = House(id).Minutes[Gannet.Run.FirstMinute..];
        Within(minutes, m => m.AirC, 12, 28);
        Within(minutes, m => m.HumidityPct, 40, 100);
        Within(minutes, m => m.CanopyHumidityPct, 40, 100.5);
        Within(minutes, m => m.LeafC - m.AirC, -4, 8);
        Within(minutes, m => m.FilmMm, 0, 0.7);
        Within(minutes, m => m.FloorMm, 0, 5);
        Within(minutes, m => m.CarbonDioxidePpm, 150, 1000);
        Within(minutes, m => m.PipeC, 10, 70);
        Within(minutes, m => m.LeePct, 0, 100);
        Within(minutes, m => m.WindPct, 0, 100);
        Within(minutes, m => m.ScreenPct, 0, 100);
        Assert.InRange(minutes.Average(m => m.AirC), 15, 19);
        Assert.True(minutes.Max(m => m.AirC) > 21);
        Assert.True(minutes.Max(m => m.HumidityPct) - minutes.Min(m => m.HumidityPct) > 25);
    }

    [Fact]
    public void Film_WhileItEvaporates_OnlyShrinks()
    {
        HouseMinute[] minutes = Gannet.Run.HouseOne.Minutes;
        var watered = Gannet.Run.HouseOne.Waterings.SelectMany(w => Enumerable.Range(w.StartMinute + 1, w.Minutes)).ToHashSet();
        int drying = 0;
        for (int i = 1; i < minutes.Length; i++)
        {
            if (minutes[i].FilmEvaporationGm2H > 0 && !watered.Contains(i))
            {
                drying++;
                Assert.True(minutes[i].FilmMm < minutes[i - 1].FilmMm);
            }
        }

        Assert.True(drying > 10_000);
    }

    [Fact]
    public void SaturatedAir_PublishedValues_AgreeWithinATenthOfAPercent()
    {
        // Saturation over water: 2339 Pa at 20 °C, 4247 Pa at 30 °C (Sonntag 1990 as tabulated in xclim's tests); dew point back.
        Assert.Equal(2.339, SaturatedAir.PressureKPa(20), 0.0023);
        Assert.Equal(4.247, SaturatedAir.PressureKPa(30), 0.0042);
        Assert.Equal(13.37, SaturatedAir.DewPointC(SaturatedAir.PressureKPa(13.37)), 1e-9);
        Assert.Equal(100, SaturatedAir.HumidityPct(SaturatedAir.DensityKgM3(17.3), 17.3), 1e-9);
    }

    [Fact]
    public void SunHeight_GoldenOctoberNoon_AgreesWithPublishedElevation()
    {
        // Elevation 39.872° at 39.742476 N 105.1786 W, 2003-10-17 12:30:30 MST (NREL SPA example as kept in pvlib's tests).
        double sine = SunHeight.Sine(Instant.FromUtc(2003, 10, 17, 19, 30, 30), 39.742476, -105.1786);
        Assert.Equal(39.872, Math.Asin(sine) * 180 / Math.PI, 0.5);
    }

    [Fact]
    public void HeatNetwork_BodyAtAnEdge_FollowsBackwardEuler()
    {
        var network = new HeatNetwork(6000);
        network.TemperatureC[0] = 10;
        network.Begin();
        network.Edge(0, 50, 20);
        double heat = network.Step(60);
        Assert.Equal(20 - (10 / 1.5), network.TemperatureC[0], 1e-12); // 1 + 50·60/6000 = 1.5
        Assert.Equal(6000 * (network.TemperatureC[0] - 10), heat, 1e-8);
    }

    [Fact]
    public void VapourBalance_NearlyDrySurface_GivesWhatItHoldsAndNoMore()
    {
        var balance = new VapourBalance(0.25, 4);
        var leaf = new WetSurface(true) { DensityKgM3 = 0.02, Evaporating = 0.01, Condensing = 0.01, StoreKgM2 = 1e-6 };
        double before = balance.StoredKgM2;
        double lost = balance.Step([leaf], 0.005, 0.001, 0.008, 60);
        Assert.Equal(1e-6 / 60, leaf.FluxKgM2S, 1e-20);
        Assert.Equal(before + 1e-6 - lost, balance.StoredKgM2, 1e-15);
    }

    private static void Within(HouseMinute[] minutes, Func<HouseMinute, double> value, double low, double high)
    {
        Assert.True(minutes.Min(value) >= low, $"lowest {minutes.Min(value)}, expected at least {low}");
        Assert.True(minutes.Max(value) <= high, $"highest {minutes.Max(value)}, expected at most {high}");
    }

    private static HouseRun House(string id) => Gannet.Run.Houses.Single(h => h.Options.Id == id);
}
