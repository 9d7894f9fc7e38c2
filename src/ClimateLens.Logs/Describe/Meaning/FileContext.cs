using ClimateLens.Logs.Describe.Clock;
using ClimateLens.Logs.Describe.Words;

namespace ClimateLens.Logs.Describe.Meaning;

/// <summary>What a whole file says of its columns.</summary>
/// <param name="IsWeather">Whether it is of a weather station and no house.</param>
/// <param name="Title">Words of its titles and of its name.</param>
/// <param name="StepMinutes">Usual time between rows, 0 where not known. [min]</param>
/// <param name="IsAmerican">Whether month-first dates, AM and PM, or units of the United States stand in it.</param>
internal sealed record FileContext(bool IsWeather, HeaderText Title, double StepMinutes, bool IsAmerican)
{
    /// <summary>Whether no column has a name.</summary>
    public bool IsHeaderless { get; init; }

    private static readonly Idea[] HouseIdeas =
        [Idea.Vent, Idea.Screen, Idea.Pipe, Idea.SetPoint, Idea.CarbonDioxide, Idea.Valve, Idea.Leaf, Idea.Medium, Idea.Canopy, Idea.Inside, Idea.Heating, Idea.Fog, Idea.Irrigation, Idea.House];

    private static readonly Idea[] WeatherIdeas = [Idea.Wind, Idea.Rain, Idea.Pressure, Idea.Outside, Idea.Gust];

    /// <summary>Looks at a file.</summary>
    /// <param name="study">The file.</param>
    /// <param name="time">How its time reads.</param>
    /// <param name="ofHouse">Whether the user said that it is of a house.</param>
    public static FileContext Of(Study study, TimeGuess? time, bool ofHouse)
    {
        string name = study.File.ShortName[..^Math.Min(study.File.ShortName.Length, Path.GetExtension(study.File.ShortName).Length)];
        var title = HeaderText.Of(string.Join(" ", study.Layout.Titles.Select(t => t.Length > 200 ? t[..200] : t).Append(name)));
        int[] data = [.. Enumerable.Range(0, study.Headers.Length).Where(i => study.Numbers[i].Numbers > 0 && time?.Has(i) != true)];
        int house = data.Count(i => study.Headers[i].HasAny(HouseIdeas) && !study.Headers[i].Has(Idea.Outside));
        int weather = data.Count(i => study.Headers[i].HasAny(WeatherIdeas) && !study.Headers[i].HasAny(Idea.Vent, Idea.LeeSide, Idea.WindSide));
        bool outsideOnly = data.Length > 0 && house == 0 && data.All(i => study.Headers[i].Has(Idea.Outside));
        bool called = house == 0 && title.Has(Idea.Outside) && !title.HasAny(Idea.House, Idea.Inside);
        bool both = data.Any(i => study.Headers[i].Has(Idea.Temperature) && study.Headers[i].Has(Idea.Outside)) && data.Any(i => study.Headers[i].Has(Idea.Temperature) && !study.Headers[i].HasAny(Idea.Outside, Idea.DewPoint, Idea.WetBulb));
        bool isWeather = !ofHouse && !both && (outsideOnly || called || (house == 0 && weather > 0));
        double step = (time?.Tally.Order.UsualStep().Micros ?? 0) / 60e6;
        bool american = (time is not null && time.Formats[0].Order == "Mdy") || study.Headers.Any(h => h.Unit?.Code is "[degF]" or "mph" or "in" or "[in_i'Hg]" or "gal" or "[ft_i]-cd")
            || (time is not null && time.Formats[0].Text.Contains('a'));
        return new FileContext(isWeather, title, step, american) { IsHeaderless = study.Headers.All(h => h.Raw.Length == 0) };
    }
}
