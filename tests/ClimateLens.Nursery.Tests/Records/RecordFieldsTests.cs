using ClimateLens.Nursery.Channels;
using ClimateLens.Nursery.Records;

namespace ClimateLens.Nursery.Tests.Records;

public class RecordFieldsTests
{
    public static TheoryData<string> Kinds => [.. Enum.GetNames<RecordKind>()];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Kind_EveryOne_HasTheSharedFieldsAndOnesOfItsOwn(string name)
    {
        RecordKind kind = Enum.Parse<RecordKind>(name);
        string[] fields = [.. RecordFields.Of(kind).Select(f => f.Name)];
        Assert.Equal(["house", "bench", "note", "operator"], fields[^4..]);
        Assert.True(fields.Length > 4);
        Assert.Equal(fields.Length, fields.Distinct().Count());
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Field_EveryOne_IsFoundByItsNameAndKeepsItsRules(string name)
    {
        RecordKind kind = Enum.Parse<RecordKind>(name);
        foreach (RecordField field in RecordFields.Of(kind))
        {
            Assert.True(RecordFields.TryGet(kind, field.Name, out RecordField? found));
            Assert.Same(field, found);
            Assert.True(field.Quantity is null || field.Type == RecordFieldType.Number, field.Name);
            Assert.True(field.DefaultUnit is null || UnitCatalogue.TryGet(field.Quantity!.Value, field.DefaultUnit, out _), field.Name);
        }
    }

    [Theory]
    [InlineData(RecordKind.Waterings, "minutes", RecordFieldType.Number, Quantity.Duration)]
    [InlineData(RecordKind.Waterings, "end", RecordFieldType.Time, null)]
    [InlineData(RecordKind.Waterings, "method", RecordFieldType.Method, null)]
    [InlineData(RecordKind.PotChecks, "level", RecordFieldType.Level, null)]
    [InlineData(RecordKind.PotChecks, "weight", RecordFieldType.Number, Quantity.Mass)]
    [InlineData(RecordKind.PlantWidths, "width", RecordFieldType.Number, Quantity.Length)]
    [InlineData(RecordKind.Treatments, "reentryUntil", RecordFieldType.Time, null)]
    [InlineData(RecordKind.Treatments, "rate", RecordFieldType.Number, null)]
    [InlineData(RecordKind.Scouting, "count", RecordFieldType.Number, null)]
    public void Field_ByKind_HasItsType(RecordKind kind, string name, RecordFieldType type, Quantity? quantity)
    {
        Assert.True(RecordFields.TryGet(kind, name, out RecordField? field));
        Assert.Equal((type, quantity), (field.Type, field.Quantity));
    }

    [Fact]
    public void Field_OfAnotherKind_IsNotFound() => Assert.False(RecordFields.TryGet(RecordKind.Floors, "litres", out _));

    [Fact]
    public void Methods_Words_AreThoseOfTheFile()
        => Assert.Equal(["overheadBoom", "sprinkler", "hose", "drip", "ebbAndFlow", "floodFloor", "fog"], WateringMethods.Words);

    [Fact]
    public void Kinds_Words_AreThoseOfTheFile()
        => Assert.Equal(["waterings", "potChecks", "plantWidths", "treatments", "floors", "tanks", "scouting"], RecordKinds.Words);

    [Fact]
    public void Words_EveryOne_ComesBack()
    {
        Assert.All(Enum.GetValues<WateringMethod>(), m => Assert.True(WateringMethods.TryParse(WateringMethods.WordOf(m), out WateringMethod read) && read == m));
        Assert.All(Enum.GetValues<RecordKind>(), k => Assert.True(RecordKinds.TryParse(RecordKinds.WordOf(k), out RecordKind read) && read == k));
        Assert.False(RecordKinds.TryParse("Waterings", out _));
    }

    [Theory]
    [InlineData(WateringMethod.OverheadBoom, "boom", "overhead boom", "BOOM", "overhead", "Overhead-Boom")]
    [InlineData(WateringMethod.Sprinkler, "sprinkler", "Sprinklers")]
    [InlineData(WateringMethod.Hose, "hand", "by hand", "hand watering", "Hand-watering", "hose")]
    [InlineData(WateringMethod.Drip, "Drip", "dripper", "drippers", "drip line", "drip-line", "emitter", "emitters")]
    [InlineData(WateringMethod.EbbAndFlow, "ebb and flow", "ebb & flow", "ebb/flow", "Ebb-and-Flow", "flood bench")]
    [InlineData(WateringMethod.FloodFloor, "flood floor", "flooded floor")]
    [InlineData(WateringMethod.Fog, "fog", "fogging", "mist", " Misting ")]
    public void Methods_EverydayWords_AreRead(WateringMethod expected, params string[] words)
        => Assert.All(words, word => Assert.Equal((true, expected), (WateringMethods.TryParse(word, out WateringMethod read), read)));

    [Theory]
    [InlineData("")]
    [InlineData("bucket chain")]
    [InlineData("no drip")]
    [InlineData("drip?")]
    public void Methods_OtherWords_AreNotKnown(string word) => Assert.False(WateringMethods.TryParse(word, out _));
}
