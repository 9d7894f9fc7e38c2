using System.Globalization;
using System.Text;
using ClimateLens.Analysis;
using ClimateLens.Nursery;
using ClimateLens.Nursery.Settings;
using ClimateLens.Nursery.Time;
using NodaTime;

namespace ClimateLens.Logs.Tests;

/// <summary>What the ledger tells of a week without reading it: never that it is as it was where it is not.</summary>
public sealed class InputTraceTests
{
    private const int Histories = 8, Steps = 16;
    private static readonly string Records = """

        [[export]]
        name = "weather"
        files = ["weather*.txt"]
        stamps = "intervalEnd"
          [export.time]
          field = "time"
          format = "iso"
          [[export.column]]
          field = "out"
          channel = "outsideTemperature"
          unit = "Cel"
        [[export]]
        name = "second"
        house = "2"
        files = ["second*.txt"]
          [export.time]
          field = "time"
          format = "iso"
          [[export.column]]
          field = "temp"
          channel = "airTemperature"
          unit = "Cel"
        """ + TestNursery.RecordExport("waterings", "waterings", "house", "minutes min", "method")
        + TestNursery.RecordExport("scouting", "scouting", "house", "count")
        + TestNursery.RecordExport("widths", "plantWidths", "house", "width cm");

    private static readonly Duration RunIn = Duration.FromDays(9), History = Duration.FromDays(28);
    private static readonly DateTime First = new(2025, 9, 1);

    /// <summary>Files come, change and go by chance: wherever two states of the store have one trace of a house-week, they have one input.</summary>
    [Theory]
    [InlineData("Europe/London")]
    [InlineData("America/Los_Angeles")]
    [InlineData("Pacific/Auckland")]
    [InlineData("Etc/UTC")]
    public void TraceOf_WhateverHappensToTheFiles_EqualTracesMeanEqualInputs(string zone)
    {
        int same = 0, changed = 0;
        for (int seed = 1; seed <= Histories; seed++)
        {
            Random random = new(seed);
            using TestNursery nursery = At(zone);
            Dictionary<(string House, IsoWeek Week), Dictionary<string, string>> seen = [];
            for (int step = 0; step < Steps; step++)
            {
                Happen(nursery, random, step);
                using ReadingStore store = ReadingStore.Open(nursery.Settings, nursery.Folder);
                store.Import();
                foreach (HouseSettings house in nursery.Settings.Houses)
                {
                    for (IsoWeek week = new(2025, 36); week <= new IsoWeek(2026, 5); week = IsoWeek.Of(week.Monday.PlusWeeks(1)))
                    {
                        Interval period = week.In(nursery.Settings.Zone);
                        InputTrace trace = store.TraceOf(house, period, RunIn, History);
                        HouseInput input = store.Load(house, period, RunIn, History);
                        Assert.True(trace.HasReadings is not { } told || told == input.HasReadings, $"seed {seed}, step {step}, house {house.Id}, {week}: readings {trace.HasReadings}");
                        Dictionary<string, string> of = seen.TryGetValue((house.Id, week), out Dictionary<string, string>? known) ? known : seen[(house.Id, week)] = [];
                        string hash = InputFingerprint.Of(input);
                        if (of.TryGetValue(trace.Hash, out string? before))
                        {
                            same++;
                            Assert.True(before == hash, $"seed {seed}, step {step}, house {house.Id}, {week}: another input of the same trace");
                        }
                        else
                        {
                            changed++;
                            of[trace.Hash] = hash;
                        }
                    }
                }
            }
        }

        Assert.True(same > changed / 4 && changed > 100, $"{same} traces seen again, {changed} new: the test has lost its subject");
    }

    /// <summary>A new week behind a long past leaves all traces but those at its edge as they were, in a year of any length.</summary>
    [Fact]
    public void TraceOf_AWeekAppended_LeavesTheWeeksBeforeAsTheyWere()
    {
        using TestNursery nursery = new(TestNursery.Climate);
        nursery.Write("a.csv", "time,temp,rh\n" + Rows(First, 15 * 7, "1,50"));
        Dictionary<IsoWeek, string> before = Traces(nursery);
        nursery.Write("b.csv", "time,temp,rh\n" + Rows(First.AddDays(15 * 7), 7, "2,50"));
        Dictionary<IsoWeek, string> after = Traces(nursery);
        IsoWeek[] changed = [.. after.Keys.Where(w => after[w] != before.GetValueOrDefault(w))];
        Assert.All(changed, week => Assert.True(week.Monday >= new LocalDate(2025, 12, 8), week.ToString()));
        Assert.Equal(16, after.Count);
    }

