using ClimateLens.Nursery.Languages;
using ClimateLens.Nursery.Settings;
using ClimateLens.Science.Canopy;
using NodaTime;

namespace ClimateLens.Analysis.Crops;

/// <summary>From which day a crop's growth is counted, and what is believed of it before a plant is measured.</summary>
/// <param name="Date">Day 0: potting or pinch, as the crop's curve wants it.</param>
/// <param name="Prior">What is believed.</param>
/// <param name="Assumption">What was assumed about the start or the crop, as a sentence; empty when nothing was.</param>
internal sealed record GrowthStart(LocalDate Date, GrowthPrior Prior, string Assumption)
{
    /// <summary>From potting to pinch where the nursery file gives only one of them: common practice, no source. [d]</summary>
    public const int DaysToPinch = 14;

    private const double PinchErrorDays = 7;

    /// <summary>The start of a crop; null where neither potting nor pinch is given.</summary>
    public static GrowthStart? Of(CropSettings crop)
    {
        GrowthPrior prior = GrowthPrior.Of(crop.Species) ?? GrowthPrior.AnyPotCrop;
        string assumption = GrowthPrior.Of(crop.Species) is null
            ? Phrase.Of($"No growth numbers are known for {(crop.Species.Length == 0 ? Phrase.Of("this crop") : crop.Species)}: those of a pot crop of any kind are taken, with a very wide range.")
            : "";
        bool fromPinch = prior.CountedFrom == "pinch";
        if ((fromPinch ? crop.Pinched : crop.Potted) is LocalDate known)
        {
            return new(known, prior, assumption);
        }

        LocalDate? guessed = fromPinch ? crop.Potted?.PlusDays(DaysToPinch) : crop.Pinched?.PlusDays(-DaysToPinch);
        string missing = fromPinch ? Phrase.Of($"The pinch is taken to be {DaysToPinch} days after potting") : Phrase.Of($"Potting is taken to be {DaysToPinch} days before the pinch");
        return guessed is LocalDate date
            ? new(date, prior with { HalfwayErrorDays = double.Hypot(prior.HalfwayErrorDays, PinchErrorDays) }, Phrase.Of($"{missing} (common practice, no source). {assumption}").TrimEnd())
            : null;
    }
}
