using ClimateLens.Analysis.Foliage;
using ClimateLens.Analysis.Gridding;
using ClimateLens.Analysis.Hours;
using ClimateLens.Analysis.Stages;
using ClimateLens.Analysis.Uncertainty;
using ClimateLens.Science.Balance;
using ClimateLens.Science.Statistics;

namespace ClimateLens.Analysis.Causes;

/// <summary>Replays a period under every set of changes, with parameters of the balance, errors of the sensors and what the balance misses drawn together.</summary>
/// <remarks>
/// <para><b>Method:</b> in each draw the balance runs once for each set with the same parameters; its difference to the run as it was goes onto the measured air, and the hours are judged by the code that judged
/// them as they were, under the draw's errors of sensors and canopy. What the balance misses on a day held out is drawn by whole days and added to the difference in the measure in which the two runs
/// part: <c>Δ/(|Δ| + s)</c> of it, with s its root mean square (choice of this project). All of it runs in the steps of the balance (<see cref="CoarserPeriod"/>), the week as it was too.</para>
/// </remarks>
internal sealed class WeekReplay
{
    /// <summary>Number of draws, the first ones of <see cref="BiasDraws"/>.</summary>
    public const int Draws = 50;

    private readonly HousePeriod _house;
    private readonly RiskState _risk;
    private readonly HouseBalance _balance;
    private readonly Change _known, _telling;
    private readonly int _firstHour;
    private readonly LateRounds _late;
    private readonly double[][] _byLateRound;
    private readonly int[] _sets; // those that are replayed
    private readonly FoliageHours[] _leaves; // of each of these
    private readonly OtherWeek?[] _weeks = new OtherWeek?[(int)Change.All + 1];

    private WeekReplay(HousePeriod house, RiskState risk, HouseBalance balance)
    {
        house = LeafState.Add(CoarserPeriod.Of(house));
        (_house, _risk, _balance) = (house, risk, balance);
        HourTable hours = HourTable.Of(house);
        _late = new LateRounds(house, risk.CutOffs, hours);
        _byLateRound = [.. Enumerable.Range(0, _late.Count).Select(_ => new double[Draws])];
        _known = KnownChanges(house, balance);
        _telling = Telling(house, risk);
        _firstHour = FoliageHours.FirstHourOf(risk.Hours);
        Dictionary<Change, HousePeriod> others = [];
        int firstStep = _firstHour * house.StepsPerHour;
        BalanceInputs columns = BalanceColumns.Of(house, firstStep);
        double[] warmth = HeatAndVent.Warmth(house), none = new double[warmth.Length];
        for (Change set = Change.None; set <= Change.All; set++)
        {
            if (Effective(set) == set)
            {
                Change still = set & ~Change.HeatAndVentBeforeSunrise;
                if (!others.TryGetValue(still, out HousePeriod? other))
                {
                    others[still] = other = still == Change.None ? house : OtherHouse.Under(house, risk.CutOffs, still);
                }

                _weeks[(int)set] = new OtherWeek(house, other, hours, _firstHour, set.HasFlag(Change.HeatAndVentBeforeSunrise) ? warmth : none, columns, balance.Fit.Terms);
            }
        }

        _sets = [.. Enumerable.Range(0, _weeks.Length).Where(set => _weeks[set] is not null)];
        _leaves = [.. _sets.Select(set => _weeks[set]!.Leaves)];
    }

    /// <summary>Replays a period.</summary>
    public static ReplayedWeeks Of(HousePeriod house, RiskState risk, HouseBalance balance) => new WeekReplay(house, risk, balance).Run();

    private static Change KnownChanges(HousePeriod house, HouseBalance balance)
    {
        Change known = Change.WaterBeforeCutOff | Change.WaterOffLeaves;
        known |= house.Cover is { Known: true } ? Change.WiderSpacing : Change.None;
        return known | (balance.Fit.Terms.Vent ? Change.HeatAndVentBeforeSunrise : Change.None);
    }

    /// <summary>All changes but those that change nothing in this period: no watering was late, none wetted leaves.</summary>
    private static Change Telling(HousePeriod house, RiskState risk)
    {
        Change without = OtherWaterings.AnyWetting(house) ? Change.None : Change.WaterOffLeaves;
        without |= OtherWaterings.AnyLate(house, risk.CutOffs) ? Change.None : Change.WaterBeforeCutOff;
        return Change.All & ~without;
    }

    /// <summary>The set without the changes that cannot be told or change nothing.</summary>
    private Change Effective(Change set) => set & _known & _telling;

