
namespace ClimateLens.Logs.Describe.Drafting;

/// <summary>The house of an export.</summary>
internal static class HouseChoice
{
    /// <summary>The key; null for an export that serves the whole nursery.</summary>
    /// <param name="tag">The house that the file speaks of, or null.</param>
    /// <param name="isWeather">Whether the file is of a weather station.</param>
    /// <param name="options">What the user said.</param>
    public static DraftKey? Of(string? tag, bool isWeather, DescribeOptions options)
    {
        if (options.House is { } given)
        {
            return DraftKey.Of("house", TomlText.Quote(given));
        }

        if (isWeather)
        {
            return null;
        }

        if (options.Houses is not { } houses)
        {
            return tag is not null
                ? DraftKey.Of("house", TomlText.Quote(tag), Sureness.Likely, "the file speaks of it; write the id of your [[house]] if it is called otherwise")
                : DraftKey.Of("house", "\"1\"", null, "not in the file: write the id of your [[house]]");
        }

        string? same = houses.FirstOrDefault(id => string.Equals(id, tag, StringComparison.OrdinalIgnoreCase));
        if (same is not null)
        {
            return DraftKey.Of("house", TomlText.Quote(same), Sureness.Likely, "the file speaks of it");
        }

        return houses.Length == 1
            ? DraftKey.Of("house", TomlText.Quote(houses[0]), Sureness.Likely, "the only house of the nursery file")
            : new DraftKey("house", [.. houses.Select(TomlText.Quote)], Sureness.Unsure, "which house is it? --house ID says it as well") { Placeholder = "\"?\"" };
    }
}
