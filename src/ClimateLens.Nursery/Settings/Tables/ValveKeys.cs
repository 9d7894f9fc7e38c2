using ClimateLens.Nursery.Records;
using ClimateLens.Nursery.Settings.Reading;

namespace ClimateLens.Nursery.Settings.Tables;

/// <summary>What a valve column, or a water meter, says of its water.</summary>
internal static class ValveKeys
{
    private const double LargestFlowLitresPerMinute = 10_000;

    public static ColumnSettings Read(TableReader table, ColumnSettings column)
    {
        if (!table.Has("method"))
        {
            table.Faults.Warning(FaultCodes.Method, table.At, "a valve column without a method", "", $"add method = one of {string.Join(", ", WateringMethods.Words)}; until then the method is not known.");
        }

        return ReadMeter(table, column) with { LitresPerMinute = table.Number("litresPerMinute", 0.001, LargestFlowLitresPerMinute, "litres a minute") };
    }

    /// <summary>Where the water of a meter goes; often it serves several methods, so that one is not asked for.</summary>
    public static ColumnSettings ReadMeter(TableReader table, ColumnSettings column) => column with
    {
        Method = table.Choice("method", WateringMethods.Words) is { } word && WateringMethods.TryParse(word, out WateringMethod known) ? known : null,
        Bench = table.Text("bench") ?? "",
    };
}
