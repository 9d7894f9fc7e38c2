namespace ClimateLens.Logs.Tests.Made;

/// <summary>Headers as people of seven countries write them, chosen without a look at the dictionary.</summary>
internal static class MakerWords
{
    /// <summary>Languages: English, Dutch, German, Danish, French, Spanish, Italian.</summary>
    public static readonly string[] Languages = ["en", "nl", "de", "da", "fr", "es", "it"];

    /// <summary>Headers of date and time together, of the date, of the time of day.</summary>
    public static readonly Dictionary<string, string[]> Times = new()
    {
        ["en"] = ["Time", "Date", "Time"],
        ["nl"] = ["Tijdstip", "Datum", "Tijd"],
        ["de"] = ["Zeitpunkt", "Datum", "Uhrzeit"],
        ["da"] = ["Tidspunkt", "Dato", "Klokken"],
        ["fr"] = ["Date/heure", "Date", "Heure"],
        ["es"] = ["Fecha y hora", "Fecha", "Hora"],
        ["it"] = ["Data e ora", "Data", "Ora"],
    };

    /// <summary>Headers of a channel, several ways of writing each.</summary>
    public static readonly Dictionary<string, Dictionary<string, string[]>> Channels = new()
    {
        ["airTemperature"] = new()
        {
            ["en"] = ["Air temperature", "Temp", "Greenhouse temp.", "Measured temperature"], ["nl"] = ["Kastemperatuur", "Temperatuur kas", "Luchttemperatuur"],
            ["de"] = ["Lufttemperatur", "Temperatur innen", "Innentemperatur", "Gewächshaustemperatur"], ["da"] = ["Lufttemperatur", "Temperatur", "Rumtemperatur"],
            ["fr"] = ["Température de l'air", "Température serre", "Temp. intérieure"], ["es"] = ["Temperatura interior", "Temperatura aire", "Temp. invernadero"],
            ["it"] = ["Temperatura aria", "Temperatura interna", "Temperatura serra"],
        },
        ["relativeHumidity"] = new()
        {
            ["en"] = ["RH", "Relative humidity", "Humidity"], ["nl"] = ["RV", "Relatieve vochtigheid", "Luchtvochtigheid"], ["de"] = ["Rel. Luftfeuchte", "Luftfeuchtigkeit", "RLF"],
            ["da"] = ["Luftfugtighed", "Relativ fugtighed", "RF"], ["fr"] = ["Humidité relative", "Hygrométrie", "HR"], ["es"] = ["Humedad relativa", "HR", "Humedad"], ["it"] = ["Umidità relativa", "UR", "Umidità"],
        },
        ["vapourPressureDeficit"] = new()
        {
            ["en"] = ["VPD", "Vapour pressure deficit"], ["nl"] = ["VPD", "Dampdrukdeficit"], ["de"] = ["VPD", "Dampfdruckdefizit"], ["da"] = ["VPD", "Damptryksdeficit"], ["fr"] = ["VPD", "Déficit de pression de vapeur"],
            ["es"] = ["DPV", "Déficit de presión de vapor"], ["it"] = ["VPD", "Deficit di pressione di vapore"],
        },
        ["humidityDeficit"] = new()
        {
            ["en"] = ["Humidity deficit"], ["nl"] = ["VD", "Vochtdeficit"], ["de"] = ["Sättigungsdefizit", "Feuchtedefizit"], ["da"] = ["Fugtighedsdeficit"], ["fr"] = ["Déficit hydrique"], ["es"] = ["Déficit de humedad"], ["it"] = ["Deficit di umidità"],
        },
        ["dewPoint"] = new()
        {
            ["en"] = ["Dew point", "Dewpoint temperature"], ["nl"] = ["Dauwpunt"], ["de"] = ["Taupunkt"], ["da"] = ["Dugpunkt"], ["fr"] = ["Point de rosée"], ["es"] = ["Punto de rocío"], ["it"] = ["Punto di rugiada"],
        },
        ["carbonDioxide"] = new()
        {
            ["en"] = ["CO2", "CO2 level"], ["nl"] = ["CO2", "CO2-gehalte"], ["de"] = ["CO2", "CO2-Gehalt"], ["da"] = ["CO2", "CO2 niveau"], ["fr"] = ["CO2", "Teneur en CO2"], ["es"] = ["CO2", "Nivel CO2"], ["it"] = ["CO2", "Livello CO2"],
        },
        ["lee"] = new()
        {
            ["en"] = ["Vent lee", "Vents lee side"], ["nl"] = ["Raamstand luwzijde", "Luchtraam luw"], ["de"] = ["Lüftung Lee", "Lüftungsklappe Leeseite"], ["da"] = ["Vindue læside", "Ventilation position læ"],
            ["fr"] = ["Ouvrant sous le vent"], ["es"] = ["Ventana sotavento"], ["it"] = ["Finestra sottovento"],
        },
        ["wind"] = new()
        {
            ["en"] = ["Vent wind", "Vents wind side"], ["nl"] = ["Raamstand windzijde", "Luchtraam wind"], ["de"] = ["Lüftung Luv", "Lüftungsklappe Luvseite"], ["da"] = ["Vindue vindside", "Ventilation position vind"],
            ["fr"] = ["Ouvrant au vent"], ["es"] = ["Ventana barlovento"], ["it"] = ["Finestra sopravvento"],
        },
        ["screenPosition"] = new()
        {
            ["en"] = ["Screen", "Energy screen position"], ["nl"] = ["Schermstand", "Energiescherm", "Doek"], ["de"] = ["Energieschirm", "Schattierung"], ["da"] = ["Gardin", "Gardin position"], ["fr"] = ["Écran thermique", "Ombrage"],
            ["es"] = ["Pantalla térmica", "Pantalla"], ["it"] = ["Schermo termico", "Ombreggiamento"],
        },
        ["globalRadiation"] = new()
        {
            ["en"] = ["Global radiation", "Solar radiation"], ["nl"] = ["Globale straling", "Straling buiten"], ["de"] = ["Globalstrahlung", "Strahlung außen"], ["da"] = ["Solindstråling", "Globalstråling"],
            ["fr"] = ["Rayonnement global", "Rayonnement solaire"], ["es"] = ["Radiación global", "Radiación solar"], ["it"] = ["Radiazione globale", "Radiazione solare"],
        },
        ["outsideTemperature"] = new()
        {
            ["en"] = ["Outside temperature", "Outdoor temp"], ["nl"] = ["Buitentemperatuur", "Temperatuur buiten"], ["de"] = ["Außentemperatur", "Temperatur außen"], ["da"] = ["Udetemperatur", "Temperatur ude"],
            ["fr"] = ["Température extérieure"], ["es"] = ["Temperatura exterior"], ["it"] = ["Temperatura esterna"],
        },
        ["heatingPipeTemperature"] = new()
        {
            ["en"] = ["Pipe temperature", "Heating pipe"], ["nl"] = ["Buistemperatuur", "Buis temp."], ["de"] = ["Rohrtemperatur", "Heizrohr Temperatur"], ["da"] = ["Rørtemperatur"], ["fr"] = ["Température tube", "Température tuyau"],
            ["es"] = ["Temperatura tubería", "Temp. tubo"], ["it"] = ["Temperatura tubo", "Temperatura tubazione"],
        },
        ["heatingSetPoint"] = new()
        {
            ["en"] = ["Heating setpoint", "Heat set"], ["nl"] = ["Ingestelde stooktemperatuur", "Setpoint verwarming"], ["de"] = ["Heizung Sollwert", "Solltemperatur Heizung"], ["da"] = ["Varme sætpunkt", "Setpunkt varme"],
            ["fr"] = ["Consigne chauffage"], ["es"] = ["Consigna calefacción"], ["it"] = ["Setpoint riscaldamento"],
        },
        ["windSpeed"] = new()
        {
            ["en"] = ["Wind speed", "Wind"], ["nl"] = ["Windsnelheid"], ["de"] = ["Windgeschwindigkeit"], ["da"] = ["Vindhastighed"], ["fr"] = ["Vitesse du vent"], ["es"] = ["Velocidad del viento"], ["it"] = ["Velocità vento"],
        },
    };

