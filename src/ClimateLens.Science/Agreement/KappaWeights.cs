namespace ClimateLens.Science.Agreement;

/// <summary>How much a disagreement counts by its distance.</summary>
public enum KappaWeights
{
    /// <summary>Every disagreement alike: Cohen's unweighted kappa.</summary>
    None,

    /// <summary>By the distance of the levels.</summary>
    Linear,

    /// <summary>By the square of the distance.</summary>
    Quadratic,
}