    [Theory]
    [InlineData("2025-10-22T10:30", 43, 47)] // within the week, and in the history of the four after
    [InlineData("2025-10-20T00:30", 42, 46)] // 23:30 UTC of the Sunday: in the half week in which the week before ends, whose input does not change
    public void TraceOf_ARowAdded_ChangesForTheWeeksThatLookAtIt(string stamp, int first, int last)
    {
        using TestNursery nursery = new(TestNursery.Climate);
        nursery.Write("a.csv", "time,temp,rh\n" + Rows(First, 15 * 7, "1,50"));
        Dictionary<IsoWeek, string> before = Traces(nursery);
        nursery.Write("b.csv", $"time,temp,rh\n{stamp},3,60\n");
        Dictionary<IsoWeek, string> after = Traces(nursery);
        Assert.Equal(Enumerable.Range(first, last - first + 1), after.Keys.Where(w => after[w] != before[w]).Select(w => w.Number));
    }

    /// <summary>A stamp at the end of an interval belongs to the week that it ends.</summary>
    [Fact]
    public void TraceOf_TheStampThatEndsTheWeek_CountsWhereStampsEndIntervals()
    {
        using TestNursery nursery = At("Etc/UTC");
        nursery.Write("a.csv", "time,temp,rh\n" + Rows(First, 21, "1,50"));
        nursery.Write("weather.txt", "time,out\n" + Rows(First, 21, "4"));
        Dictionary<IsoWeek, string> before = Traces(nursery);
        nursery.Write("weather-2.txt", "time,out\n2025-09-08T00:00,5\n");
        Assert.NotEqual(before[new IsoWeek(2025, 36)], Traces(nursery)[new IsoWeek(2025, 36)]);
    }

    [Fact]
    public void TraceOf_OtherHousesData_IsLeftAlone()
    {
        using TestNursery nursery = new(TestNursery.Climate + Records);
        nursery.Write("a.csv", "time,temp,rh\n" + Rows(First, 21, "1,50"));
        Dictionary<IsoWeek, string> before = Traces(nursery);
        nursery.Write("second.txt", "time,temp\n" + Rows(First, 21, "4"));
        nursery.Write("waterings.txt", "time,house,minutes,method\n2025-09-09T09:00,2,5,drip\n");
        Dictionary<IsoWeek, string> after = Traces(nursery);
        Assert.NotEqual(before[new IsoWeek(2025, 37)], after[new IsoWeek(2025, 37)]); // the file of waterings is one of all houses
        nursery.Write("second-2.txt", "time,temp\n" + Rows(First.AddDays(21), 7, "4"));
        Assert.Equal(after, Traces(nursery));
    }

    /// <summary>An estimate of the cost of a review: near the number of values that it loads.</summary>
    [Fact]
    public void Values_AreAboutThoseOfTheInput()
    {
        using TestNursery nursery = new(TestNursery.Climate);
        nursery.Write("a.csv", "time,temp,rh\n" + Rows(First, 15 * 7, "1,50"));
        nursery.Import();
        HouseInput input = Input(nursery, new IsoWeek(2025, 43));
        using ReadingStore store = ReadingStore.Open(nursery.Settings, nursery.Folder);
        InputTrace trace = store.TraceOf(nursery.House, input.Period, RunIn, History);
        Assert.InRange(trace.Values, 0.98 * (28 + 7) * 24 * 2, 1.02 * (28 + 7) * 24 * 2);
        Assert.Equal(true, trace.HasReadings);
        Assert.Equal(false, store.TraceOf(nursery.House, new IsoWeek(2026, 9).In(nursery.Settings.Zone), RunIn, History).HasReadings);
    }