    /// <summary>Columns that are no channel.</summary>
    public static readonly Dictionary<string, string[]> Others = new()
    {
        ["en"] = ["Alarm", "Min temperature", "EC"], ["nl"] = ["Storing", "Minimum temperatuur", "Stralingssom"], ["de"] = ["Störung", "Max. Temperatur", "Strahlungssumme"], ["da"] = ["Alarm", "CO2 krav", "Lyssum"],
        ["fr"] = ["Défaut", "Température max.", "Conductivité EC"], ["es"] = ["Alarma", "Temperatura mínima", "pH"], ["it"] = ["Allarme", "Temperatura massima", "EC"],
    };

    /// <summary>Names of months, short.</summary>
    public static readonly Dictionary<string, string[]> Months = new()
    {
        ["en"] = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"],
        ["nl"] = ["jan", "feb", "mrt", "apr", "mei", "jun", "jul", "aug", "sep", "okt", "nov", "dec"],
        ["de"] = ["Jan", "Feb", "Mär", "Apr", "Mai", "Jun", "Jul", "Aug", "Sep", "Okt", "Nov", "Dez"],
        ["da"] = ["jan", "feb", "mar", "apr", "maj", "jun", "jul", "aug", "sep", "okt", "nov", "dec"],
        ["fr"] = ["janv.", "févr.", "mars", "avr.", "mai", "juin", "juil.", "août", "sept.", "oct.", "nov.", "déc."],
        ["es"] = ["ene", "feb", "mar", "abr", "may", "jun", "jul", "ago", "sep", "oct", "nov", "dic"],
        ["it"] = ["gen", "feb", "mar", "apr", "mag", "giu", "lug", "ago", "set", "ott", "nov", "dic"],
    };
}
