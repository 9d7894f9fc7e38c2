namespace ClimateLens.Science.Matching;

/// <summary>Covariates as columns of like weight: one of each level, sine and cosine of the hour.</summary>
internal sealed class CovariateTable
{
    private readonly List<(string Name, Func<int, double> At, double Deviation)> _columns = [];
    private readonly int _covariates;

    public CovariateTable(IReadOnlyList<MatchCovariate> covariates, MatchDesign design, List<int> pool)
    {
        int before = design.Steps(design.BeforeHours), after = design.Steps(design.AfterHours);
        List<string> leftOut = [];
        foreach (MatchCovariate covariate in covariates)
        {
            var means = new WindowMeans(covariate.Values.Span);
            bool used = means.ShareKnown >= design.LeastKnown && covariate.Kind switch
            {
                CovariateKind.HourOfDay => AddHour(covariate),
                CovariateKind.Before => AddLevel(covariate.Name, start => means.Mean(start - before, start), pool),
                _ => AddLevel(covariate.Name, start => means.Mean(start - before, start + after), pool),
            };
            if (!used)
            {
                leftOut.Add(covariate.Name);
            }

            _covariates += used ? 1 : 0;
        }

        LeftOut = leftOut;
    }

    public IReadOnlyList<string> LeftOut { get; }

    public int Width => _columns.Count;

    public IEnumerable<string> Names => _columns.Select(c => c.Name).Distinct();

    public IEnumerable<int> ColumnsOf(string name) => Enumerable.Range(0, _columns.Count).Where(i => _columns[i].Name == name);

    /// <summary>Covariates of a stretch in standard deviations; NaN where not known.</summary>
    public double[] Row(int start) => [.. _columns.Select(c => c.At(start) / c.Deviation)];

    /// <summary>Root mean square over the covariates of the difference of two rows, or infinity where it is beyond a limit; NaN where not known, 0 without covariates.</summary>
    public double Distance(ReadOnlySpan<double> a, ReadOnlySpan<double> b, double limit)
    {
        int covariates = Math.Max(1, _covariates);
        double squares = 0, most = limit * limit * covariates * (1 + 1e-12); // most rows are far off
        for (int i = 0; i < a.Length; i++)
        {
            double difference = a[i] - b[i];
            squares += difference * difference;
            if (squares > most)
            {
                return double.PositiveInfinity;
            }
        }

        return Math.Sqrt(squares / covariates);
    }

    private bool AddHour(MatchCovariate covariate)
    {
        double deviation = Math.PI / 12; // an hour is one standard deviation: humidity runs with the hour whatever else is alike
        _columns.Add((covariate.Name, start => Math.Sin(covariate.Values.Span[start] * Math.PI / 12), deviation));
        _columns.Add((covariate.Name, start => Math.Cos(covariate.Values.Span[start] * Math.PI / 12), deviation));
        return true;
    }

    private bool AddLevel(string name, Func<int, double> at, List<int> pool)
    {
        double[] known = [.. pool.Select(at).Where(double.IsFinite)];
        if (known.Length < 2)
        {
            return false;
        }

        double mean = known.Average(), deviation = Math.Sqrt(known.Average(v => (v - mean) * (v - mean)));
        bool varies = deviation > 1e-9 * Math.Max(1e-3, Math.Abs(mean));
        if (varies)
        {
            _columns.Add((name, at, deviation));
        }

        return varies;
    }
}
