using System.Collections.Immutable;
using ClimateLens.Logs.SetAside;
using ClimateLens.Nursery.Imports;

namespace ClimateLens.Logs.Sheets;

/// <summary>Counts what was set aside of one file by reason, and keeps the first lines of each.</summary>
internal sealed class ReasonList
{
    /// <summary>Reasons that take a cell and leave its row; all others but <see cref="Overruling"/> take the row.</summary>
    private static readonly HashSet<string> OfCells =
        [ProblemCodes.Number.Code, ProblemCodes.Switch.Code, ProblemCodes.Method.Code, ProblemCodes.Level.Code, ProblemCodes.TimeCell.Code, ProblemCodes.CutShort.Code, ProblemCodes.Decimal.Code, ProblemCodes.Unit.Code];

    /// <summary>Reasons by which older rows of the store were overruled; they are no rows of this file.</summary>
    private static readonly HashSet<string> Overruling = [ProblemCodes.Conflict.Code, ProblemCodes.Replaced.Code];

    private readonly SortedDictionary<string, (int Count, List<int> Lines)> _reasons = new(StringComparer.Ordinal);

    /// <summary>What a reason takes away.</summary>
    public static SetAsideKind KindOf(string code)
        => OfCells.Contains(code) ? SetAsideKind.Cell : Overruling.Contains(code) ? SetAsideKind.Overruled : SetAsideKind.Row;

    /// <summary>Counts one.</summary>
    public void Add(string code, int line)
    {
        (int count, List<int> lines) = _reasons.TryGetValue(code, out (int, List<int>) known) ? known : (0, []);
        if (line > 0 && lines.Count < SetAsideReason.MostLines)
        {
            lines.Add(line);
        }

        _reasons[code] = (count + 1, lines);
    }

    /// <summary>All reasons in the order of their codes.</summary>
    public ImmutableArray<SetAsideReason> ToImmutable()
        => [.. _reasons.Select(r => new SetAsideReason(r.Key, KindOf(r.Key), r.Value.Count, [.. r.Value.Lines.Order()]))];
}
