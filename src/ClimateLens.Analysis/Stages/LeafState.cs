using System.Collections.Immutable;
using ClimateLens.Nursery.Time;

namespace ClimateLens.Analysis.Stages;

/// <summary>
/// Fourth stage: how warm the leaves are. Measured where a leaf sensor works; elsewhere the air temperature, less a stated
/// offset between sunset and sunrise when leaves lose heat to a colder cover. The offset is an assumption, and named as one.
/// </summary>
public static class LeafState
{
    /// <summary>Adds night, measured and assumed leaf temperature to a house period.</summary>
    public static HousePeriod Add(HousePeriod period)
    {
        TimeAxis axis = period.Frame.Axis;
        ImmutableArray<double> air = period.Frame.Values(Derived.TemperatureC);
        double offset = period.Input.House.Rules.LeafNightOffsetK;
        double[] night = new double[axis.Count], assumed = new double[axis.Count];
        for (int i = 0; i < axis.Count; i++)
        {
            night[i] = period.Sun.IsNight(axis.StartOf(i) + (axis.Step / 2)) ? 1 : 0;
            assumed[i] = air[i] - (night[i] * offset);
        }

        Frame frame = AirStates.With(period.Frame, Derived.Night, night);
        frame = AirStates.With(frame, Derived.LeafAssumedC, assumed);
        double[] measured = period.Leaf is Series leaf ? Quality.Used(period.Frame, leaf.Key) : Enumerable.Repeat(double.NaN, axis.Count).ToArray();
        frame = AirStates.With(frame, Derived.LeafMeasuredC, measured);
        return period with { Frame = frame };
    }
}
