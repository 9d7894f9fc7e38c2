using System.Reflection;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery;
using ClimateLens.Nursery.Records;
using ClimateLens.Nursery.Settings;
using ClimateLens.TestKit;
using CsCheck;
using NodaTime;

namespace ClimateLens.Analysis.Tests;

public sealed class ReviewTests
{
    private static readonly SyntheticHouse House = SyntheticHouse.Week("2025-W42").WithAir(SyntheticHouse.ChangingAir)
        .WithWatering(new LocalDateTime(2025, 10, 13, 15, 30), ("minutes", "40"), ("method", "boom"));

    [Fact]
    public void NotKnown_EveryNullPart_IsNamedInPlainWords()
    {
        foreach (SyntheticHouse house in (SyntheticHouse[])[House, SyntheticHouse.Week("2025-W42", runInDays: 0)])
        {
            Review review = ReviewPipeline.Run(house.Input);
            foreach (PropertyInfo property in typeof(Review).GetProperties().Where(p => p.GetValue(review) is null))
            {
                string key = char.ToLowerInvariant(property.Name[0]) + property.Name[1..];
                Assert.Single(review.NotKnown, u => u.What == key);
            }

            Assert.All(review.NotKnown, u => Assert.True(u.Why.Length > 20 && u.Why.EndsWith('.')));
            Assert.Equal(review.NotKnown.Length, review.NotKnown.Select(u => u.What).Distinct().Count());
        }
    }

    [Fact]
    public void NotKnown_KnownPart_IsNotNamed()
    {
        Review review = ReviewPipeline.Run(House.Input);
        Assert.DoesNotContain(review.NotKnown, u => u.What is "riskHours" or "riskHoursBefore" or "waterings" or "records");
    }

    [Fact]
    public void Records_OfThePeriod_AreCountedByKind()
    {
        SyntheticHouse house = House
            .WithRecord(RecordKind.PotChecks, new LocalDateTime(2025, 10, 14, 9, 0), ("level", "3"))
            .WithRecord(RecordKind.PotChecks, new LocalDateTime(2025, 10, 15, 9, 0), ("level", "2"))
            .WithRecord(RecordKind.PotChecks, new LocalDateTime(2025, 10, 7, 9, 0), ("level", "2"));
        Review review = ReviewPipeline.Run(house.Input);
        Assert.Equal(2, review.Pots!.Count);
        Assert.Equal(["potChecks:2", "waterings:1"], review.Records!.Kinds.Select(r => $"{r.Key}:{r.Value.Count}"));
    }

    [Fact]
    public void House_CropSoldBeforeThePeriod_IsNotStanding()
    {
        CropSettings sold = new("begonia", new LocalDate(2025, 5, 1), null, new LocalDate(2025, 10, 13), null, []);
        CropSettings next = new("cyclamen", new LocalDate(2025, 10, 19), null, null, null, []);
        Assert.Equal("cyclamen", ReviewPipeline.Run(House.WithHouse(House.Input.House with { Crops = [sold, next] }).Input).House.Crop);
        Assert.Null(ReviewPipeline.Run(House.WithHouse(House.Input.House with { Crops = [sold] }).Input).House.Crop);
    }

    [Fact]
    public void Provenance_Review_NamesVersionsSeedThresholdsAndMethods()
    {
        Provenance provenance = ReviewPipeline.Run(House.WithRules(new RiskRules(MarginK: 1.5) { SetByUser = ["marginK"] }).Input).Provenance;
        Assert.Equal("ClimateLens 0.1.0", provenance.Tool);
        Assert.Equal(DateTimeZoneProviders.Tzdb.VersionId, provenance.TimeZoneData);
        Assert.Equal(200, provenance.Draws);
        Assert.Equal("nursery file", provenance.Thresholds.Single(t => t.Name == "marginK").Source);
        Assert.Contains("Bulger", provenance.Thresholds.Single(t => t.Name == "temperatureLowC").Source, StringComparison.Ordinal);
        Assert.Equal("common practice, no source", provenance.Thresholds.Single(t => t.Name == "dryingHours").Source);
        Assert.All(provenance.Methods, m => Assert.True(m.Source.Length > 0 && m.Error.Length > 0));
    }

    [Fact]
    public void Provenance_Files_AreThoseOfRunInAndPeriod()
    {
        Instant start = House.Input.Period.Start;
        ImportSheet Sheet(string file, double fromDays, double toDays)
            => new(file, "ab", "1", "climate", 10, 10, 0, 0, 0, start + Duration.FromDays(fromDays), start + Duration.FromDays(toDays), 0, 0);
        HouseInput input = House.Input with { Files = [Sheet("later", 7, 30), Sheet("this", -2, 3), Sheet("older", -30, -7.1), Sheet("before", -30, -7), Sheet("nothing", 0, 0) with { First = null, Last = null }] };
        Assert.Equal(["before", "nothing", "this"], ReviewPipeline.Run(input).Provenance.Files.Select(f => f.File));
    }