    /// <summary>The ledger of a program that kept no traces: whole parts stand for them.</summary>
    [Fact]
    public void TraceOf_LedgerWithoutTraces_ChangesWithThePart()
    {
        using TestNursery nursery = new(TestNursery.Climate);
        nursery.Write("a.csv", "time,temp,rh\n" + Rows(First, 15 * 7, "1,50"));
        nursery.Import();
        string path = Path.Combine(nursery.Store, "ledger.json");
        Logs.Store.Ledger ledger = Logs.Store.LedgerFormat.Read(File.ReadAllBytes(path))!;
        Logs.Store.LedgerSource source = Assert.Single(ledger.Sources);
        void Write(string hash) => File.WriteAllBytes(path, Logs.Store.LedgerFormat.Write(ledger with
        {
            Sources = [source with { Parts = [.. source.Parts.Select(p => p with { Trace = null, Stored = p.Stored with { Sha256 = hash } })] }],
        }));
        Dictionary<IsoWeek, string> Read()
        {
            using ReadingStore store = ReadingStore.Open(nursery.Settings, nursery.Folder);
            Assert.Null(store.TraceOf(nursery.House, new IsoWeek(2025, 40).In(nursery.Settings.Zone), RunIn, History).HasReadings);
            return Traces(store, nursery);
        }

        Write("a");
        Dictionary<IsoWeek, string> first = Read();
        Assert.Equal(first, Read());
        Write("b");
        Dictionary<IsoWeek, string> second = Read();
        Assert.All(first.Keys, week => Assert.NotEqual(first[week], second[week]));
    }

    /// <summary>The same parts, read back after the ledger was lost, have the same traces.</summary>
    [Fact]
    public void TraceOf_LedgerLost_PartsHaveTheTracesThatTheyWereWrittenWith()
    {
        using TestNursery nursery = new(TestNursery.Climate + Records);
        nursery.Write("a.csv", "time,temp,rh\n" + Rows(First, 30, "1,50") + "2025-10-01T00:00,,\n");
        nursery.Write("waterings.txt", "time,house,minutes,method\n2025-09-09T09:00,1,5,drip\n2025-09-12T09:00,2,5,drip\n");
        nursery.Import();
        string path = Path.Combine(nursery.Store, "ledger.json");
        Dictionary<string, string> Parts() => Logs.Store.LedgerFormat.Read(File.ReadAllBytes(path))!.Sources.SelectMany(s => s.Parts)
            .ToDictionary(p => p.Stored.Path, p => $"{Convert.ToHexString(p.Trace!.Halves)} {p.Trace.StepMicros}");
        Dictionary<string, string> written = Parts();
        File.Delete(path);
        using (ReadingStore store = ReadingStore.Open(nursery.Settings, nursery.Folder))
        {
            Assert.NotEqual(false, store.TraceOf(nursery.House, new IsoWeek(2025, 38).In(nursery.Settings.Zone), RunIn, History).HasReadings);
        }

        nursery.Import();
        Assert.Equal(3, written.Count);
        Assert.Equal(written, Parts());
    }

    /// <summary>Sources that only their parts tell of stay so until an import has read their files, also where it stops half way.</summary>
    [Fact]
    public void Ledger_AdoptedSource_IsStillOneWhenItIsReadAgain()
    {
        Logs.Store.Ledger ledger = new() { Sources = [new() { House = "1", Source = "a", Settings = "", IsAdopted = true }, new() { House = "1", Source = "b", Settings = "" }] };
        byte[] written = Logs.Store.LedgerFormat.Write(ledger);
        Assert.Equal([true, false], Logs.Store.LedgerFormat.Read(written)!.Sources.Select(s => s.IsAdopted));
        Assert.Single(Encoding.UTF8.GetString(written).Split("dopted"), part => part.StartsWith('"'));
    }

    [Fact]
    public void Ledger_TraceWithoutItsHalves_IsDamaged()
        => Assert.Null(Logs.Store.LedgerFormat.Read(Encoding.UTF8.GetBytes("""
            {"format":1,"sources":[{"house":"1","source":"a","settings":"","files":[],"parts":[{"stored":{"path":"p","size":1,"sha256":"x"},"house":"1","year":2025,"rows":1,"first":1,"last":1,"trace":{"stepMicros":1}}]}]}
            """)));

    private static TestNursery At(string zone)
    {
        TestNursery nursery = new(TestNursery.Climate + Records);
        nursery.SetPlace(TestNursery.Climate + Records, zone == "Pacific/Auckland" ? -37 : 40, zone switch { "Pacific/Auckland" => 175, "America/Los_Angeles" => -120, _ => 0 }, zone);
        return nursery;
    }

