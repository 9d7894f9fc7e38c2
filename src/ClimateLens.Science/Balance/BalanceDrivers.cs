using ClimateLens.Science.Psychrometrics;
using ClimateLens.Science.Quantities;

namespace ClimateLens.Science.Balance;

/// <summary>Drivers of one step, all known.</summary>
internal readonly record struct StepDrivers(
    double SaturatedGm3, double OutsideGm3, double SunWm2, double Cover, double Vent, double WindMs, double Fan, double CoverGm3, double LeafWetted, double FloorWetted);

/// <summary>Inputs made ready for many runs: saturation worked out, columns that are not used filled with what changes nothing.</summary>
internal sealed class BalanceDrivers
{
    /// <summary>A column known in less than this share of the steps with humidity is left out: a choice of this project.</summary>
    private const double LeastKnown = 0.8;

    private readonly StepDrivers[] _steps;
    private readonly bool[] _known;

    private BalanceDrivers(BalanceInputs inputs, BalanceTerms terms)
    {
        Inputs = inputs;
        Terms = terms;
        _steps = new StepDrivers[inputs.Steps];
        _known = new bool[inputs.Steps];
        for (int i = 0; i < _steps.Length; i++)
        {
            StepDrivers step = At(inputs, terms, i);
            _steps[i] = step;
            _known[i] = double.IsFinite(step.SaturatedGm3 + step.OutsideGm3 + step.SunWm2 + step.Cover + step.Vent + step.WindMs + step.Fan)
                && !double.IsNaN(step.CoverGm3 + step.LeafWetted + step.FloorWetted);
        }
    }

    public BalanceInputs Inputs { get; }

    public BalanceTerms Terms { get; }

    public ReadOnlySpan<StepDrivers> Steps => _steps;

    /// <summary>Whether all drivers of a step are known.</summary>
    public bool IsKnown(int step) => _known[step];

    /// <summary>Drivers for a fit, which finds out what can be used.</summary>
    public static BalanceDrivers ForFit(BalanceInputs inputs) => new(inputs, new BalanceTerms(
        Logged(inputs, inputs.SunWm2), Logged(inputs, inputs.Cover), Logged(inputs, inputs.Vent), Logged(inputs, inputs.WindMs), Logged(inputs, inputs.Fan),
        Logged(inputs, inputs.CoverC), Any(inputs.LeafWetted), Any(inputs.FloorWetted)));

    /// <summary>Drivers for a run with a fit's terms; what a term needs and is not known makes a gap.</summary>
    public static BalanceDrivers ForRun(BalanceInputs inputs, BalanceTerms terms) => new(inputs, terms);

    private static bool Logged(BalanceInputs inputs, ReadOnlyMemory<double> column)
    {
        int of = 0, known = 0;
        for (int i = 0; i < column.Length; i++)
        {
            bool measured = double.IsFinite(inputs.HumidityGm3.Span[i]);
            of += measured ? 1 : 0;
            known += measured && double.IsFinite(column.Span[i]) ? 1 : 0;
        }

        return of > 0 && known >= LeastKnown * of;
    }

    private static bool Any(ReadOnlyMemory<double> column)
    {
        foreach (double value in column.Span)
        {
            if (value > 0)
            {
                return true;
            }
        }

        return false;
    }

    private static StepDrivers At(BalanceInputs inputs, BalanceTerms terms, int i) => new(
        Saturated(inputs.AirC.Span[i]),
        inputs.OutsideGm3.Span[i],
        terms.Sun ? Value(inputs.SunWm2, i) : 0,
        terms.Cover ? Value(inputs.Cover, i) : 1,
        terms.Vent ? Value(inputs.Vent, i) : 0,
        terms.Wind ? Value(inputs.WindMs, i) : 0,
        terms.Fan ? Value(inputs.Fan, i) : 0,
        terms.CoverTemperature ? Saturated(Value(inputs.CoverC, i)) : double.PositiveInfinity,
        inputs.LeafWetted.IsEmpty ? 0 : inputs.LeafWetted.Span[i],
        inputs.FloorWetted.IsEmpty ? 0 : inputs.FloorWetted.Span[i]);

    private static double Value(ReadOnlyMemory<double> column, int i) => column.IsEmpty ? double.NaN : column.Span[i];

    private static double Saturated(double celsius) => celsius is >= -40 and <= 70
        ? VapourDensity.FromVapourPressure(new Celsius(celsius), new KiloPascal(MagnusForm.Buck1981Water.VapourPressureKPa(celsius))).Value
        : double.NaN;
}
