namespace ClimateLens.Analysis.Advice;

/// <summary>How findings rank that put no risk hours at stake, as if they had that many. Choice of this project.</summary>
internal static class Standing
{
    /// <summary>People, or a crop that may be lost at once. [h]</summary>
    public const double Stop = 200;

    /// <summary>Plants that suffer now. [h]</summary>
    public const double Crop = 12;

    /// <summary>Something to do tomorrow. [h]</summary>
    public const double Tomorrow = 6;

    /// <summary>A habit or a record that wants looking at. [h]</summary>
    public const double Habit = 2;

    /// <summary>Something to measure: no reason for alarm. [h]</summary>
    public const double Ask = 0;
}