    private static void Happen(TestNursery nursery, Random random, int step)
    {
        DateTime at = First.AddMinutes(random.Next(0, 20 * 7 * 24 * 60));
        string value = random.Next(1, 30).ToString(CultureInfo.InvariantCulture);
        switch (step == 0 ? 0 : random.Next(14))
        {
            case 0:
                nursery.Write("a.csv", "time,temp,rh\n" + Rows(First, random.Next(20, 120), value + ",50"));
                break;
            case 1:
                nursery.Write($"row-{step}.csv", $"time,temp,rh\n{Stamp(at)},{value},55\n");
                break;
            case 2:
                nursery.Write($"days-{step}.csv", "time,temp,rh\n" + Rows(at.Date, random.Next(1, 40), "," + value));
                break;
            case 3:
                nursery.Write("second.txt", "time,temp\n" + Rows(at.Date, random.Next(1, 60), value));
                break;
            case 4:
                nursery.Write($"weather-{step}.txt", "time,out\n" + Rows(at.Date.AddDays(1 - (int)at.DayOfWeek), random.Next(1, 60), value));
                break;
            case 5:
                nursery.Write($"waterings-{random.Next(3)}.txt", $"time,house,minutes,method\n{Stamp(at)},{random.Next(1, 3)},{value},overhead\n{Stamp(at.AddDays(3))},1,4,drip\n");
                break;
            case 6:
                nursery.Write($"scouting-{random.Next(3)}.txt", $"time,house,count\n{Stamp(at)},{random.Next(1, 3)},{value}\n");
                break;
            case 7:
                nursery.Write($"minutes-{step}.csv", "time,temp,rh\n" + Rows(at, random.Next(1, 6), value + ",51", TimeSpan.FromMinutes(random.Next(1, 3)))); // another step, beyond all others in number
                break;
            case 8:
                nursery.Write("empty.csv", step % 2 == 0 ? "time,temp,rh\nnever,1,2\n" : "time,temp,rh\n"); // nothing that could be placed in time
                break;
            case 9:
                nursery.Write($"stray-{step}.csv", $"time,temp,rh\n{Stamp(at.AddYears(random.Next(-30, 5)))},{value},55\n");
                break;
            case 10:
                nursery.Write($"widths-{random.Next(3)}.txt", $"time,house,width\n{Stamp(at)},{random.Next(1, 3)},{value}\n");
                break;
            case 11 or 12:
                nursery.Write($"fast-{random.Next(3)}.csv", "time,temp,rh\n" + Rows(at.Date, 1, value + ",51", TimeSpan.FromMinutes(random.Next(1, 6)))); // so many that no step is beyond doubt
                break;
            default:
                string[] files = Directory.GetFiles(nursery.Folder, "*.csv");
                File.Delete(files[random.Next(files.Length)]);
                break;
        }
    }

    private static string Rows(DateTime from, int days, string values, TimeSpan? step = null)
    {
        StringBuilder text = new();
        for (DateTime at = from; at < from.AddDays(days); at += step ?? TimeSpan.FromHours(1))
        {
            text.Append(CultureInfo.InvariantCulture, $"{Stamp(at)},{values}\n");
        }

        return text.ToString();
    }

    private static string Stamp(DateTime at) => at.ToString("yyyy-MM-dd'T'HH:mm", CultureInfo.InvariantCulture);

    private static Dictionary<IsoWeek, string> Traces(TestNursery nursery)
    {
        using ReadingStore store = ReadingStore.Open(nursery.Settings, nursery.Folder);
        store.Import();
        return Traces(store, nursery);
    }

    private static Dictionary<IsoWeek, string> Traces(ReadingStore store, TestNursery nursery)
    {
        Interval extent = store.Extent("1")!.Value;
        return IsoWeek.WholeWeeks(extent.Start, extent.End, nursery.Settings.Zone)
            .ToDictionary(week => week, week => store.TraceOf(nursery.House, week.In(nursery.Settings.Zone), RunIn, History).Hash);
    }

    private static HouseInput Input(TestNursery nursery, IsoWeek week)
    {
        using ReadingStore store = ReadingStore.Open(nursery.Settings, nursery.Folder);
        return store.Load(nursery.House, week.In(nursery.Settings.Zone), RunIn, History);
    }
}
