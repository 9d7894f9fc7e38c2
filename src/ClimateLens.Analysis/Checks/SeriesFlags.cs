using ClimateLens.Nursery.Time;

namespace ClimateLens.Analysis.Checks;

/// <summary>Flags of one series: rolled up, and of each check apart, so that notes and findings can name what was found.</summary>
public sealed class SeriesFlags
{
    private readonly List<(QualityCheck Check, QualityFlag[] Flags)> _byCheck = [];

    /// <summary>Flags without any check.</summary>
    /// <param name="values">The values that are to be flagged.</param>
    public SeriesFlags(ReadOnlySpan<double> values)
    {
        RolledUp = new QualityFlag[values.Length];
        for (int i = 0; i < values.Length; i++)
        {
            RolledUp[i] = double.IsNaN(values[i]) ? QualityFlag.Missing : QualityFlag.NotEvaluated;
        }
    }

    private SeriesFlags(SeriesFlags other)
    {
        RolledUp = [.. other.RolledUp];
        _byCheck = [.. other._byCheck];
    }

    /// <summary>One flag a value.</summary>
    public QualityFlag[] RolledUp { get; }

    /// <summary>The flags of a check; empty when it did not run.</summary>
    public ReadOnlySpan<QualityFlag> Of(QualityCheck check)
    {
        foreach ((QualityCheck known, QualityFlag[] flags) in _byCheck)
        {
            if (known == check)
            {
                return flags;
            }
        }

        return [];
    }

    /// <summary>Whether a check has put a value in doubt or failed it.</summary>
    public bool Found(QualityCheck check, int i)
        => Of(check) is { IsEmpty: false } flags && flags[i] is QualityFlag.Suspect or QualityFlag.Fail;

    /// <summary>Whether any check but one has put a value in doubt or failed it.</summary>
    public bool FoundBut(QualityCheck check, int i)
        => _byCheck.Any(c => c.Check != check && c.Flags[i] is QualityFlag.Suspect or QualityFlag.Fail);

    /// <summary>The checks that have put a value in doubt or failed it, in the order of <see cref="QualityCheck"/>.</summary>
    public IEnumerable<QualityCheck> At(int i)
        => _byCheck.Where(c => c.Flags[i] is QualityFlag.Suspect or QualityFlag.Fail).Select(c => c.Check).Order();

    /// <summary>These flags and those of one more check.</summary>
    /// <param name="check">The check; has not run yet.</param>
    /// <param name="flags">One flag a value; <see cref="QualityFlag.Missing"/> where the check says nothing.</param>
    public SeriesFlags With(QualityCheck check, QualityFlag[] flags)
    {
        SeriesFlags more = new(this);
        more._byCheck.Add((check, flags));
        FlagRollUp.Into(more.RolledUp, flags);
        return more;
    }
}
