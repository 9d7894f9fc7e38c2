namespace ClimateLens.Science.Pots;

/// <summary>Limits of the weather in the pot that favours root rot by water moulds.</summary>
/// <remarks>
/// <para><b>Sources:</b> the species of warm houses prefers a medium over 25 °C (trade page, seen) and was severe on spinach roots at 21 and 27 °C but not at 17 °C [GS85]; the one of cool
/// ones was worst on poinsettia at 17 °C and did no serious damage at 27 °C [UMASS15]. 48 h of flooding made a resistant rhododendron susceptible to a related mould [BM81].</para>
/// <para><b>Error:</b> 25 and 20 °C are a choice of this project between those trials; other crops and species part from them. No number of this gives a chance of disease.</para>
/// </remarks>
public static class RootWeather
{
    /// <summary>Medium above this favours the warm-weather species. [°C]</summary>
    public const double WarmC = 25;

    /// <summary>Wet medium below this favours the cool-weather species. [°C]</summary>
    public const double CoolC = 20;

    /// <summary>Time at or near saturation that counts as long. [h]</summary>
    public const double LongSaturationH = 48;

    /// <summary>From this level on a pot counts as saturated: half-way from wet to saturated. Choice of this project. [level]</summary>
    public const double SaturatedLevel = 4.5;
}
