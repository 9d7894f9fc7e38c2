namespace ClimateLens.Reports.Notebooks;

/// <summary>A parameter that a notebook may give a cell.</summary>
/// <param name="Name">Key, in camelCase.</param>
/// <param name="Kind">What it holds.</param>
/// <param name="What">What it does, in a few words.</param>
/// <param name="Low">Least number; 0 for what is none.</param>
/// <param name="High">Largest number; 0 for what is none.</param>
public sealed record CellParameter(string Name, ParameterKind Kind, string What, double Low = 0, double High = 0)
{
    /// <summary>Every cell takes another heading.</summary>
    public static CellParameter Heading { get; } = new("heading", ParameterKind.Text, "heading in place of the cell's own");
}

/// <summary>What a parameter holds.</summary>
public enum ParameterKind
{
    /// <summary>Text.</summary>
    Text,

    /// <summary>A whole number.</summary>
    WholeNumber,

    /// <summary><c>true</c> or <c>false</c>.</summary>
    Flag,
}
