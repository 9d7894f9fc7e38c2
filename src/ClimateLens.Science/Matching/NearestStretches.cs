namespace ClimateLens.Science.Matching;

/// <summary>Untreated stretches, and which of them are most like a given one.</summary>
internal sealed class NearestStretches
{
    private readonly CovariateTable _table;
    private readonly List<(int Start, double[] Row)> _candidates = [];
    private readonly Stretches _stretches;
    private readonly MatchDesign _design;

    public NearestStretches(Stretches stretches, CovariateTable table, List<int> pool, MatchDesign design)
    {
        (_stretches, _table, _design) = (stretches, table, design);
        foreach (int start in pool)
        {
            double[] row = table.Row(start);
            if (!row.Any(double.IsNaN))
            {
                _candidates.Add((start, row));
            }
        }
    }

    public IReadOnlyList<(int Start, double[] Row)> Candidates => _candidates;

    /// <summary>Compares a stretch with those most like it: within the calliper, none sharing a step with it or with one another.</summary>
    public MatchedEvent Match(int start)
    {
        double[] row = _table.Row(start);
        List<(double Distance, int Start)> near = [];
        foreach ((int other, double[] otherRow) in _candidates)
        {
            double distance = _table.Distance(row, otherRow, _design.Calliper);
            if (distance <= _design.Calliper && Math.Abs(other - start) >= _stretches.Length)
            {
                near.Add((distance, other));
            }
        }

        near.Sort();
        List<(double Distance, int Start)> chosen = [];
        foreach ((double Distance, int Start) candidate in near)
        {
            if (chosen.Count < _design.Neighbours && chosen.TrueForAll(c => Math.Abs(c.Start - candidate.Start) >= _stretches.Length))
            {
                chosen.Add(candidate);
            }
        }

        if (chosen.Count == 0)
        {
            return new(start, row.Any(double.IsNaN) ? MatchOutcome.NotMeasured : MatchOutcome.NothingAlike, [], double.NaN, double.NaN);
        }

        double effect = _stretches.Rise(start) - chosen.Average(c => _stretches.Rise(c.Start));
        return new(start, MatchOutcome.Matched, [.. chosen.Select(c => c.Start)], chosen.Average(c => c.Distance), effect);
    }
}
