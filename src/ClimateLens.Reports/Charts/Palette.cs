namespace ClimateLens.Reports.Charts;

/// <summary>
/// Colours of the charts: the categorical set of Okabe and Ito [OKABE08], which stays apart for
/// people with any common colour vision; every line also differs in its dash or has a panel of its own.
/// </summary>
internal static class Palette
{
    public const string Temperature = "#C05200"; // the set's vermillion, darkened to 4.5:1 on white
    public const string DewPoint = "#0072B2";
    public const string Humidity = "#0072B2";
    public const string Vpd = "#007A59"; // the set's green, darkened to 4.5:1 on white
    public const string Leaf = "#009E73";
    public const string Margin = "#7A3E76"; // the set's purple, darkened to 4.5:1 on white
    public const string Late = "#B34700"; // the set's vermillion, darkened to 4.5:1 on white
    public const string Watering = "#3B6E8F";
    public const string Ink = "#1d2733";
    public const string Grid = "#dfe4e8";
    public const string Night = "#e9edf3";
}