    [Fact]
    public void Fingerprint_AnythingLookedAt_ChangesIt()
    {
        HouseInput input = House.Input;
        ImportSheet sheet = new("f", "ab", "1", "climate", 10, 10, 0, 0, 0, input.Period.Start, input.Period.End, 0, 0);
        double[] values = [.. input.Batches[0].Columns["airTemperature"]];
        values[77] += 1e-9;
        HouseInput[] others =
        [
            input with { Period = new Interval(input.Period.Start, input.Period.End - Duration.FromHours(1)) },
            input with { RunIn = new Interval(input.RunIn.Start + Duration.FromHours(1), input.RunIn.End) },
            input with { Records = [] },
            input with { Records = [input.Records[0] with { Fields = input.Records[0].Fields.SetItem("minutes", "41") }] },
            input with { Batches = [input.Batches[0] with { Columns = input.Batches[0].Columns.SetItem("airTemperature", values) }] },
            input with { Batches = [input.Batches[0] with { StepSeconds = 301 }] },
            input with { Files = [sheet] },
            input with { Files = [sheet with { SetAside = 1 }] },
            input with { Nursery = input.Nursery with { LatitudeDeg = 53.3 } },
            input with { Nursery = input.Nursery with { ContentHash = "1" } },
            House.WithRules(new RiskRules(DryingHours: 5)).Input,
            House.WithAccuracy("relativeHumidity", 2).Input,
            House.WithWateringLog().Input,
        ];
        string[] prints = [.. others.Append(input).Select(InputFingerprint.Of)];
        Assert.Equal(prints.Length, prints.Distinct().Count());
        Assert.All(prints, p => Assert.Equal(64, p.Length));
    }

    [Fact]
    public void Fingerprint_EqualInputMadeAnew_IsEqualAndInTheReview()
    {
        SyntheticHouse again = SyntheticHouse.Week("2025-W42").WithAir(SyntheticHouse.ChangingAir)
            .WithWatering(new LocalDateTime(2025, 10, 13, 15, 30), ("minutes", "40"), ("method", "boom"));
        Assert.Equal(InputFingerprint.Of(House.Input), InputFingerprint.Of(again.Input));
        Assert.Equal(InputFingerprint.Of(House.Input), ReviewPipeline.Run(again.Input).Provenance.InputHash);
        Assert.Equal(Bytes(ReviewPipeline.Run(House.Input)), Bytes(ReviewPipeline.Run(again.Input)));
    }

    [Fact]
    public void Run_UnrelatedColumn_ChangesNoRiskHour()
    {
        Review plain = ReviewPipeline.Run(House.Input);
        foreach (string channel in (string[])["carbonDioxide", "ventPosition", "mediumTemperature"])
        {
            Review with = ReviewPipeline.Run(House.WithColumn("other", channel, t => 50 + (t.ToUnixTimeSeconds() / 300 % 7), stepMinutes: 1).Input);
            Assert.Equal(plain.Hours.AsEnumerable(), with.Hours.AsEnumerable());
            Assert.Equal(plain.RiskHours, with.RiskHours);
        }
    }

    [Fact]
    public void Run_DamperAir_NeverHasFewerRiskHours()
        => Gen.Select(Gen.Double[-12, 2], Gen.Double[0, 6], Gen.Double[8, 22]).Sample(
            (shift, more, temperature) =>
            {
                Review drier = ReviewPipeline.Run(Shifted(shift, temperature));
                Review damper = ReviewPipeline.Run(Shifted(shift + more, temperature));
                Assert.True(drier.RiskHours!.Value <= damper.RiskHours!.Value);
                Assert.True(drier.RiskHours.Value <= drier.Coverage.HoursWithData);
                Assert.True(drier.RiskHours.High <= drier.Coverage.HoursWithData);
                Assert.All(drier.Hours.Zip(damper.Hours), p => Assert.True(p.First.RiskProbability <= p.Second.RiskProbability, $"{shift} {more} {temperature} {p.First} {p.Second}"));
            },
            iter: 12);

    private static HouseInput Shifted(double humidityPct, double temperatureC)
        => SyntheticHouse.Week("2025-W42", stepMinutes: 15, runInDays: 2).WithAir(t =>
        {
            Air air = SyntheticHouse.AutumnAir(t);
            return new Air(air.TemperatureC - 15 + temperatureC, Math.Min(100, air.RelativeHumidityPct + humidityPct));
        }).Input;

    private static byte[] Bytes(Review review) => System.Text.Json.JsonSerializer.SerializeToUtf8Bytes(review with { Period = review.Period with { From = default, To = default } });
}
