namespace ClimateLens.Science.Clock;

/// <summary>The light that counts: what lies below counts as dark and what lies above as full light.</summary>
/// <param name="From">Lower end. [share of a bright day]</param>
/// <param name="Span">Upper end above the lower one. [share of a bright day]</param>
/// <param name="Dullest">A day that never comes to this is left out. [share of a bright day]</param>
internal readonly record struct LightBand(double From, double Span, double Dullest);

/// <summary>
/// The middle of one day's light: the centroid of the light within a band. With a low band only the two edges of the day tell, and
/// clouds at noon do not; straight lines between the readings.
/// </summary>
internal sealed class LightMiddle
{
    /// <summary>Fewer readings are no day.</summary>
    private const int FewestReadings = 8;

    /// <summary>Longest distance between two readings while light comes or goes. [min; or 1.5 steps]</summary>
    private const double LongestGapAtEdge = 30;

    /// <summary>Longest distance between two readings in full light or full dark. [min]</summary>
    private const double LongestGap = 240;

    /// <summary>Light that stands still for longer, below half of a bright day's, comes from a computer that stands still. [min]</summary>
    private const double LongestStandstill = 180;

    /// <summary>
    /// Light that comes out of the dark in one step, beyond what a sun could bring that runs over a day as a sine does: at most sin(πΔ/D) of noon in a step Δ of a day D,
    /// since low sun is weakened more than high sun. Margins: choice of this project. [1; share of a bright day]
    /// </summary>
    private const double SwitchFactor = 1.15, SwitchMargin = 0.03;

    /// <summary>Longest day that has a dark to tell it by. [h]</summary>
    private const double LongestDay = 22;

    private readonly LightCurve _curve;
    private readonly DaySlice _day;
    private readonly LightBand _band;
    private readonly double _cap;
    private readonly double _dark;

    private LightMiddle(LightCurve curve, DaySlice day, LightBand band)
    {
        _curve = curve;
        _day = day;
        _band = band;
        _cap = band.Span * day.Bright;
        _dark = day.Dark + Math.Max(band.From * day.Bright, 3 * day.Noise);
    }

    /// <summary>The day's middle; null when too little of the day is there, or it has no dark, or its light stood still.</summary>
    public static ClockDay? Of(LightCurve curve, DaySlice day, SunNoons sun, LightBand band)
    {
        LightMiddle middle = new(curve, day, band);
        return middle.IsWhole() && sun.DaylightHours(day.Day) <= LongestDay ? middle.Centroid(sun.NoonMin(day.Day), sun.DaylightHours(day.Day)) : null;
    }

    private double Light(int i) => Math.Clamp((_curve.Values[i] - _dark) / _cap, 0, 1);

    private bool IsWhole()
    {
        bool has = _day.To - _day.From >= FewestReadings && _cap > 0 && _day.Top >= _band.Dullest * _day.Bright;
        return has && Light(_day.From) == 0 && Light(_day.To - 1) == 0 && !HasGap() && !StandsStill();
    }

    private bool HasGap()
    {
        double longest = Math.Max(LongestGapAtEdge, 1.5 * _curve.StepMin);
        for (int i = _day.From; i + 1 < _day.To; i++)
        {
            double length = _curve.Minutes[i + 1] - _curve.Minutes[i];
            if (length > longest && (length > LongestGap || Light(i) != Light(i + 1)))
            {
                return true;
            }
        }

        return false;
    }

    private bool StandsStill()
    {
        int since = _day.From;
        for (int i = _day.From + 1; i < _day.To; i++)
        {
            since = _curve.Values[i] == _curve.Values[i - 1] ? since : i;
            bool dim = Light(i) > 0 && _curve.Values[i] - _day.Dark < 0.5 * _day.Bright;
            if (dim && i - since >= 3 && _curve.Minutes[i] - _curve.Minutes[since] >= LongestStandstill)
            {
                return true;
            }
        }

        return false;
    }

    private ClockDay? Centroid(double noonMin, double daylightHours)
    {
        double area = 0, moment = 0;
        bool switched = false;
        for (int i = _day.From; i + 1 < _day.To; i++)
        {
            double a = Light(i), b = Light(i + 1), t0 = _curve.Minutes[i] - noonMin, t1 = _curve.Minutes[i + 1] - noonMin;
            area += (t1 - t0) * (a + b) / 2;
            moment += (t1 - t0) * ((t0 * ((2 * a) + b)) + (t1 * (a + (2 * b)))) / 6;
            switched |= (a == 0) != (b == 0) && IsSwitch(i, daylightHours);
        }

        return area > 0 ? new ClockDay(noonMin * 60, moment / area, area / 60, daylightHours, switched) : null;
    }

    private bool IsSwitch(int i, double daylightHours)
    {
        double share = daylightHours > 0 ? Math.Sin(Math.PI * Math.Min(0.5, _curve.StepMin / 60 / daylightHours)) : 1;
        return _curve.Minutes[i + 1] - _curve.Minutes[i] <= 1.5 * _curve.StepMin
            && Math.Abs(_curve.Values[i + 1] - _curve.Values[i]) > ((SwitchFactor * share) + SwitchMargin) * _day.Bright;
    }
}
