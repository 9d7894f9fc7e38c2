using ClimateLens.Science.Canopy;
using ClimateLens.Science.Statistics;
using CsCheck;

namespace ClimateLens.Science.Tests.Canopy;

/// <summary>What holds for every spacing, and cover against points thrown at random.</summary>
public class GroundCoverTests
{
    private static readonly Gen<PlantSpacing> Any = Gen.Select(Gen.Int[0, 3], Gen.Double[5, 60], Gen.Double[5, 60]).Select((kind, a, b) => kind switch
    {
        0 => PlantSpacing.Square(a),
        1 => PlantSpacing.Triangular(a),
        2 => PlantSpacing.Rectangular(a, b),
        _ => PlantSpacing.Random(10_000 / (a * b)),
    });

    [Fact]
    public void Of_WiderPlants_NeverCoverLess() => Gen.Select(Any, Gen.Double[0, 150], Gen.Double[0, 20]).Sample((spacing, width, wider) =>
        GroundCover.Of(spacing, width + wider) >= GroundCover.Of(spacing, width) - 1e-8 && GroundCover.Of(spacing, width) is >= 0 and <= 1);

    [Fact]
    public void Of_PlantsThatDoNotTouch_IsTheirDiscs() => Gen.Select(Any, Gen.Double[0, 1]).Sample((spacing, share) =>
    {
        double width = share * Math.Min(spacing.AcrossCm, spacing.AlongCm);
        double discs = spacing.PlantsPerM2 * Math.PI * width * width / 40_000;
        double cover = GroundCover.Of(spacing, width);
        return spacing.Pattern == SpacingPattern.Random ? cover <= discs + 1e-12 : Math.Abs(cover - discs) < 1e-9;
    });

    [Fact]
    public void DiameterCm_AnyCover_LeadsBackToIt() => Gen.Select(Any, Gen.Double[0.01, 0.999]).Sample((spacing, cover) =>
        Math.Abs(GroundCover.Of(spacing, GroundCover.DiameterCm(spacing, cover)) - cover) < 1e-6);

    /// <summary>Rectangles as narrow as one to eight, where discs of several rows meet, against 200,000 points thrown at random.</summary>
    [Theory]
    [InlineData(10, 80, 45)]
    [InlineData(10, 30, 28)]
    [InlineData(20, 25, 24)]
    [InlineData(15, 15, 19)]
    public void Of_Rectangle_IsTheShareOfPointsHit(double across, double along, double width)
    {
        var random = new SeededRandom(17);
        int hits = 0;
        const int points = 200_000;
        for (int i = 0; i < points; i++)
        {
            hits += Hit(random.NextUniform(0, across), random.NextUniform(0, along), across, along, width / 2) ? 1 : 0;
        }

        double share = (double)hits / points; // standard error at most 0.0011
        Assert.Equal(share, GroundCover.Of(PlantSpacing.Rectangular(across, along), width), 0.005);
    }

    [Fact]
    public void AbsorbedByLeaf_AllLeaves_TakeNoMoreThanFalls() => Gen.Select(Gen.Double[0, 1000], Gen.Double[0.1, 2], Gen.Double[0, 10])
        .Sample((light, k, leaves) => LightInterception.AbsorbedByLeaf(new(light), k, leaves, 1).Value * leaves <= light + 1e-9);

    [Fact]
    public void AirSpeedShare_MoreCover_IsNeverMore() => Gen.Select(Gen.Double[0, 1], Gen.Double[0, 1]).Sample((a, b) =>
        CanopyShelter.AirSpeedShare(Math.Max(a, b)) <= CanopyShelter.AirSpeedShare(Math.Min(a, b))
        && CanopyShelter.AirSpeedShare(a) is >= CanopyShelter.ClosedAirShare and <= 1);

    private static bool Hit(double x, double y, double across, double along, double radius)
    {
        for (int i = -6; i <= 7; i++)
        {
            for (int j = -6; j <= 7; j++)
            {
                double dx = x - (i * across), dy = y - (j * along);
                if ((dx * dx) + (dy * dy) <= radius * radius)
                {
                    return true;
                }
            }
        }

        return false;
    }
}
