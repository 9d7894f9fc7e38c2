using System.Runtime.CompilerServices;
using ClimateLens.Science.Psychrometrics;

namespace ClimateLens.Science.Leaf;

/// <summary>The leaf's balance for whole columns: one exponential a moment, the saturation curve as a cubic about the air.</summary>
/// <remarks>
/// Agrees with <see cref="LeafBalance.Solve"/> to 0.01 K where the leaf is within 6 K of the air, to 0.05 K within 10 K (LeafKernelTests).
/// Below 0.03 m/s a wet leaf in sun may have two balances; one near the guess is found. No allocation. All conductances are of both sides of a leaf area.
/// </remarks>
internal readonly ref struct LeafKernel
{
    private const int MostRounds = 20;
    private const double WidestSearchK = 60;
    private const double CloseEnoughK = 1e-3; // Newton's next step would be below 1e-6, but for the kink where leaf and air are alike

    private readonly double _es, _slope, _half2, _sixth3; // of the saturation curve at the air's temperature
    private readonly double _vapourPressureKPa, _kelvin, _seen, _longWave;
    private readonly double _widthM, _forced;
    private readonly double _heat; // [W/(m² K)] with the fourth root of the mixing term taken out
    private readonly double _vapour; // [W/(m² kPa)] likewise
    private readonly double _surface; // [W m⁻² kPa⁻¹ (s/m)] turns a surface's conductance into one of latent heat

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public LeafKernel(
        double airC, double humidityPct, double absorbedWm2, double aboveC, double airSpeedMs, double openShare, in LeafConstants constants)
    {
        MagnusForm form = MagnusForm.Buck1981Water;
        double perDown = 1 / (form.CDegC + airC);
        _es = form.AKPa * Math.Exp(form.B * airC * perDown);
        double rate = form.B * form.CDegC * perDown * perDown;
        double bend = rate - (2 * perDown);
        _slope = _es * rate;
        double second = _slope * bend;
        _half2 = second / 2;
        _sixth3 = ((second * bend) + (_slope * 2 * perDown * (perDown - rate))) / 6;
        _vapourPressureKPa = _es * humidityPct / 100;
        LatentHeatJKg = LeafAir.LatentHeat(airC);
        _kelvin = airC + Limits.ZeroCelsiusK;
        double volumetric = constants.HeatTimesKelvin / _kelvin; // ρ cp
        _heat = 2 * volumetric * constants.PerBoundary;
        _surface = 2 * volumetric * LatentHeatJKg * constants.PerGammaTimesLatent;
        _vapour = _surface * constants.PerBoundary / StanghelliniResistance.VapourToHeat;
        _longWave = openShare * constants.LongWave;
        _seen = absorbedWm2 + (_longWave * (Fourth(aboveC + Limits.ZeroCelsiusK) + Fourth(_kelvin)));
        _widthM = constants.WidthM;
        _forced = Math.Max(StanghelliniResistance.SpeedCoefficient * airSpeedMs * airSpeedMs, 1e-6);
    }

    /// <summary>Latent heat at the air's temperature. [J/kg]</summary>
    public double LatentHeatJKg { get; }

    /// <summary>Vapour-pressure deficit of the air. [kPa]</summary>
    public double AirDeficitKPa => _es - _vapourPressureKPa;

    public bool Known => !double.IsNaN(_vapourPressureKPa + _seen + _forced);

    /// <summary>Leaf minus air in balance, by Newton's method, by bisection where that does not settle. [K]</summary>
    /// <param name="wet">Whether water lies on the leaf, so that no surface resistance stands in the way.</param>
    /// <param name="surfaceMs">Conductance of one side's surface when dry. [m/s]</param>
    /// <param name="guessK">Where to start.</param>
    public double OffsetK(bool wet, double surfaceMs, double guessK)
    {
        double x = guessK;
        for (int round = 0; round < MostRounds; round++)
        {
            double step = Gain(wet, surfaceMs, x, out double slope) / slope;
            x = Math.Clamp(x + step, -WidestSearchK, WidestSearchK);
            if (Math.Abs(step) < CloseEnoughK)
            {
                return x;
            }
        }

        return Bisected(wet, surfaceMs);
    }

    /// <summary>Energy gained less energy given off at a difference to the air. [W/m²]</summary>
    public double GainWm2(bool wet, double surfaceMs, double offsetK) => Gain(wet, surfaceMs, offsetK, out _);

    /// <summary>Heat that a wet or dewy leaf gives off as vapour by both sides; negative where dew forms. [W/m²]</summary>
    public double WetLatentWm2(double offsetK) =>
        _vapour * Math.Sqrt(Math.Sqrt((_widthM * Math.Abs(offsetK)) + _forced)) * DeficitKPa(offsetK);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private double Gain(bool wet, double surfaceMs, double x, out double slope)
    {
        double mixing = (_widthM * Math.Abs(x)) + _forced;
        double root = Math.Sqrt(Math.Sqrt(mixing));
        double bend = 0.25 * _widthM * Math.CopySign(1, x) / mixing; // d ln(root)/dx
        double deficit = DeficitKPa(x);
        double heat = _heat * root;
        double vapour = _vapour * root;
        double vapourBend = bend;
        if (!wet && deficit > 0)
        {
            double skin = _surface * surfaceMs;
            double share = skin / (vapour + skin);
            vapour *= share;
            vapourBend *= share;
        }

        double leafK = _kelvin + x;
        double cubed = _longWave * leafK * leafK * leafK;
        slope = (8 * cubed) + (heat * (1 + (x * bend))) + (vapour * (Slope(x) + (deficit * vapourBend)));
        return _seen - (2 * cubed * leafK) - (heat * x) - (vapour * deficit);
    }

    private double Bisected(bool wet, double surfaceMs)
    {
        double low = -WidestSearchK, high = WidestSearchK;
        while (high - low > 1e-6)
        {
            double middle = (low + high) / 2;
            (low, high) = GainWm2(wet, surfaceMs, middle) > 0 ? (middle, high) : (low, middle);
        }

        return (low + high) / 2;
    }

    private double DeficitKPa(double x) => _es + (x * (_slope + (x * (_half2 + (x * _sixth3))))) - _vapourPressureKPa;

    private double Slope(double x) => _slope + (x * ((2 * _half2) + (3 * x * _sixth3)));

    private static double Fourth(double kelvin) => kelvin * kelvin * (kelvin * kelvin);
}
