using ClimateLens.Analysis.Care;
using ClimateLens.Reports.Sheets;
using ClimateLens.Science.Irrigation;

namespace ClimateLens.Reports.Tests.Sheets;

public class DrenchTextTests
{
    // Sums of irrigation_checks.json: 120 mL at 50 mg/L is 6 mg; 2,500 pots with 5 % more are 315 L; the 15 cups have 49.6 and 69.1 %.
    private static readonly DrenchPlan Plan = new(2500, 120, 50, 5, 2, [47, 42, 45, 24, 13, 26, 33, 34, 27, 30, 40, 44, 32, 12, 12], QuarterRule.Rounded);

    [Fact]
    public void Of_WholePlan_TellsTheKnownSums()
    {
        string text = DrenchText.Of(Plan);
        Assert.Contains("315 L (83.2 US gal)", text, StringComparison.Ordinal);
        Assert.Contains("6 mg of active ingredient", text, StringComparison.Ordinal);
        Assert.Contains("15 g in all pots", text, StringComparison.Ordinal);
        Assert.Contains("3.6 min at 2 L/h", text, StringComparison.Ordinal);
        Assert.Contains("low-quarter uniformity 49.6 % (a quarter of them rounded), Christiansen 69.1 %", text, StringComparison.Ordinal);
        Assert.Contains("gets 50 % of what is meant (2.977 mg)", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_AnyPlan_EndsWithTheCaution()
    {
        Assert.EndsWith(DrenchText.Caution + "\n", DrenchText.Of(Plan), StringComparison.Ordinal);
        Assert.Contains("the label, which rules", DrenchText.Caution, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_WithoutConcentration_SaysThatTheDoseIsNotKnown()
    {
        string text = DrenchText.Of(Plan with { ConcentrationMgL = null, FlowLh = null, Cups = [] });
        Assert.Contains("dose not known", text, StringComparison.Ordinal);
        Assert.DoesNotContain(" mg", text, StringComparison.Ordinal);
        Assert.DoesNotContain("Time", text, StringComparison.Ordinal);
        Assert.DoesNotContain("Cups", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_DryCups_SaysSo() => Assert.Contains("no water in any of them", DrenchText.Of(Plan with { Cups = [0, 0, 0, 0] }), StringComparison.Ordinal);
}
