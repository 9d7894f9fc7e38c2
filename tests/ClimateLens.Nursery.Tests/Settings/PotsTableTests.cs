using ClimateLens.Nursery.Settings;
using NodaTime;

namespace ClimateLens.Nursery.Tests.Settings;

/// <summary>[house.pots], [house.care] and [[house.tank]].</summary>
public class PotsTableTests
{
    private const string All = """
        benches = ["A", "B"]
          [house.pots]
          rounds = ["06:00-09:00", "13:00 - 15:30"]
          weekendRounds = 1
          bandLow = 2.5
          bandHigh = 3.5
          dryWeightG = 620
          soakedWeightG = 1180
          [house.care]
          groupUses = 2
          floorDays = 365
          sensitiveCrops = ["Tomato"]
          tankHours = 12
          [[house.tank]]
          what = "free chlorine"
          tank = "flood tank"
          low = 1
          high = 2
          unit = "mg/L"
        """;

    [Fact]
    public void Tables_EveryKey_IsRead()
    {
        HouseSettings house = House(All);
        Assert.Equal(["A", "B"], house.Benches.ToArray());
        Assert.Equal([new("06:00 to 09:00", new(6, 0), new(9, 0)), new("13:00 to 15:30", new(13, 0), new(15, 30))], house.Pots.Rounds.ToArray());
        Assert.Equal((1, 2.5, 3.5, 620.0, 1180.0), (house.Pots.WeekendRounds, house.Pots.BandLow, house.Pots.BandHigh, house.Pots.DryWeightG, house.Pots.SoakedWeightG));
        Assert.Equal((2, 365, 12.0), (house.Care.GroupUses, house.Care.FloorDays, house.Care.TankHours));
        Assert.Equal(["tomato"], house.Care.SensitiveCrops.ToArray());
        Assert.Equal(new TankLimit("free chlorine", "flood tank", 1, 2, "mg/L"), Assert.Single(house.Care.Tanks));
        Assert.Equal(6, house.Pots.SetByUser.Count);
    }

    [Fact]
    public void Tables_LeftOut_HaveTheUsualValues()
    {
        HouseSettings house = House("");
        Assert.Equal((3, 2.0, 4.0, null), (house.Pots.Rounds.Length, house.Pots.BandLow, house.Pots.BandHigh, house.Pots.DryWeightG));
        Assert.Equal((3, 180, 24.0, 0), (house.Care.GroupUses, house.Care.FloorDays, house.Care.TankHours, house.Care.Tanks.Length));
        Assert.Empty(house.Benches);
    }

    [Theory]
    [InlineData("bandHigh = 3.5", "bandHigh = 2", "nursery.order")]
    [InlineData("soakedWeightG = 1180", "", "nursery.order")]
    [InlineData("soakedWeightG = 1180", "soakedWeightG = 600", "nursery.order")]
    [InlineData("\"06:00-09:00\"", "\"9 till 5\"", "nursery.format")]
    [InlineData("\"06:00-09:00\"", "\"09:00-06:00\"", "nursery.format")]
    [InlineData("\"06:00-09:00\"", "\"06:00-14:00\"", "nursery.order")]
    [InlineData("weekendRounds = 1", "weekendRounds = 3", "nursery.range")]
    [InlineData("high = 2", "high = 1", "nursery.order")]
    [InlineData("low = 1", "lowest = 1", "nursery.unknownKey")]
    public void Tables_Wrong_AreTold(string right, string wrong, string code)
        => Assert.Contains(NurseryText.ProblemsOf(With(All.Replace(right, wrong, StringComparison.Ordinal))), p => p.Code == code);

    [Fact]
    public void Tank_WithoutALimit_IsTold()
        => Assert.Contains(NurseryText.ProblemsOf(With("  [[house.tank]]\n  what = \"ORP\"")), p => p.Code == "nursery.missingKey");

    [Fact]
    public void DueOn_Weekend_IsWhatIsSet()
    {
        PotRules rules = House(All).Pots;
        Assert.Equal((2, 1), (rules.DueOn(new LocalDate(2025, 10, 17)), rules.DueOn(new LocalDate(2025, 10, 18))));
        Assert.Equal(3, new PotRules().DueOn(new LocalDate(2025, 10, 18)));
    }

    [Theory]
    [InlineData(0.99, false)]
    [InlineData(1, true)]
    [InlineData(2, true)]
    [InlineData(2.01, false)]
    public void Holds_AtTheLimits_IsWithin(double reading, bool within) => Assert.Equal(within, new TankLimit("ORP", "", 1, 2, "").Holds(reading));

    private static string With(string house) => NurseryText.Smallest.Replace("id = \"1\"", "id = \"1\"\n" + house, StringComparison.Ordinal);

    private static HouseSettings House(string text) => NurseryText.Parse(With(text)).Houses[0];
}
