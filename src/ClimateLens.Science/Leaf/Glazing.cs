namespace ClimateLens.Science.Leaf;

/// <summary>The cover of a house, for its temperature.</summary>
/// <param name="Emissivity">Long-wave emissivity of both faces, above 0 to 1. [1]</param>
/// <param name="LongWaveTransmission">Share of long-wave radiation let through, 0 to below 1. [1]</param>
/// <param name="ConductanceWm2K">Heat conductance from face to face; infinite for a single sheet, else 0.1 and more. [W/(m² K)]</param>
/// <remarks>All presets are from memory; kinds and makes differ by 0.05 in emissivity and 20 % in conductance.</remarks>
public readonly record struct Glazing(double Emissivity, double LongWaveTransmission, double ConductanceWm2K)
{
    /// <summary>One pane of glass.</summary>
    public static Glazing SingleGlass { get; } = new(0.84, 0, double.PositiveInfinity);

    /// <summary>Two panes, or a twin-wall sheet: 5 W/(m² K) from face to face.</summary>
    public static Glazing TwinPane { get; } = new(0.84, 0, 5);

    /// <summary>One film of polyethylene that holds back most of the heat radiation.</summary>
    public static Glazing ThermicFilm { get; } = new(0.65, 0.25, double.PositiveInfinity);

    /// <summary>Two such films blown apart: 6 W/(m² K) from film to film.</summary>
    public static Glazing DoubleThermicFilm { get; } = new(0.75, 0.1, 6);

    internal Glazing Checked()
    {
        Guard.AboveUpTo(Guard.Finite(Emissivity), 0, 1, "(share)", nameof(Emissivity));
        Guard.Within(Guard.Finite(LongWaveTransmission), 0, 1 - Emissivity, "(share, with the emissivity at most 1)", nameof(LongWaveTransmission));
        if (!(ConductanceWm2K >= 0.1))
        {
            Guard.Within(Guard.Finite(ConductanceWm2K), 0.1, double.PositiveInfinity, "W/(m² K)", nameof(ConductanceWm2K));
        }

        return this;
    }
}
