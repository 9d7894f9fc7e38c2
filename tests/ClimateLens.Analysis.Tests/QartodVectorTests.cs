using System.Text.Json;
using ClimateLens.Analysis.Checks;
using ClimateLens.Nursery.Time;

namespace ClimateLens.Analysis.Tests;

/// <summary>The generic tests against vectors of an open implementation; each row of Data/qartod-vectors.json names its source.</summary>
public sealed class QartodVectorTests
{
    private static readonly JsonElement[] Rows = Load();

    public static TheoryData<int> RowsOf(string test)
    {
        TheoryData<int> data = [];
        for (int i = 0; i < Rows.Length; i++)
        {
            if (Rows[i].GetProperty("test").GetString() == test)
            {
                data.Add(i);
            }
        }

        return data;
    }

    [Fact]
    public void Vectors_File_HoldsEveryKindOfTest()
        => Assert.Equal(
            ["aggregate:1", "attenuated_signal_whole_series:6", "flat_line:11", "gross_range:2", "rate_of_change:4", "spike:10"],
            Rows.GroupBy(r => r.GetProperty("test").GetString()!).Select(g => $"{g.Key}:{g.Count()}").Order(StringComparer.Ordinal));

    [Theory]
    [MemberData(nameof(RowsOf), "gross_range")]
    public void GrossRange_Vector_GivesItsFlags(int row)
    {
        JsonElement inputs = Rows[row].GetProperty("inputs");
        double[] values = Values(inputs.GetProperty("values"));
        double[] fail = Values(inputs.GetProperty("fail_span")), suspect = Values(inputs.GetProperty("suspect_span"));
        QualityFlag[] flags = new QualityFlag[values.Length];
        GrossRange.Test(values, fail[0], fail[1], suspect[0], suspect[1], flags);
        AssertFlags(row, flags);
    }

    [Theory]
    [MemberData(nameof(RowsOf), "spike")]
    public void Spike_Vector_GivesItsFlags(int row)
    {
        JsonElement inputs = Rows[row].GetProperty("inputs");
        double[] values = Values(inputs.GetProperty("values"));
        QualityFlag[] flags = new QualityFlag[values.Length];
        double suspect = Limit(inputs.GetProperty("suspect")), fail = Limit(inputs.GetProperty("fail"));
        if (inputs.GetProperty("method").GetString() == "differential")
        {
            Spike.TestDifferential(values, suspect, fail, flags);
        }
        else
        {
            Spike.Test(values, suspect, fail, flags);
        }

        AssertFlags(row, flags);
    }

    [Theory]
    [MemberData(nameof(RowsOf), "rate_of_change")]
    public void RateOfChange_Vector_GivesItsFlags(int row)
    {
        JsonElement inputs = Rows[row].GetProperty("inputs");
        double[] values = Values(inputs.GetProperty("values"));
        QualityFlag[] flags = new QualityFlag[values.Length];
        double fail = inputs.TryGetProperty("fail_threshold_per_s", out JsonElement limit) ? limit.GetDouble() : double.PositiveInfinity;
        RateOfChange.Test(values, inputs.GetProperty("step_s").GetDouble(), inputs.GetProperty("threshold_per_s").GetDouble(), fail, flags);
        AssertFlags(row, flags);
    }

    [Theory]
    [MemberData(nameof(RowsOf), "attenuated_signal_whole_series")]
    public void AttenuatedSignal_Vector_GivesItsFlags(int row)
    {
        JsonElement inputs = Rows[row].GetProperty("inputs");
        double[] values = Values(inputs.GetProperty("values"));
        QualityFlag[] flags = new QualityFlag[values.Length];
        SignalSpread spread = inputs.GetProperty("check").GetString() == "std" ? SignalSpread.Deviation : SignalSpread.Range;
        AttenuatedSignal.Whole(values, spread, inputs.GetProperty("suspect").GetDouble(), inputs.GetProperty("fail").GetDouble(), flags);
        AssertFlags(row, flags);
    }

    [Theory]
    [MemberData(nameof(RowsOf), "flat_line")]
    public void FlatLine_Vector_GivesItsFlags(int row)
    {
        JsonElement inputs = Rows[row].GetProperty("inputs");
        double[] values = Values(inputs.GetProperty("values"));
        int step = inputs.GetProperty("step_s").GetInt32();
        QualityFlag[] flags = new QualityFlag[values.Length];
        FlatLine.Test(
            values,
            inputs.GetProperty("suspect_s").GetInt32() / step,
            inputs.GetProperty("fail_s").GetInt32() / step,
            inputs.GetProperty("tolerance").GetDouble(),
            flags);
        AssertFlags(row, flags);
    }

    [Theory]
    [MemberData(nameof(RowsOf), "aggregate")]
    public void FlagRollUp_Vector_GivesItsFlags(int row)
    {
        QualityFlag[][] vectors = [.. Rows[row].GetProperty("inputs").GetProperty("vectors").EnumerateArray().Select(v => Values(v).Select(x => (QualityFlag)x).ToArray())];
        QualityFlag[] gathered = vectors[0];
        foreach (QualityFlag[] test in vectors[1..])
        {
            FlagRollUp.Into(gathered, test);
        }

        AssertFlags(row, gathered);
    }

    private static void AssertFlags(int row, QualityFlag[] flags)
        => Assert.Equal(Values(Rows[row].GetProperty("expected_flags")).Select(f => (int)f), flags.Select(f => (int)f));

    private static double Limit(JsonElement element) => element.ValueKind == JsonValueKind.Null ? double.PositiveInfinity : element.GetDouble();

    private static double[] Values(JsonElement array)
        => [.. array.EnumerateArray().Select(e => e.ValueKind == JsonValueKind.Null ? double.NaN : e.GetDouble())];

    private static JsonElement[] Load()
    {
        using Stream stream = typeof(QartodVectorTests).Assembly.GetManifestResourceStream("qartod-vectors.json")!;
        using JsonDocument document = JsonDocument.Parse(stream);
        return [.. document.RootElement.Clone().EnumerateArray()];
    }
}
