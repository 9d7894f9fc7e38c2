namespace ClimateLens.Nursery.Channels.Changes;

/// <summary>
/// What a change of unit does to the values of a channel, as the file's settings read them: <c>after = Slope · before + Offset</c>.
/// </summary>
/// <param name="Unit">The other unit.</param>
/// <param name="IsAfter">Whether the values after the change are in the other unit, rather than those before it.</param>
/// <param name="Slope">Slope. [1]</param>
/// <param name="Offset">Offset. [SI unit of the channel]</param>
/// <param name="IsScale">Whether a ratio tells it, rather than a difference.</param>
internal sealed record UnitCandidate(Unit Unit, bool IsAfter, double Slope, double Offset, bool IsScale)
{
    /// <summary>
    /// The changes that can be told from what houses and weather do by themselves. Light rises and falls several times over from one
    /// week to the next, wind as well: there a factor of a hundred is the least that says something. Pipes and positions follow the
    /// control and are not looked at. Choice of this project, no source.
    /// </summary>
    public static IReadOnlyList<UnitCandidate> For(Channel channel, Unit declared)
    {
        double least = LeastRatio(channel);
        List<UnitCandidate> candidates = [];
        foreach (Unit other in UnitCatalogue.KindsOf(channel.Quantity).Where(u => !u.IsLike(declared)))
        {
            // Read as declared, a true value x comes out of the other unit as g(x) = Slope · x + Offset.
            double slope = declared.Factor / other.Factor;
            double offset = declared.ToSi(other.FromSi(0));
            bool scale = channel.Quantity != Quantity.Temperature;
            if (!scale || Math.Max(slope, 1 / slope) >= least)
            {
                candidates.Add(new UnitCandidate(other, true, slope, offset, scale));
                candidates.Add(new UnitCandidate(other, false, 1 / slope, -offset / slope, scale));
            }
        }

        return double.IsNaN(least) ? [] : candidates;
    }

    /// <summary>What a value before the change would be after it.</summary>
    public double Of(double before) => (Slope * before) + Offset;

    /// <summary>Smallest ratio that is told; NaN: the channel is not looked at.</summary>
    private static double LeastRatio(Channel channel) => channel.Quantity switch
    {
        Quantity.Temperature when channel.Name != "heatingPipeTemperature" => 1,
        Quantity.RelativeHumidity => 5,
        Quantity.Percent when channel.Gridding == Gridding.Smooth => 50,
        Quantity.Pressure when channel.Name == "airPressure" => 1.3,
        Quantity.Pressure or Quantity.VapourDensity or Quantity.CarbonDioxide => 5,
        Quantity.Illuminance or Quantity.Irradiance => 100,
        _ => double.NaN,
    };
}
