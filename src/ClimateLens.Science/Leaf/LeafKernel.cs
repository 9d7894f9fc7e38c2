using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using ClimateLens.Science.Psychrometrics;

namespace ClimateLens.Science.Leaf;

/// <summary>The balance of four leaves at once, for whole columns: one exponential a moment, the saturation curve as a cubic about the air.</summary>
/// <remarks>
/// Agrees with <see cref="LeafBalance.Solve"/> to 0.01 K where the leaf is within 6 K of the air, to 0.05 K within 10 K (LeafKernelTests).
/// Below 0.03 m/s a wet leaf in sun may have two balances; one near the guess is found. No allocation. All conductances are of both sides of a leaf area.
/// What chooses leaves (wet, wanted) is a mask: all bits of a lane set or none.
/// </remarks>
internal readonly struct LeafKernel
{
    private const int MostRounds = 20;
    private const double WidestSearchK = 60;
    private const double CloseEnoughK = 1e-3; // Newton's next step would be below 1e-6, but for the kink where leaf and air are alike

    private readonly Vector256<double> _es, _slope, _half2, _sixth3; // of the saturation curve at the air's temperature
    private readonly Vector256<double> _vapourPressureKPa, _kelvin, _seen, _longWave;
    private readonly Vector256<double> _forced;
    private readonly Vector256<double> _heat; // [W/(m² K)] with the fourth root of the mixing term taken out
    private readonly Vector256<double> _vapour; // [W/(m² kPa)] likewise
    private readonly Vector256<double> _surface; // [W m⁻² kPa⁻¹ (s/m)] turns a surface's conductance into one of latent heat
    private readonly double _widthM;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public LeafKernel(
        Vector256<double> airC, Vector256<double> humidityPct, Vector256<double> absorbedWm2, Vector256<double> aboveC, Vector256<double> airSpeedMs,
        Vector256<double> openShare, in LeafConstants constants)
    {
        MagnusForm form = MagnusForm.Buck1981Water;
        Vector256<double> perDown = Vector256<double>.One / (Vector256.Create(form.CDegC) + airC);
        _es = form.AKPa * Lanes.Exp(form.B * airC * perDown);
        Vector256<double> rate = form.B * form.CDegC * perDown * perDown;
        Vector256<double> bend = rate - (2 * perDown);
        _slope = _es * rate;
        Vector256<double> second = _slope * bend;
        _half2 = second / 2;
        _sixth3 = ((second * bend) + (_slope * 2 * perDown * (perDown - rate))) / 6;
        _vapourPressureKPa = _es * humidityPct / 100;
        LatentHeatJKg = Lanes.Map<Latent>(airC);
        _kelvin = airC + Vector256.Create(Limits.ZeroCelsiusK);
        Vector256<double> volumetric = Vector256.Create(constants.HeatTimesKelvin) / _kelvin; // ρ cp
        _heat = 2 * volumetric * constants.PerBoundary;
        _surface = 2 * volumetric * LatentHeatJKg * constants.PerGammaTimesLatent;
        _vapour = _surface * constants.PerBoundary / StanghelliniResistance.VapourToHeat;
        _longWave = openShare * constants.LongWave;
        _seen = absorbedWm2 + (_longWave * (Fourth(aboveC + Vector256.Create(Limits.ZeroCelsiusK)) + Fourth(_kelvin)));
        _widthM = constants.WidthM;
        _forced = Vector256.MaxNative(StanghelliniResistance.SpeedCoefficient * airSpeedMs * airSpeedMs, Vector256.Create(1e-6));
        _forced = Vector256.ConditionalSelect(Lanes.Known(airSpeedMs), _forced, airSpeedMs); // not known stays so
    }

    /// <summary>Latent heat at the air's temperature. [J/kg]</summary>
    public Vector256<double> LatentHeatJKg { get; }

    /// <summary>Vapour-pressure deficit of the air. [kPa]</summary>
    public Vector256<double> AirDeficitKPa => _es - _vapourPressureKPa;

    /// <summary>Where the weather is known.</summary>
    public Vector256<double> Known => Lanes.Known(_vapourPressureKPa + _seen + _forced);

    /// <summary>Leaf minus air in balance, by Newton's method, by bisection where that does not settle. [K]</summary>
    /// <param name="wanted">For which leaves; the others keep the guess.</param>
    /// <param name="wet">Whether water lies on the leaf, so that no surface resistance stands in the way.</param>
    /// <param name="surfaceMs">Conductance of one side's surface when dry. [m/s]</param>
    /// <param name="guessK">Where to start.</param>
    public Vector256<double> OffsetK(Vector256<double> wanted, Vector256<double> wet, Vector256<double> surfaceMs, Vector256<double> guessK)
    {
        Vector256<double> x = guessK, still = wanted;
        for (int round = 0; round < MostRounds; round++)
        {
            Vector256<double> step = Gain(wet, surfaceMs, x, out Vector256<double> slope) / slope;
            Vector256<double> next = Vector256.MinNative(Vector256.MaxNative(x + step, Vector256.Create(-WidestSearchK)), Vector256.Create(WidestSearchK));
            x = Vector256.ConditionalSelect(still, next, x);
            still &= ~Vector256.LessThan(Vector256.Abs(step), Vector256.Create(CloseEnoughK));
            if (!Lanes.Any(still))
            {
                return x;
            }
        }

        return Vector256.ConditionalSelect(still, Bisected(wet, surfaceMs), x);
    }

    /// <summary>Energy gained less energy given off at a difference to the air. [W/m²]</summary>
    public Vector256<double> GainWm2(Vector256<double> wet, Vector256<double> surfaceMs, Vector256<double> offsetK) => Gain(wet, surfaceMs, offsetK, out _);

    /// <summary>Heat that a wet or dewy leaf gives off as vapour by both sides; negative where dew forms. [W/m²]</summary>
    public Vector256<double> WetLatentWm2(Vector256<double> offsetK) =>
        _vapour * Vector256.Sqrt(Vector256.Sqrt((_widthM * Vector256.Abs(offsetK)) + _forced)) * DeficitKPa(offsetK);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private Vector256<double> Gain(Vector256<double> wet, Vector256<double> surfaceMs, Vector256<double> x, out Vector256<double> slope)
    {
        Vector256<double> mixing = (_widthM * Vector256.Abs(x)) + _forced;
        Vector256<double> root = Vector256.Sqrt(Vector256.Sqrt(mixing));
        Vector256<double> bend = Vector256.CopySign(Vector256.Create(0.25 * _widthM), x) / mixing; // d ln(root)/dx
        Vector256<double> deficit = DeficitKPa(x);
        Vector256<double> heat = _heat * root;
        Vector256<double> vapour = _vapour * root;
        Vector256<double> skin = _surface * surfaceMs;
        Vector256<double> share = Vector256.ConditionalSelect(
            Vector256.GreaterThan(deficit, Vector256<double>.Zero) & ~wet, skin / (vapour + skin), Vector256<double>.One);
        vapour *= share;
        Vector256<double> leafK = _kelvin + x;
        Vector256<double> cubed = _longWave * leafK * leafK * leafK;
        slope = (8 * cubed) + (heat * (Vector256<double>.One + (x * bend))) + (vapour * (Slope(x) + (deficit * (bend * share))));
        return _seen - (2 * cubed * leafK) - (heat * x) - (vapour * deficit);
    }

    private Vector256<double> Bisected(Vector256<double> wet, Vector256<double> surfaceMs)
    {
        Vector256<double> low = Vector256.Create(-WidestSearchK), high = Vector256.Create(WidestSearchK);
        for (double width = 2 * WidestSearchK; width > 1e-6; width /= 2)
        {
            Vector256<double> middle = (low + high) / 2;
            Vector256<double> colder = Vector256.GreaterThan(GainWm2(wet, surfaceMs, middle), Vector256<double>.Zero);
            (low, high) = (Vector256.ConditionalSelect(colder, middle, low), Vector256.ConditionalSelect(colder, high, middle));
        }

        return (low + high) / 2;
    }

    private Vector256<double> DeficitKPa(Vector256<double> x) => _es + (x * (_slope + (x * (_half2 + (x * _sixth3))))) - _vapourPressureKPa;

    private Vector256<double> Slope(Vector256<double> x) => _slope + (x * ((2 * _half2) + (3 * x * _sixth3)));

    private static Vector256<double> Fourth(Vector256<double> kelvin) => kelvin * kelvin * (kelvin * kelvin);

    private readonly struct Latent : Lanes.IScalar
    {
        public static double Of(double x) => LeafAir.LatentHeat(x);
    }
}
