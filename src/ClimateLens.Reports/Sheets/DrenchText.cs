using System.Globalization;
using System.Text;
using ClimateLens.Analysis.Care;
using ClimateLens.Science.Irrigation;

namespace ClimateLens.Reports.Sheets;

/// <summary>The sums of a drench in words, metric with US measures beside them.</summary>
public static class DrenchText
{
    /// <summary>The caution that stands beneath the sums.</summary>
    public const string Caution = """
        Mind: these are sums, not advice. Product, rate, volume and where it may be used stand on the label, which rules, with local codes; the work is for
        licensed people. Check the emitters' flow with cups first: the dose of a pot is only as even as its water.
        """;

    /// <summary>The lines, ready to print.</summary>
    public static string Of(DrenchPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        DrenchSums sums = plan.Sums();
        StringBuilder text = new();
        Line(text, "Solution", $"{Show(sums.SolutionLitres, 1)} L ({Show(sums.SolutionLitres / UsMeasures.GallonL, 1)} US gal): {plan.Pots} pots of {Show(plan.VolumeMl, 0)} mL ({Show(plan.VolumeMl / UsMeasures.FluidOunceMl, 2)} fl oz), and {Show(plan.OveragePct, 0)} % more");
        Line(text, "A pot", sums.MilligramPerPot is { } mg
            ? $"{Show(mg, 3)} mg of active ingredient: {Show(plan.VolumeMl, 0)} mL at {Show(plan.ConcentrationMgL!.Value, 1)} mg/L; {Show(sums.InPotsG!.Value, 2)} g in all pots"
            : "dose not known without a concentration (--concentration)");
        if (sums.Minutes is { } minutes)
        {
            Line(text, "Time", $"{Show(minutes, 1)} min at {Show(plan.FlowLh!.Value, 2)} L/h ({Show(plan.FlowLh.Value / UsMeasures.GallonL, 2)} US gph) an emitter");
        }

        Cups(text, plan, sums);
        return text.Append(Caution).Append('\n').ToString();
    }

    private static void Cups(StringBuilder text, DrenchPlan plan, DrenchSums sums)
    {
        if (sums.LowQuarterUniformityPct is not { } uniformity)
        {
            return;
        }

        string rule = plan.Quarter switch { QuarterRule.Weighted => "exactly a quarter of them", QuarterRule.Down => "a quarter of them rounded down", _ => "a quarter of them rounded" };
        if (!double.IsFinite(uniformity))
        {
            Line(text, "Cups", "no water in any of them");
            return;
        }

        Line(text, "Cups", $"{plan.Cups.Length}: low-quarter uniformity {Show(uniformity, 1)} % ({rule}), Christiansen {Show(sums.ChristiansenPct!.Value, 1)} %{(sums.EmissionUniformityPct is { } e ? $", emission uniformity {Show(e, 1)} %" : "")}");
        string low = sums.MilligramPerPot is { } dose ? $" ({Show(dose * sums.LowShare!.Value, 3)} mg)" : "", high = sums.MilligramPerPot is { } same ? $" ({Show(same * sums.HighShare!.Value, 3)} mg)" : "";
        Line(text, "Spread", $"the driest quarter of the pots gets {Show(100 * sums.LowShare!.Value, 0)} % of what is meant{low}, the wettest {Show(100 * sums.HighShare!.Value, 0)} %{high}");
    }

    private static void Line(StringBuilder text, string name, string words) => text.Append(CultureInfo.InvariantCulture, $"{name,-10}{words}\n");

    private static string Show(double value, int decimals) => value.ToString("#,0." + new string('#', decimals), CultureInfo.InvariantCulture);
}
