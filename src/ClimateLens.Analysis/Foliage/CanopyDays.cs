using ClimateLens.Analysis.Crops;
using ClimateLens.Analysis.Uncertainty;
using ClimateLens.Nursery.Settings;
using ClimateLens.Science.Canopy;
using ClimateLens.Science.Leaf;

namespace ClimateLens.Analysis.Foliage;

/// <summary>What a closing canopy does to the air among its leaves, day by day, under one draw: the assumptions of <see cref="InCanopyAir"/> and <see cref="CanopyShelter"/>.</summary>
internal sealed class CanopyDays
{
    /// <summary>Air speed at a leaf above or outside the canopy: under glass without fans 0.05 to 0.3, from memory. [m/s]</summary>
    public const double OpenAirSpeedMs = 0.1;

    private static readonly Science.Quantities.Celsius UsualAir = new(18); // under glass at night; by 5 K more or less the shift changes by 5 %
    private static readonly Science.Quantities.KelvinDifference UsualOffset = new(-0.5);

    private readonly CoverCourse _cover;
    private readonly InCanopyAir _air;

    public CanopyDays(CoverCourse cover, RiskRules rules)
    {
        _cover = cover;
        _air = AssumedCanopyAir.Of(rules);
        (TemperatureK, HumidityPct, AirSpeedMs, AbovePerLeafK) = (new double[cover.Days.Length], new double[cover.Days.Length], new double[cover.Days.Length], new double[cover.Days.Length]);
    }

    /// <summary>Temperature among the leaves less main sensor by day. [K]</summary>
    public double[] TemperatureK { get; }

    /// <summary>Relative humidity among the leaves less main sensor by day. [points of %]</summary>
    public double[] HumidityPct { get; }

    /// <summary>Air speed at the leaf by day. [m/s]</summary>
    public double[] AirSpeedMs { get; }

    /// <summary>Radiating temperature above for every kelvin of a dry leaf, by day. [1]</summary>
    public double[] AbovePerLeafK { get; }

    /// <summary>Works the days out under the errors of a draw.</summary>
    public void Under(in FoliageErrors errors)
    {
        for (int day = 0; day < TemperatureK.Length; day++)
        {
            double cover = _cover.At(day, errors.CoverQuantile);
            CanopyAirOffset offset = _air.At(cover);
            TemperatureK[day] = offset.TemperatureK + (errors.CanopyTemperatureScore * offset.TemperatureErrorK);
            HumidityPct[day] = offset.HumidityPct + (errors.CanopyHumidityScore * offset.HumidityErrorPct);
            AirSpeedMs[day] = OpenAirSpeedMs * errors.AirSpeedFactor * CanopyShelter.AirSpeedShare(cover);
            AbovePerLeafK[day] = RadiatingForOffset.PerLeafK(UsualAir, UsualOffset, new(AirSpeedMs[day]), MeanLeaf.OpenShare(LightInterception.LeafArea(cover)), LeafTraits.PotPlant);
        }
    }
}