    private ReplayedWeeks Run()
    {
        double[]?[] counts = new double[]?[_weeks.Length];
        int[][] byHour = new int[_weeks.Length][];
        foreach (int set in _sets)
        {
            counts[set] = new double[Draws];
            byHour[set] = new int[_risk.Hours.Count];
        }

        double[][] hourly = RiskHours.HourlyErrors(_risk.Hours);
        SeededRandom random = new(unchecked((ulong)BiasDraws.Seed) ^ 0x5);
        Residuals residuals = new(_balance, _house.Frame.Axis, _firstHour * _house.StepsPerHour);
        for (int first = 0; first < Draws; first += PreparedReplay.AtOnce)
        {
            int count = Math.Min(PreparedReplay.AtOnce, Draws - first);
            double[][] parameters = new double[count][], missed = new double[count][];
            for (int k = 0; k < count; k++)
            {
                (parameters[k], missed[k]) = (_balance.Fit.Draw(random), residuals.Draw(random, _weeks[0]!.Steps));
            }

            foreach (int set in _sets)
            {
                _weeks[set]!.Run(parameters);
            }

            for (int k = 0; k < count; k++)
            {
                TakeDraw(first + k, k, residuals.SpreadGm3, missed[k], hourly[first + k]);
                foreach (int set in _sets)
                {
                    CountHours(first + k, set, counts[set]!, byHour[set]);
                }
            }
        }

        return Result(counts, byHour);
    }

    /// <summary>Lets the leaves of all sets take a draw and judges their hours.</summary>
    /// <param name="draw">Which draw.</param>
    /// <param name="run">Which of those that ran together.</param>
    /// <param name="spreadGm3">Root mean square of what the balance misses. [g/m³]</param>
    /// <param name="missed">What it misses in this draw. [g/m³]</param>
    /// <param name="hourly">The hour's own error in half-widths.</param>
    private void TakeDraw(int draw, int run, double spreadGm3, double[] missed, double[] hourly)
    {
        FoliageErrors errors = _risk.Draws.At(draw);
        ReadOnlySpan<double> asWas = _weeks[0]!.Humidity(run);
        double[] change = new double[asWas.Length];
        foreach (int set in _sets)
        {
            ReadOnlySpan<double> otherwise = _weeks[set]!.Humidity(run);
            for (int i = 0; i < change.Length; i++)
            {
                double by = otherwise[i] - asWas[i];
                change[i] = by + (missed[i] * Math.Abs(by) / (Math.Abs(by) + spreadGm3));
            }

            _weeks[set]!.Take(change, errors, _risk.Draws.HourlyHumidityPct, hourly);
        }

        FoliageHours.Judge(_leaves);
    }

    private void CountHours(int draw, int set, double[] counts, int[] byHour)
    {
        bool[] risk = _weeks[set]!.Leaves.Risk, asWas = _weeks[0]!.Leaves.Risk;
        for (int h = _risk.Hours.FirstOfPeriod; h < risk.Length; h++)
        {
            counts[draw] += risk[h] ? 1 : 0;
            byHour[h] += risk[h] ? 1 : 0;
            if (set == (int)Change.WaterBeforeCutOff && _late.Of(h) is >= 0 and int round)
            {
                _byLateRound[round][draw] += (asWas[h] ? 1 : 0) - (risk[h] ? 1 : 0);
            }
        }
    }

    private ReplayedWeeks Result(double[]?[] counts, int[][] byHour)
    {
        double[] values = new double[counts.Length];
        for (int set = 0; set < counts.Length; set++)
        {
            Change effective = Effective((Change)set);
            bool known = ((Change)set & ~_known) == 0;
            counts[set] = known ? counts[(int)effective] : null;
            values[set] = known ? byHour[(int)effective].AsSpan(_risk.Hours.FirstOfPeriod).ToArray().Count(n => 2 * n >= Draws) : double.NaN;
        }

        double[] late = new double[_late.Count];
        for (int h = _risk.Hours.FirstOfPeriod; h < _risk.Hours.Count && late.Length > 0; h++)
        {
            if (_late.Of(h) is >= 0 and int round)
            {
                late[round] += (2 * byHour[0][h] >= Draws ? 1 : 0) - (2 * byHour[(int)Change.WaterBeforeCutOff][h] >= Draws ? 1 : 0);
            }
        }

        return new ReplayedWeeks(_known, counts, values) { Late = _late, ByLateRound = _byLateRound, ValueByLateRound = late };
    }
}
