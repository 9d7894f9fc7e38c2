namespace ClimateLens.Science.Balance;

/// <summary>Where each step of a house stands in its local day.</summary>
public static class StepsOfDay
{
    /// <summary>Steps since midnight, one a step; a first day that is not whole ends at midnight all the same. [steps]</summary>
    /// <param name="inputs">The house.</param>
    public static int[] Of(BalanceInputs inputs)
    {
        ReadOnlySpan<int> day = inputs.Day.Span;
        int[] ofDay = new int[day.Length];
        for (int i = 0; i < ofDay.Length; i++)
        {
            ofDay[i] = i == 0 ? FirstOfDay(day, (int)Math.Round(24 / inputs.StepHours)) : day[i] == day[i - 1] ? ofDay[i - 1] + 1 : 0;
        }

        return ofDay;
    }

    private static int FirstOfDay(ReadOnlySpan<int> day, int length)
    {
        int steps = 0;
        while (steps < day.Length && day[steps] == day[0])
        {
            steps++;
        }

        return Math.Max(0, length - steps);
    }
}
