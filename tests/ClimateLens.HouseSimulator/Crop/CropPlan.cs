using NodaTime;

namespace ClimateLens.HouseSimulator.Crop;

/// <summary>Pots set square at a distance from noon of a day on.</summary>
public readonly record struct Spacing(LocalDate From, double DistanceM);

/// <summary>Potted cyclamen: how wide plants get and how much of the floor they cover.</summary>
/// <param name="Potted">Day of potting.</param>
/// <param name="FinalWidthM">Width that a plant grows towards. [m]</param>
/// <param name="Steps">Spacing steps in time order; the first holds from the start.</param>
public sealed record CropPlan(LocalDate Potted, double FinalWidthM, IReadOnlyList<Spacing> Steps)
{
    public const double PotDiameterM = 0.13;
    private const double YoungWidthM = 0.08, MiddleDay = 50, SlopeDays = 13;

    /// <summary>Area of one pot's rim. [m²]</summary>
    public static double PotAreaM2 => Math.PI / 4 * PotDiameterM * PotDiameterM;

    /// <summary>Pots a square metre of bench. [1/m²]</summary>
    public double DensityPerM2(LocalDateTime at)
    {
        double distance = Steps[0].DistanceM;
        foreach (Spacing step in Steps)
        {
            if (at >= step.From.At(LocalTime.Noon))
            {
                distance = step.DistanceM;
            }
        }

        return 1 / (distance * distance);
    }

    /// <summary>Mean plant width: a logistic curve over the days since potting. [m]</summary>
    public double WidthM(LocalDateTime at)
    {
        double days = Period.Between(Potted.AtMidnight(), at, PeriodUnits.Hours).Hours / 24.0;
        return YoungWidthM + ((FinalWidthM - YoungWidthM) * Numbers.Portable.Logistic((days - MiddleDay) / SlopeDays));
    }

    /// <summary>Cover and leaf area at a time.</summary>
    /// <param name="at">Local time.</param>
    /// <param name="leafAreaFactor">Leaf area over that of the usual crop of that width. [1]</param>
    public CanopyState At(LocalDateTime at, double leafAreaFactor = 1)
    {
        double width = WidthM(at), density = DensityPerM2(at);
        double discs = Math.PI / 4 * width * width * density;
        double square = discs * discs;
        double cover = discs / Numbers.Portable.FourthRoot(1 + (square * square));
        return new CanopyState(width, density, cover, leafAreaFactor * 2.9 * cover * (1 + (0.3 * discs)));
    }
}

/// <summary>The stand at one time.</summary>
/// <param name="WidthM">Mean plant width. [m]</param>
/// <param name="DensityPerM2">Pots a square metre. [1/m²]</param>
/// <param name="Cover">Share of the floor under leaves: rises as discs that grow into each other. [1]</param>
/// <param name="LeafAreaIndex">Leaf area over floor area. [1]</param>
public readonly record struct CanopyState(double WidthM, double DensityPerM2, double Cover, double LeafAreaIndex);
