using System.Collections.Immutable;
using ClimateLens.Nursery.Records;
using ClimateLens.Nursery.Settings.Reading;

namespace ClimateLens.Nursery.Settings.Tables;

/// <summary>What an export of records needs as a whole.</summary>
internal static class RecordCheck
{
    public static void Run(TableReader export, RecordKind kind, ImmutableArray<ColumnSettings> columns)
    {
        bool Has(string field) => columns.Any(c => c.Channel == field);

        ColumnSettings? house = columns.FirstOrDefault(c => c.Channel == RecordFields.House);
        if (!export.Has("house") && house is null)
        {
            export.Faults.Missing(FaultCodes.Reference, export.At, "nothing says which house these records belong to", "", "add house = \"1\", or a column with channel = \"house\"");
        }
        else if (house is not null)
        {
            export.NotHere("house", "stands beside a column with the house", "keep one of them.");
        }

        if (kind != RecordKind.Waterings || export.Faults.PartUnread)
        {
            return;
        }

        if (!Has("method"))
        {
            export.Faults.Warning(FaultCodes.Method, export.At, "waterings without a column for the method", "", "add a column with channel = \"method\"; until then the method is not known.");
        }

        if (!Has("end") && !Has("minutes"))
        {
            export.Faults.Warning(FaultCodes.End, export.At, "waterings without a column for their end or minutes", "", "add a column with channel = \"end\" or \"minutes\"; until then their end is not known.");
        }
    }
}
