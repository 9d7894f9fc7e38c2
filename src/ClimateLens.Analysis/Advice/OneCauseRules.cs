using ClimateLens.Analysis.Reviews;
using ClimateLens.Analysis.Text;
using ClimateLens.Nursery.Languages;

namespace ClimateLens.Analysis.Advice;

/// <summary>One cause of error that rules how sure the risk hours are: what to calibrate or measure first.</summary>
internal static class OneCauseRules
{
    public const string Id = "oneCauseRules";

    private const double Half = 0.5; // of the variance; choice of this project
    private const double WideHours = 12; // range from which on it matters; choice of this project

    public static Candidate? Of(Evidence evidence)
    {
        if (evidence.Risk.Total is not Estimate total || total.High - total.Low < WideHours || evidence.Risk.Errors is not [{ Share: >= Half } first, ..])
        {
            return null;
        }

        (string what, string action) = Words(first.Cause);
        return new Candidate(
            Id,
            0,
            Phrase.Of($"Risk hours lie anywhere from {Say.Number(total.Low)} to {Say.Number(total.High)}, and most of that doubt comes from one thing: {what}."),
            action,
            Phrase.Of("Shares of the error are good to about a tenth."),
            [.. evidence.Risk.Errors.Take(3).Select(e => Phrase.Of($"{Capital(Words(e.Cause).What)}: ±{Say.Number(e.Hours, 1)} h, {Say.Number(100 * e.Share, 0)} % of the error."))]);
    }

    private static (string What, string Action) Words(string cause) => cause switch
    {
        "airTemperature" => (Phrase.Of("the accuracy of the temperature sensor"), Phrase.Of("Check the temperature sensor against a good thermometer in moving, shaded air, and state its accuracy in the nursery file ([[house.sensor]]).")),
        "relativeHumidity" => (Phrase.Of("the accuracy of the humidity sensor"), Phrase.Of("Check the humidity sensor against a saturated-salt jar or a wet-bulb psychrometer, and state its accuracy in the nursery file ([[house.sensor]]).")),
        "leafTemperature" => (Phrase.Of("the temperature of the leaves"), Phrase.Of("Point a leaf-temperature sensor at the crop, or log outside temperature, wind and screen position with the house.")),
        "canopyTemperature" or "canopyHumidity" => (Phrase.Of("the air among the leaves, which no sensor measures"), Phrase.Of("Hang a temperature and humidity sensor between the plants and name its columns canopyTemperature and canopyHumidity.")),
        "cover" => (Phrase.Of("how far the crop has closed"), Phrase.Of("Measure the width of ten plants this week and record it (plant widths); add the spacing to the nursery file.")),
        _ => (Phrase.Of("how fast wet leaves dry"), Phrase.Of("A leaf-wetness sensor among the plants would tell how long they stay wet.")),
    };

    private static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];
}
