using ClimateLens.Science.Leaf;
using ClimateLens.Science.Quantities;

namespace ClimateLens.Science.Tests.Leaf;

public sealed class RadiatingForOffsetTests
{
    [Theory]
    [InlineData(18, -2.42, 0.1, 8)] // computed night offsets of a leaf 6 cm wide under a cover of 8 °C (night_leaf_offset_table.json)
    [InlineData(18, -1.79, 0.3, 8)]
    [InlineData(18, -0.75, 0.1, 15)]
    [InlineData(18, -3.53, 0.1, 3)]
    [InlineData(18, 0, 0.1, 18)]
    public void Above_OffsetOfTheTable_IsItsCover(double airC, double offsetK, double speedMs, double coverC)
        => Assert.Equal(coverC, RadiatingForOffset.Above(new(airC), new(offsetK), new(speedMs), LeafTraits.PotPlant).Value, 0.1);

    [Theory]
    [InlineData(12, -1)]
    [InlineData(25, -0.3)]
    [InlineData(20, 0.8)]
    public void Above_PutBackIntoTheBalance_GivesTheOffset(double airC, double offsetK)
    {
        Celsius above = RadiatingForOffset.Above(new(airC), new(offsetK), new(0.1), LeafTraits.PotPlant);
        LeafSurroundings around = new(new(airC), new(50), 0, above, new(airC), 0.1);
        Assert.Equal(offsetK, LeafBalance.Solve(around, LeafTraits.PotPlant, new(double.PositiveInfinity)).Offset.Value, 1e-3);
    }

    [Fact]
    public void Above_ImpossibleOffset_IsRefused()
        => Assert.Throws<ArgumentOutOfRangeException>(() => RadiatingForOffset.Above(new(18), new(11), new(0.1), LeafTraits.PotPlant));
}
