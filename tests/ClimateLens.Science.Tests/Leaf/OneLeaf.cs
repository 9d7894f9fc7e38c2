using System.Runtime.Intrinsics;
using ClimateLens.Science.Leaf;

namespace ClimateLens.Science.Tests.Leaf;

/// <summary>The balance of one leaf by the code for four, the other three in other weather.</summary>
internal readonly struct OneLeaf(double airC, double humidityPct, double absorbedWm2, double aboveC, double airSpeedMs, double openShare, LeafConstants constants)
{
    private readonly LeafKernel _four = new(
        Among(airC, 21, -4), Among(humidityPct, 95, 30), Among(absorbedWm2, 0, 300), Among(aboveC, 12, -20), Among(airSpeedMs, 0.2, 0.05), Among(openShare, 1, 0.3), constants);

    public double OffsetK(bool wet, double surfaceMs, double guessK) => _four.OffsetK(Vector256<double>.AllBitsSet, Mask(wet), Among(surfaceMs, 0.01, 0.001), Among(guessK, 1, -3))[1];

    public double GainWm2(bool wet, double surfaceMs, double offsetK) => _four.GainWm2(Mask(wet), Among(surfaceMs, 0.01, 0.001), Among(offsetK, 1, -3))[1];

    public double WetLatentWm2(double offsetK) => _four.WetLatentWm2(Among(offsetK, 1, -3))[1];

    private static Vector256<double> Among(double it, double left, double right) => Vector256.Create(left, it, right, left);

    private static Vector256<double> Mask(bool wet) => wet ? Vector256<double>.AllBitsSet : Vector256<double>.Zero;
}
