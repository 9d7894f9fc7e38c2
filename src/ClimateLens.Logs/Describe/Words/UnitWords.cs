using System.Collections.Frozen;
using System.Text;
using ClimateLens.Nursery.Channels;

namespace ClimateLens.Logs.Describe.Words;

/// <summary>A unit as people write it.</summary>
/// <param name="Code">Code for the nursery file; empty where no channel has such a unit.</param>
/// <param name="Quantities">What it may measure; empty where no channel has it.</param>
/// <param name="Written">As it stands in the file.</param>
internal sealed record UnitMeaning(string Code, IReadOnlyList<Quantity> Quantities, string Written)
{
    /// <summary>Where it stands, for messages.</summary>
    public string Place { get; init; } = "in the header";

    /// <summary>Whether it says that it is of relative humidity: "%RH", "% rF".</summary>
    public bool NamesHumidity => Measures(Quantity.RelativeHumidity) && Written.Any(char.IsLetter) && ((string[])["rh", "rv", "rf", "hr", "ur", "rlf", "rel"]).Any(w => Written.Contains(w, StringComparison.OrdinalIgnoreCase));

    /// <summary>Whether it can be the unit of a quantity.</summary>
    public bool Measures(Quantity quantity) => Quantities.Contains(quantity);
}

/// <summary>Units as people write them in headers; capitals, blanks and the signs of powers do not count.</summary>
internal static class UnitWords
{
    private static readonly (string Code, Quantity[] Quantities, string Words)[] Table =
    [
        ("Cel", [Quantity.Temperature], "degc deg_c celsius c gradc gradenc graderc grc oc ocelsius degcelsius cel gradicentigradi gradoc gradosc degresc gradic degrec °c grad degree_c degrees_c"),
        ("[degF]", [Quantity.Temperature], "degf deg_f f fahrenheit of degfahrenheit [degf] gradf"),
        ("K", [Quantity.Temperature], "kelvin degk"),
        ("%", [Quantity.RelativeHumidity, Quantity.Percent], "% pct percent procent prozent proz proc pourcent pourcents porcento porciento percentage %rh %rv %rlf %rf %hr %ur rh% rv% %vwc %vol vol% %open %offen %abn %relf %rel %max"),
        ("[ppm]", [Quantity.CarbonDioxide], "ppm vpm ppmv umol/mol ppmco2 umolmol-1 [ppm]"),
        ("kPa", [Quantity.Pressure], "kpa kilopascal"),
        ("hPa", [Quantity.Pressure], "hpa hektopascal hectopascal"),
        ("mbar", [Quantity.Pressure], "mbar mb millibar"),
        ("Pa", [Quantity.Pressure], "pa pascal"),
        ("bar", [Quantity.Pressure], "bar"),
        ("[in_i'Hg]", [Quantity.Pressure], "inhg inchhg inchesofmercury"),
        ("mm[Hg]", [Quantity.Pressure], "mmhg torr"),
        ("[psi]", [Quantity.Pressure], "psi"),
        ("g/m3", [Quantity.VapourDensity], "g/m3 gr/m3 gm-3 gram/m3 g.m-3 gm3 gperm3"),
        ("W/m2", [Quantity.Irradiance], "w/m2 wm-2 w.m-2 watt/m2 wm2 w/qm watt/qm w/sqm watts/m2 w/m² wattm-2 watt/m"),
        ("kW/m2", [Quantity.Irradiance], "kw/m2 kwm-2"),
        ("umol/m2/s", [Quantity.PhotonFlux], "umol/m2/s umolm-2s-1 umol/m2s umol/s/m2 umol/(m2s) umol/(sm2) umol/(m2*s) umols-1m-2 umol umols umol/sm2 umol/m2 umolphotonsm-2s-1 ue/m2/s uem-2s-1 umol.m-2.s-1 umolm2s1 umolm2s mikromol/m2/s micromol/m2/s micromolm-2s-1"),
        ("lx", [Quantity.Illuminance], "lx lux"),
        ("klx", [Quantity.Illuminance], "klx klux kilolux"),
        ("[ft_i]-cd", [Quantity.Illuminance], "fc footcandle footcandles ftcd ft-cd ftc"),
        ("m/s", [Quantity.Speed], "m/s ms-1 m.s-1 m/sec meter/sec m/sek mps"),
        ("km/h", [Quantity.Speed], "km/h kmh km/u km/t kph kmh-1 km/uur km/std"),
        ("mph", [Quantity.Speed], "mph mi/h miles/h mileperhour milesperhour"),
        ("kn", [Quantity.Speed], "kn kt kts knots knot knopen knoten knob"),
        ("deg", [Quantity.Angle], "deg ° degree degrees grader graden degres grados gradi degn °n dgr"),
        ("mm", [Quantity.WaterDepth, Quantity.Length], "mm millimeter millimetre"),
        ("L/m2", [Quantity.WaterDepth], "l/m2 liter/m2 lm-2 l/qm"),
        ("in", [Quantity.WaterDepth, Quantity.Length], "in inch inches \" zoll"),
        ("L", [Quantity.Volume], "l liter litre litres liters ltr lit litri litros"),
        ("mL", [Quantity.Volume], "ml cc milliliter millilitre"),
        ("m3", [Quantity.Volume], "m3 cbm kubikmeter kuub"),
        ("gal", [Quantity.Volume], "gal gals gallon gallons"),
        ("cm", [Quantity.Length], "cm centimeter centimetre"),
        ("m", [Quantity.Length], "m meter metre"),
        ("min", [Quantity.Duration], "min mins minutes minuten minutter minuti minutos"),
        ("s", [Quantity.Duration], "s sec sek seconds seconden sekunden sekunder"),
        ("h", [Quantity.Duration], "h hr hrs hour hours uur std stunden timer"),
        ("g", [Quantity.Mass], "g gr gram gramm grams gramme"),
        ("kg", [Quantity.Mass], "kg kilo kilogram"),
        ("oz", [Quantity.Mass], "oz ounce"),
        ("1", [Quantity.Percent], "m3/m3 m3m-3 cm3/cm3 v/v fraction"),
        ("1", [Quantity.OnOff], "0/1 on/off 0-1 1/0 aan/uit an/aus ein/aus til/fra bool boolean open/dicht"),
        ("J/cm2", [Quantity.RadiantExposure], "j/cm2 jcm-2 joule/cm2 j/qcm joules/cm2"),
        ("J/m2", [Quantity.RadiantExposure], "j/m2 jm-2 joule/m2"),
        ("kJ/m2", [Quantity.RadiantExposure], "kj/m2 kjm-2"),
        ("MJ/m2", [Quantity.RadiantExposure], "mj/m2 mjm-2"),
        ("Wh/m2", [Quantity.RadiantExposure], "wh/m2 whm-2"),
        ("kWh/m2", [Quantity.RadiantExposure], "kwh/m2 kwhm-2"),
        ("J/cm2/h", [Quantity.Irradiance], "j/cm2/h j/cm2h jcm-2h-1 j/cm2/u j/cm2/std"),
        ("", [], "bft beaufort pulsen pulses pulse puls imp impulse impulsen tips tick ticks counts j/cm joule mm/h mm/hr mmh-1 mm/u mm/std in/h in/hr inch/h mol/m2 molm-2 mol/m2/d mol/m2/day mol/day kwh kw w wh ms/cm mscm-1 us/cm ds/m ms ec ph v mv volt ma a dbm db g/kg gr/kg gkg-1 kg/m3 kj/kg l/h l/min lpm m3/h kpas hz rpm k w/m m2 n/a"),
    ];

