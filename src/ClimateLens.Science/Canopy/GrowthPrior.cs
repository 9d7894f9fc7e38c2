namespace ClimateLens.Science.Canopy;

/// <summary>What is believed of a crop's growth before a plant is measured.</summary>
/// <param name="Crop">Name of the crop, in small letters.</param>
/// <param name="CountedFrom">From what the days are counted: "pinch" or "potting".</param>
/// <param name="Growth">Best guess of the curve.</param>
/// <param name="LargestError">Standard error of the natural logarithm of the largest width. [1]</param>
/// <param name="RateError">Standard error of the natural logarithm of the rate. [1]</param>
/// <param name="HalfwayErrorDays">Standard error of the half-way day. [d]</param>
/// <param name="Evidence">How each number is known.</param>
/// <remarks>
/// No published widths over time were found for any of these crops: every number is from memory or common practice, and the errors are
/// wide on purpose. Three measured widths outweigh them (GrowthFitTests).
/// </remarks>
public sealed record GrowthPrior(
    string Crop, string CountedFrom, DiameterGrowth Growth, double LargestError, double RateError, double HalfwayErrorDays, string Evidence)
{
    private const string Memory = "width, rate and half-way day from memory; no source found";

    /// <summary>Pinched poinsettia in a pot of 15 to 17 cm.</summary>
    /// <remarks>Closing 4 to 6 weeks after the pinch is from memory; the 10 to 12 weeks from pinch to sale are cited [UFPOIN04].</remarks>
    public static GrowthPrior Poinsettia { get; } = new(
        "poinsettia", "pinch", new(40, 0.09, 25), 0.25, 0.35, 10,
        "width, rate and half-way day from memory (canopy closes 4 to 6 weeks after the pinch); 10 to 12 weeks from pinch to sale [UFPOIN04]");

    /// <summary>Pinched pot chrysanthemum.</summary>
    public static GrowthPrior Chrysanthemum { get; } = new("chrysanthemum", "pinch", new(35, 0.09, 28), 0.25, 0.35, 10, Memory);

    /// <summary>Cyclamen in a pot of 10 to 12 cm.</summary>
    public static GrowthPrior Cyclamen { get; } = new("cyclamen", "potting", new(30, 0.06, 45), 0.25, 0.35, 14, Memory);

    /// <summary>Geranium (Pelargonium) in a pot of 10 to 12 cm.</summary>
    public static GrowthPrior Geranium { get; } = new("geranium", "potting", new(30, 0.09, 28), 0.25, 0.35, 10, Memory);

    /// <summary>Bedding plants in packs or small pots.</summary>
    public static GrowthPrior Bedding { get; } = new("bedding", "potting", new(18, 0.12, 20), 0.35, 0.4, 10, Memory);

    /// <summary>A pot crop of which nothing is known: wide enough for all of the others.</summary>
    public static GrowthPrior AnyPotCrop { get; } = new("any pot crop", "potting", new(30, 0.09, 30), 0.5, 0.5, 20, "assumed, choice of this project: wide enough for all crops listed");

    /// <summary>All crops that have a prior.</summary>
    public static IReadOnlyList<GrowthPrior> All { get; } = [Poinsettia, Chrysanthemum, Cyclamen, Geranium, Bedding];

    /// <summary>The prior of a crop, or null where none is known.</summary>
    /// <param name="crop">Name of the crop, in any case.</param>
    public static GrowthPrior? Of(string crop) =>
        All.FirstOrDefault(prior => prior.Crop.Equals(crop, StringComparison.OrdinalIgnoreCase));
}
