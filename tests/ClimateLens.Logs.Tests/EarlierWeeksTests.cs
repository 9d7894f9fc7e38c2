using System.Globalization;
using System.Text;
using ClimateLens.Nursery;
using ClimateLens.Nursery.Records;
using ClimateLens.Nursery.Time;
using NodaTime;

namespace ClimateLens.Logs.Tests;

/// <summary>The weeks before a period that come with it because plants were counted.</summary>
public sealed class EarlierWeeksTests
{
    private static readonly string Scouting = TestNursery.RecordExport("scouting", "scouting", "house", "count");

    [Fact]
    public void Load_CountsInAnEarlierWeek_BringsThatWeekAndTheOneBefore_AsTheirOwnReviewsSeeThem()
    {
        using TestNursery nursery = Filled("2025-09-23T09:00,1,3\n2025-09-24T09:00,2,1\n");
        using ReadingStore store = ReadingStore.Open(nursery.Settings, nursery.Folder);
        store.Import();
        HouseInput input = store.Load(nursery.House, Week(42), Duration.FromDays(9), Duration.FromDays(28));
        Assert.Equal([Week(38), Week(39)], input.Earlier.Select(e => e.Period));
        Assert.Single(input.Records, r => r.Kind == RecordKind.Scouting);
        HouseInput own = store.Load(nursery.House, Week(39), Duration.FromDays(9));
        Assert.Equal(own.RunIn, input.Earlier[1].RunIn);
        Assert.Equal(own.Batches[0].UtcMicros, input.Earlier[1].Batches[0].UtcMicros);
        Assert.Equal(own.Batches[0].Columns["airTemperature"], input.Earlier[1].Batches[0].Columns["airTemperature"]);
        Assert.Empty(input.Earlier[1].History);
        Assert.Empty(input.Earlier[1].Earlier);
    }

    [Fact]
    public void Load_NothingCountedInTheHouse_BringsNoWeek()
    {
        using TestNursery nursery = Filled("2025-09-24T09:00,2,1\n");
        using ReadingStore store = ReadingStore.Open(nursery.Settings, nursery.Folder);
        store.Import();
        Assert.Empty(store.Load(nursery.House, Week(42), Duration.FromDays(9)).Earlier);
    }

    /// <summary>Two pages look back at one object, until the store changes.</summary>
    [Fact]
    public void Load_NextWeek_BringsTheSameWeeks_AndOthersAfterAnImport()
    {
        using TestNursery nursery = Filled("2025-09-24T09:00,1,3\n");
        using ReadingStore store = ReadingStore.Open(nursery.Settings, nursery.Folder);
        store.Import();
        HouseInput Load(int week) => store.Load(nursery.House, Week(week), Duration.FromDays(9));
        HouseInput first = Load(41);
        Assert.Same(first.Earlier[0], Load(42).Earlier[0]);
        nursery.Write("b.csv", "time,temp,rh\n2025-09-16T09:30,40,40\n");
        store.Import();
        HouseInput changed = Load(42).Earlier[0];
        Assert.Equal(first.Earlier[0].Batches[0].UtcMicros.Length + 1, changed.Batches[0].UtcMicros.Length);
    }

    private static Interval Week(int number) => new IsoWeek(2025, number).In(DateTimeZoneProviders.Tzdb["Europe/London"]);

    private static TestNursery Filled(string counts)
    {
        TestNursery nursery = new(TestNursery.Climate + Scouting);
        StringBuilder text = new("time,temp,rh\n");
        for (DateTime at = new(2025, 9, 1); at < new DateTime(2025, 10, 20); at = at.AddHours(1))
        {
            text.Append(CultureInfo.InvariantCulture, $"{at:yyyy-MM-dd'T'HH:mm},{at.Day % 9},{50 + at.Hour}\n");
        }

        nursery.Write("a.csv", text.ToString());
        nursery.Write("scouting.txt", "time,house,count\n" + counts);
        return nursery;
    }
}
