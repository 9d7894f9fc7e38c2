using System.Text;
using ClimateLens.Logs.Describe.Words;

namespace ClimateLens.Logs.Describe.Meaning;

/// <summary>Ideas as people read them.</summary>
internal static class IdeaNames
{
    /// <summary>For example "set point".</summary>
    public static string Of(Idea idea) => idea switch
    {
        Idea.CarbonDioxide => "CO2",
        Idea.VapourPressureDeficit => "VPD",
        Idea.Par => "PAR",
        Idea.Utc => "UTC",
        Idea.SetPoint => "set point",
        Idea.Medium => "growing medium",
        _ => Spelt(idea.ToString()),
    };

    private static string Spelt(string name)
    {
        var words = new StringBuilder();
        foreach (char c in name)
        {
            words.Append(char.IsUpper(c) && words.Length > 0 ? " " : "").Append(char.ToLowerInvariant(c));
        }

        return words.ToString();
    }
}
