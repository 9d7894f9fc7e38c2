using ClimateLens.Analysis.Learned;
using ClimateLens.Science.Statistics;

namespace ClimateLens.Analysis.Outlook;

/// <summary>Risk hours of the coming night, learned from the nights before it.</summary>
/// <param name="RiskHours">The forecast. [h]</param>
/// <param name="Low">5 % of the errors on past nights lie below. [h]</param>
/// <param name="High">5 % lie above. [h]</param>
/// <param name="Scored">Past nights that were foretold alike, each from the nights before it alone.</param>
/// <param name="Persistence">Against the night before.</param>
/// <param name="Climatology">Against the mean of the nights before.</param>
/// <param name="MeanMissHours">Mean of the absolute errors. [h]</param>
/// <param name="IsBetter">Whether it beats both by more than the standard error of the difference.</param>
/// <remarks>
/// <para><b>Method:</b> a plane through the columns of <see cref="NightTable"/> with a penalty on its slopes ([HK70]), since there are a dozen columns and a month of nights; of four penalties each forecast takes the one that has missed least before. Each past night from the thirteenth on is foretold with what was known at
/// its midnight before, from nights that were over by then. The range is the forecast with the errors on those nights, between no hour and the whole night.</para>
/// <para><b>Skill:</b> <c>1 - MSE/MSE_ref</c> ([MURPHY88]); a forecast is better where the mean difference of squared errors is above its standard error ([DM95], both from memory). <b>Reference:</b> persistence is given the night that is not over yet
/// when the forecast is made, which favours it.</para>
/// <para><b>Error:</b> the range holds the truth in nine of ten nights if the coming one is like those; with n scored nights at most in (n - 1)/(n + 1).</para>
/// </remarks>
internal sealed record NightForecast(
    double RiskHours, double Low, double High, int Scored, ForecastSkill Persistence, ForecastSkill Climatology, double MeanMissHours, bool IsBetter)
{
    /// <summary>Nights that a forecast learns from at the least. Choice of this project.</summary>
    public const int FewestLearned = 12;

    /// <summary>Nights scored at the least; with fewer there is no range. Choice of this project.</summary>
    public const int FewestScored = 15;

    /// <summary>Penalties on the slopes, a night, of which each forecast takes the one that has missed least on the nights before. Choice of this project. [1]</summary>
    private static readonly double[] Penalties = [0.1, 0.5, 2, 8];

    /// <summary>A column known on fewer nights than this is left out. Choice of this project. [1]</summary>
    private const double FewestShare = 0.9;

    /// <summary>Foretells the last night of a table; null where too few are known, or the day before it is not.</summary>
    public static NightForecast? Of(NightTable nights)
    {
        if (nights.Count == 0)
        {
            return null;
        }

        double[][] columns = nights.Columns;
        int coming = nights.Count - 1;
        int[] inputs = [.. Enumerable.Range(1, columns.Length - 1).Where(c => double.IsFinite(columns[c][coming]) && columns[c].Count(double.IsFinite) >= FewestShare * nights.Count)];
        int[] known = [.. Enumerable.Range(0, coming).Where(n => double.IsFinite(columns[NightTable.Target][n]) && inputs.All(c => double.IsFinite(columns[c][n])))];
        List<ScoredNight> scored = [];
        double[] squares = new double[Penalties.Length];
        foreach (int night in known)
        {
            int[] over = [.. known.Where(n => n < night - 1)]; // at its midnight before, the night before it is not over
            double before = columns[NightTable.Target][Math.Max(0, night - 1)];
            if (over.Length >= FewestLearned && double.IsFinite(before))
            {
                double truth = columns[NightTable.Target][night];
                double[] foretold = [.. Penalties.Select(p => Foretell(nights, inputs, over, night, p))];
                scored.Add(new ScoredNight(truth, foretold[Best(squares)], before, over.Average(n => columns[NightTable.Target][n])));
                squares = [.. squares.Select((s, i) => s + Math.Pow(truth - foretold[i], 2))];
            }
        }

        return scored.Count < FewestScored || inputs.Length == 0 ? null
            : With(Foretell(nights, inputs, [.. known.Where(n => n < coming - 1)], coming, Penalties[Best(squares)]), nights.Columns[^1][coming], scored);
    }

    private static NightForecast With(double foretold, double nightHours, List<ScoredNight> scored)
    {
        double[] truth = [.. scored.Select(s => s.Truth)], model = [.. scored.Select(s => s.Foretold)], before = [.. scored.Select(s => s.Before)], mean = [.. scored.Select(s => s.Mean)];
        double[] errors = [.. scored.Select(s => s.Truth - s.Foretold).Order()];
        int tail = Math.Max(0, (int)Math.Floor(0.05 * (errors.Length + 1)) - 1);
        return new NightForecast(
            foretold,
            Math.Clamp(foretold + errors[tail], 0, foretold),
            Math.Clamp(foretold + errors[^(tail + 1)], foretold, nightHours),
            scored.Count,
            ForecastSkill.Of(truth, model, before),
            ForecastSkill.Of(truth, model, mean),
            errors.Average(Math.Abs),
            Beats(truth, model, before) && Beats(truth, model, mean));
    }

    private static double Foretell(NightTable nights, int[] inputs, int[] from, int night, double penalty)
        => Math.Clamp(SensorModel.Plane(nights.Columns, NightTable.Target, inputs, from, penalty).Predict(nights.Columns, night), 0, nights.Columns[^1][night]);

    /// <summary>Index of the penalty that has missed least so far; the strongest for equal ones.</summary>
    private static int Best(double[] squares) => Array.LastIndexOf(squares, squares.Min());

    /// <summary>Whether the mean gain in squared error is above its standard error.</summary>
    private static bool Beats(double[] truth, double[] model, double[] reference)
    {
        double[] gain = [.. truth.Select((t, i) => Math.Pow(t - reference[i], 2) - Math.Pow(t - model[i], 2))];
        double mean = gain.Average();
        double error = Math.Sqrt(gain.Sum(g => (g - mean) * (g - mean)) / (gain.Length - 1) / gain.Length);
        return mean > error;
    }

    private readonly record struct ScoredNight(double Truth, double Foretold, double Before, double Mean);
}
