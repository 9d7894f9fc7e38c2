using System.CommandLine;
using ClimateLens.Analysis.Care;
using ClimateLens.Nursery.Channels;
using ClimateLens.Reports.Sheets;
using ClimateLens.Science.Irrigation;

namespace ClimateLens.Cli.Commands;

/// <summary><c>drench</c>: the sums of a drench for a plan. It picks no product and no rate.</summary>
internal static class DrenchCommand
{
    public static Command Create(TextWriter output)
    {
        Command command = new("drench", """
            Do the sums of a drench: solution to mix, active ingredient a pot, time of an emitter, and what uneven emitters make of the dose.
            Product, rate and volume come from the label, which rules.

            Example: climatelens drench --pots 2500 --volume "120 mL" --concentration "50 mg/L" --overage 5 --flow "2 L/h"
            """);
        Option<int> pots = NumberOption.Whole("--pots", null, 1, 10_000_000, "--pots needs a number from 1 to 10,000,000.");
        (pots.Description, pots.HelpName, pots.Required) = ("Number of pots.", "N", true);
        Option<string> volume = new("--volume") { Description = "Solution a pot, such as \"120 mL\" or \"4 fl oz\".", HelpName = "AMOUNT", Required = true };
        Option<string?> concentration = new("--concentration") { Description = "Active ingredient in the solution, such as \"50 mg/L\" or \"50 ppm\".", HelpName = "AMOUNT" };
        Option<double> overage = NumberOption.Decimal("--overage", null, 0, 100, "--overage needs a number from 0 to 100.");
        (overage.Description, overage.HelpName) = ("What is mixed beyond the need, in % (default: 0).", "PERCENT");
        Option<string?> flow = new("--flow") { Description = "Flow of an emitter, such as \"2 L/h\" or \"0.5 gph\".", HelpName = "AMOUNT" };
        Option<string?> cups = new("--cups") { Description = "What catch cups or metered emitters gave in one time, all in one unit, such as 47,42,45,24.", HelpName = "LIST" };
        Option<string> quarter = new("--quarter") { Description = "How many cups the lowest quarter is (default: rounded).", DefaultValueFactory = _ => "rounded" };
        quarter.AcceptOnlyFromAmong("rounded", "weighted", "down");
        foreach (Option option in (Option[])[pots, volume, concentration, overage, flow, cups, quarter])
        {
            command.Options.Add(option);
        }

        Check(volume, t => MeasureText.TryVolume(t, out _), "--volume needs an amount with a unit of volume, such as \"120 mL\" or \"4 fl oz\".");
        Check(concentration, t => t is null || MeasureText.TryConcentration(t, out _), "--concentration needs an amount in mg/L, g/L or ppm, such as \"50 mg/L\".");
        Check(flow, t => t is null || MeasureText.TryFlow(t, out _), "--flow needs an amount with a unit of flow, such as \"2 L/h\", \"33 mL/min\" or \"0.5 gph\".");
        Check(cups, t => t is null || MeasureText.TryAmounts(t, out _), "--cups needs numbers that are not negative, parted by commas.");
        command.SetAction(parsed =>
        {
            MeasureText.TryVolume(parsed.GetValue(volume)!, out double millilitres);
            DrenchPlan plan = new(
                parsed.GetValue(pots),
                millilitres,
                parsed.GetValue(concentration) is { } c && MeasureText.TryConcentration(c, out double mg) ? mg : null,
                parsed.GetValue(overage),
                parsed.GetValue(flow) is { } f && MeasureText.TryFlow(f, out double litres) ? litres : null,
                parsed.GetValue(cups) is { } list && MeasureText.TryAmounts(list, out double[] amounts) ? [.. amounts] : [],
                parsed.GetValue(quarter) switch { "weighted" => QuarterRule.Weighted, "down" => QuarterRule.Down, _ => QuarterRule.Rounded });
            output.Write(DrenchText.Of(plan));
            return ExitCode.Done;
        });
        return command;
    }

    private static void Check<T>(Option<T> option, Func<T, bool> isSound, string message)
        => option.Validators.Add(result =>
        {
            if (!result.Errors.Any() && result.Tokens.Count == 1 && !isSound(result.GetValueOrDefault<T>()!))
            {
                result.AddError(message);
            }
        });
}
