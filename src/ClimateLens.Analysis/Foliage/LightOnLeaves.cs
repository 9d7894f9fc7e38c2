using ClimateLens.Analysis.Crops;
using ClimateLens.Analysis.Stages;
using ClimateLens.Nursery.Languages;
using ClimateLens.Science.Canopy;

namespace ClimateLens.Analysis.Foliage;

/// <summary>Short-wave radiation that a leaf area absorbs: from radiation or light inside, else from the sun outside.</summary>
/// <remarks>
/// <para><b>Formula:</b> <see cref="LightInterception.AbsorbedByLeaf"/> of the radiation over the crop; that is the radiation inside, or
/// PPFD over 2.06 µmol/J (4.57 µmol/J of [THIMIJAN83], PAR 0.45 of global, from memory), or illuminance over 110 lm/W (daylight,
/// from memory), or 0.6 of the sun outside (clean single glass with its bars, common practice, no source), less four tenths of it under a
/// closed screen (common practice, no source).</para>
/// <para><b>Error:</b> 30 % by day; at night 0 and right, but for assimilation lamps seen by no sensor.</para>
/// </remarks>
internal static class LightOnLeaves
{
    /// <summary>Share of the sun outside that reaches the crop. [1]</summary>
    public const double ThroughRoof = 0.6;

    private const double MicromolPerJoule = 2.06;
    private const double LumenPerWatt = 110;
    private const double ScreenTakes = 0.4;

    /// <summary>Absorbed radiation and that over the crop by step; the first is 0 at night where nothing tells of it, both NaN by day. [W/m²]</summary>
    public static (double[] AbsorbedWm2, double[] OverCropWm2, FoliageBasis Basis) Of(HousePeriod period, CoverCourse cover, int[] day, double[] night, FoliageBasis basis)
    {
        (double[] overCrop, FoliageBasis told) = OverCrop(period, basis);
        double[] absorbed = new double[overCrop.Length];
        double[] leafArea = [.. Enumerable.Range(0, cover.Days.Length).Select(d => LightInterception.LeafArea(cover.Days[d].Value))];
        for (int i = 0; i < absorbed.Length; i++)
        {
            double light = double.IsNaN(overCrop[i]) && night[i] == 1 ? 0 : overCrop[i];
            absorbed[i] = light is >= 0 and <= 1500
                ? LightInterception.AbsorbedByLeaf(new(light), LightInterception.DefaultExtinction, leafArea[day[i]]).Value
                : double.NaN;
        }

        return (absorbed, overCrop, told);
    }

    private static (double[] Wm2, FoliageBasis Basis) OverCrop(HousePeriod period, FoliageBasis basis)
    {
        if (UsedSeries.Of(period, "insideRadiation") is double[] inside)
        {
            return (Scaled(inside, 1), basis.AndMeasured(Phrase.Of("Sun: radiation inside the house.")));
        }

        if (UsedSeries.Of(period, "ppfd") is double[] ppfd)
        {
            return (Scaled(ppfd, 1 / MicromolPerJoule), basis.AndMeasured(Phrase.Of("Sun: light at the crop.")));
        }

        if (UsedSeries.Of(period, "illuminance") is double[] lux)
        {
            return (Scaled(lux, 1 / LumenPerWatt), basis.AndMeasured(Phrase.Of("Sun: light intensity.")));
        }

        if (UsedSeries.Of(period, "globalRadiation") is double[] outside)
        {
            double[] screen = UsedSeries.Of(period, "screenPosition") ?? [];
            double[] inHouse = Scaled(outside, ThroughRoof);
            for (int i = 0; i < screen.Length; i++)
            {
                inHouse[i] *= double.IsNaN(screen[i]) ? 1 : 1 - (ScreenTakes * screen[i] / 100);
            }

            return (inHouse, basis.AndMeasured(Phrase.Of("Sun: radiation outside.")).AndAssumed(Phrase.Of("Six tenths of the sun outside reach the crop, four tenths less of it under a closed screen (common practice, no source).")));
        }

        double[] nothing = new double[period.Frame.Axis.Count];
        Array.Fill(nothing, double.NaN);
        return (nothing, basis);
    }

    private static double[] Scaled(double[] values, double factor) => [.. values.Select(v => Math.Max(0, v * factor))];
}
