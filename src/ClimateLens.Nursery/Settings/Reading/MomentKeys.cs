using ClimateLens.Nursery.Problems;
using NodaTime;

namespace ClimateLens.Nursery.Settings.Reading;

/// <summary>Keys that hold a time by the clock of a file.</summary>
internal static class MomentKeys
{
    /// <summary>The time, or null when it is left out or wrong; a day alone stands for its midnight.</summary>
    public static LocalDateTime? Moment(this TableReader reader, string key, string example)
    {
        switch (reader.Find(key)?.Value)
        {
            case null:
                reader.Missing(key, example);
                return null;
            case TomlScalar { Value: LocalDateTime moment }:
                return moment;
            case TomlScalar { Value: LocalDate day }:
                return day.AtMidnight();
            case { } other:
                string written = other is TomlScalar { Value: string text } ? $"without quotes, for example {key} = {example}; it is now {Excerpt.Quoted(text)}" : $"{key} = {example}, by the clock of the file and without an offset";
                reader.WrongType(key, other, "a date and time", $"write it {written}.");
                return null;
        }
    }
}
