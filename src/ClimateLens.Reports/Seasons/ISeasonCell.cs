using System.Collections.Immutable;
using ClimateLens.Reports.Cells;
using ClimateLens.Reports.Publishing;
using ClimateLens.Reports.Units;

namespace ClimateLens.Reports.Seasons;

/// <summary>One part of a page over all the weeks of a house.</summary>
internal interface ISeasonCell
{
    /// <summary>Stable name in camelCase.</summary>
    string Name { get; }

    /// <summary>The question that it answers.</summary>
    string Heading { get; }

    /// <summary>Answers.</summary>
    CellContent Render(SeasonContext context);
}

/// <summary>All that such a cell may look at.</summary>
/// <param name="Weeks">The pages of the house, oldest first.</param>
/// <param name="Units">Units to read.</param>
internal sealed record SeasonContext(ImmutableArray<SiteEntry> Weeks, DisplayUnits Units);
