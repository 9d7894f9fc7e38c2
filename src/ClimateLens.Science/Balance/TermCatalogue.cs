namespace ClimateLens.Science.Balance;

/// <summary>Unit, physical bounds and source of each parameter of the balance.</summary>
public static class TermCatalogue
{
    private static readonly TermInfo[] Infos =
    [
        new(BalanceTerm.SunTranspiration, "g/(m² h) per W/m²", 0, 1.47, 0.5,
            "all of the sun turned to vapour, 3600/2450 J/g [FAO56]; form [BAILLE94] (memory)"),
        new(BalanceTerm.AirTranspiration, "m/h", 0, 80, 5,
            "3600 · 2 L/(r_e + r_i) with L 4, r_e 200 and r_i 160 s/m at most [STANGHELLINI87] (memory); at night 2 to 7 by [SEGINER90] (abstract)"),
        new(BalanceTerm.Leak, "m/h", 0.05, 12, 2, "up to 3 changes an hour of a house 4 m high [EP406] (memory)"),
        new(BalanceTerm.WindLeak, "m/h per m/s", 0, 2, 0.3, "half a change an hour for each m/s at most [BAPTISTA99] (memory)"),
        new(BalanceTerm.VentStill, "m/h", 0, 200, 20, "50 changes an hour at most [BAPTISTA99] (memory)"),
        new(BalanceTerm.VentWind, "m/h per m/s", 0, 60, 8, "15 changes an hour for each m/s at most [BAPTISTA99] (memory)"),
        new(BalanceTerm.Fan, "m/h", 0, 400, 100, "fans are laid out for about one change a minute, 240 m/h [EP406] (memory)"),
        new(BalanceTerm.CoverCondensation, "m/h", 0, 40, 10,
            "3600 · 1.7 |Δt|^⅓/1210 with 10 K is 11, and as much again for slope and draught [BOT83] (memory)"),
        new(BalanceTerm.LeafStore, "g/m²", 1, 1500, 300, "0.2 mm on each side of three layers of leaves, 1200 g/m², and a wet floor (memory)"),
        new(BalanceTerm.LeafEvaporation, "m/h", 0.5, 100, 15,
            "Penman's rule for wet leaves in 18 °C, r_e 250 s/m, gives 9 for each layer of leaves [PENMAN48]; 100 with six layers in a draught"),
        new(BalanceTerm.SunDrying, "g/m³ per W/m²", 0, 0.1, 0.02,
            "Penman's s Rn/(2 ρ cp/r_e) at 18 °C, r_e 250 s/m: 0.11 for each W/m² of Rn on a leaf area, of which leaves in the shade get a tenth [PENMAN48]"),
        new(BalanceTerm.FloorStore, "g/m²", 1, 3000, 300, "3 mm stand on a floor that does not drain (no source, choice of this project)"),
        new(BalanceTerm.FloorEvaporation, "m/h", 0.5, 40, 5, "3600 · 3.2 to 12 W/(m² K)/1210 [BOT83] (memory)"),
    ];

    /// <summary>All parameters, in the order of <see cref="BalanceTerm"/>.</summary>
    public static IReadOnlyList<TermInfo> All => Infos;

    /// <summary>One parameter.</summary>
    /// <param name="term">Which.</param>
    public static TermInfo Of(BalanceTerm term) => Infos[(int)term];

    /// <summary>Typical values of all parameters.</summary>
    public static double[] Typical() => Array.ConvertAll(Infos, info => info.Typical);
}
