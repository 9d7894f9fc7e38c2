using ClimateLens.Nursery.Settings.Reading;

namespace ClimateLens.Nursery.Settings.Tables;

/// <summary>[[house.crop.pathogen]]: numbers of a general model of infection by leaf wetness and temperature, with their source.</summary>
internal static class PathogenTable
{
    public static readonly string[] Keys = ["name", "lowestC", "bestC", "highestC", "leastHours", "mostHours", "longestDryHours", "source"];

    public static PathogenSettings Read(TableReader table)
    {
        string name = table.Text("name", "\"rust\"") ?? "";
        double lowest = table.Number("lowestC", -10, 40, "degrees Celsius", "5") ?? 0;
        double best = table.Number("bestC", -10, 45, "degrees Celsius", "18") ?? 1;
        double highest = table.Number("highestC", -10, 50, "degrees Celsius", "28") ?? 2;
        double least = table.Number("leastHours", 0.1, 100, "hours", "6") ?? 1;
        double most = table.Number("mostHours", 0.1, 400, "hours") ?? Math.Min(400, 3.8 + (3 * least));
        double dry = table.Number("longestDryHours", 0, 48, "hours") ?? 0;
        string source = table.Text("source", "\"who measured it\"") ?? "";
        if (!(lowest < best && best < highest))
        {
            table.Faults.Error(FaultCodes.Order, table.PlaceOf("bestC"), $"lowestC ({NumberKeys.Show(lowest)}), bestC ({NumberKeys.Show(best)}) and highestC ({NumberKeys.Show(highest)}) do not rise", "", "write them from cold to warm.");
            (lowest, best, highest) = (0, 1, 2);
        }

        if (most < least)
        {
            table.Faults.Error(FaultCodes.Order, table.PlaceOf("mostHours"), $"mostHours ({NumberKeys.Show(most)}) is below leastHours ({NumberKeys.Show(least)})", "", "it is the longest wetness that is ever needed.");
            most = least;
        }

        return new PathogenSettings(name, lowest, best, highest, least, most, dry, source);
    }
}
