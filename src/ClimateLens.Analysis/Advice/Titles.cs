using ClimateLens.Nursery.Languages;

namespace ClimateLens.Analysis.Advice;

/// <summary>What each finding asks for, in a few words: what a grower reads on a phone first.</summary>
internal static class Titles
{
    /// <summary>The words for a finding.</summary>
    public static string Of(string id) => id switch
    {
        ClockWrong.Id => Phrase.Of("Set the clock right"),
        DryPots.Id => Phrase.Of("Look after pots that dried out"),
        FailedAndRepeated.Id => Phrase.Of("Have the cause confirmed"),
        FloodOnDullDay.Id => Phrase.Of("Flood less on dull days"),
        FloorRemembers.Id => Phrase.Of("Find out what is on the floor"),
        GradersApart.Id => Phrase.Of("Grade pots together"),
        GradersNotKnown.Id => Phrase.Of("Grade one round side by side"),
        GroupAgain.Id => Phrase.Of("Look at the rotation of groups"),
        GrowthStopped.Id => Phrase.Of("See why plants stopped growing"),
        HeatAndVentEarly.Id => Phrase.Of("Heat and vent before sunrise"),
        InsideReentry.Id => Phrase.Of("Keep people out until re-entry"),
        KeepWaterOffLeaves.Id => Phrase.Of("Keep water off the leaves"),
        LateOverheadWatering.Id => Phrase.Of("Finish overhead watering earlier"),
        LongHumidNights.Id => Phrase.Of("Dry the air at dusk and before sunrise"),
        MoistureJumps.Id => Phrase.Of("Water more evenly"),
        OneCauseRules.Id => Phrase.Of("Measure what makes it unsure"),
        RootWeatherSeen.Id => Phrase.Of("Look at the roots"),
        RoundsMissed.Id => Phrase.Of("Walk every round"),
        SensorNotTrusted.Id => Phrase.Of("Check a sensor"),
        SpaceWider.Id => Phrase.Of("Space plants wider"),
        TankOutOfLimits.Id => Phrase.Of("Watch the tank"),
        TooLittleData.Id => Phrase.Of("Get the readings back"),
        UnexplainedRisk.Id => Phrase.Of("Look at the risk hours"),
        WateredTooWet.Id => Phrase.Of("Let pots dry before watering"),
        WaterInTheMorning.Id => Phrase.Of("Water in the morning"),
        WateringsNotJudged.Id => Phrase.Of("Write down how water is given"),
        WaterOnHotLeaves.Id => Phrase.Of("Keep water off hot leaves"),
        WetAtDusk.Id => Phrase.Of("Send pots drier into the night"),
        _ => Phrase.Of("Carry on"),
    };
}
