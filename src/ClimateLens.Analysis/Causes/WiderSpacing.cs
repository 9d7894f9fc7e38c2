using ClimateLens.Analysis.Crops;
using ClimateLens.Nursery;
using ClimateLens.Nursery.Settings;

namespace ClimateLens.Analysis.Causes;

/// <summary>The standing crop one spacing wider: every distance a quarter wider, so that four plants stand where six stood (1.25² is 1.56). A choice of this project, no source.</summary>
internal static class WiderSpacing
{
    /// <summary>Factor on each distance. [1]</summary>
    public const double Factor = 1.25;

    /// <summary>The input with wider distances; unchanged where no crop stands or its spacing is not known.</summary>
    public static HouseInput Of(HouseInput input)
        => StandingCrop.Of(input) is not { Spacing.Length: > 0 } crop ? input
            : input with { House = input.House with { Crops = [.. input.House.Crops.Select(c => ReferenceEquals(c, crop) ? Wider(c) : c)] } };

    private static CropSettings Wider(CropSettings crop)
        => crop with { Spacing = [.. crop.Spacing.Select(s => s with { DistanceCm = s.DistanceCm * Factor, RowDistanceCm = s.RowDistanceCm * Factor })] };
}