    private static readonly FrozenDictionary<string, (string Code, Quantity[] Quantities)> ByWord = Table
        .SelectMany(row => row.Words.Split(' ').Select(word => KeyValuePair.Create(Canonical(word.Replace('_', ' ')), (row.Code, row.Quantities))))
        .DistinctBy(pair => pair.Key).ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>Whether a unit is grams a kilogram of air, which no channel takes: it takes pressure and temperature to make it grams a cubic metre.</summary>
    public static bool IsOfMass(string written) => Canonical(written) is "g/kg" or "gr/kg" or "gkg-1";

    /// <summary>The unit that a text is as a whole, or null.</summary>
    public static UnitMeaning? Of(string text)
        => ByWord.TryGetValue(Canonical(text), out (string Code, Quantity[] Quantities) unit) ? new UnitMeaning(unit.Code, unit.Quantities, text.Trim()) : null;

    /// <summary>
    /// Lower case without blanks and points; degree signs, also those that a wrong code page leaves, are "deg", mu is "u".
    /// </summary>
    private static string Canonical(string text)
    {
        var word = new StringBuilder();
        string trimmed = text.Trim();
        for (int i = 0; i < trimmed.Length; i++)
        {
            char c = char.ToLowerInvariant(trimmed[i]);
            char next = i + 1 < trimmed.Length ? char.ToLowerInvariant(trimmed[i + 1]) : '\0';
            _ = c switch
            {
                'â' when next is '°' or 'º' or '²' or '³' or 'µ' => word,
                '°' or 'º' or '˚' or '¡' or '\uFFFD' or '?' or 'ø' or '˙' when next is 'c' or 'f' => word.Append("deg"),
                '°' or 'º' => word.Append("deg"),
                '²' => word.Append('2'),
                '³' => word.Append('3'),
                '¹' => word.Append('1'),
                '⁻' or '−' or '–' => word.Append('-'),
                'µ' or 'μ' => word.Append('u'),
                '℃' => word.Append("degc"),
                '℉' => word.Append("degf"),
                ' ' or '\u00A0' or '.' or '^' or '*' or '·' or '_' => word,
                _ => word.Append(c),
            };
        }

        return word.ToString();
    }
}
