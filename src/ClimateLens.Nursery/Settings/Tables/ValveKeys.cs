using ClimateLens.Nursery.Records;
using ClimateLens.Nursery.Settings.Reading;

namespace ClimateLens.Nursery.Settings.Tables;

/// <summary>What a valve column says of its water.</summary>
internal static class ValveKeys
{
    private const double LargestFlowLitresPerMinute = 10_000;

    public static ColumnSettings Read(TableReader table, ColumnSettings column)
    {
        WateringMethod? method = table.Choice("method", WateringMethods.Words) is { } word && WateringMethods.TryParse(word, out WateringMethod known) ? known : null;
        if (!table.Has("method"))
        {
            table.Faults.Warning(FaultCodes.Method, table.At, "a valve column without a method", "", $"add method = one of {string.Join(", ", WateringMethods.Words)}; until then the method is not known.");
        }

        return column with
        {
            Method = method,
            LitresPerMinute = table.Number("litresPerMinute", 0.001, LargestFlowLitresPerMinute, "litres a minute"),
            Bench = table.Text("bench") ?? "",
        };
    }
}
