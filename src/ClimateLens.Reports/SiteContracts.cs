using System.Collections.Immutable;
using ClimateLens.Nursery.Languages;
using ClimateLens.Nursery.Settings;

namespace ClimateLens.Reports;

/// <summary>How pages are to read.</summary>
/// <param name="Units">Units of display; data files stay SI.</param>
public sealed record PageOptions(UnitSystem Units)
{
    /// <summary>Whether each page stands as a Jupyter notebook too.</summary>
    public bool Ipynb { get; init; }

    /// <summary>Whether each page stands as one file to mail too.</summary>
    public bool SingleFile { get; init; }

    /// <summary>Folder of the store as the nursery file names it, for the queries beside the data.</summary>
    public string Store { get; init; } = "store";

    /// <summary>Language of pages.</summary>
    public Language Language { get; init; } = Language.English;

    /// <summary>Notebooks: built-in ones, and the nursery's own.</summary>
    public Notebooks.NotebookFolder Notebooks { get; init; } = Reports.Notebooks.NotebookFolder.BuiltIn;
}

/// <summary>One published house period in a line.</summary>
/// <param name="House">House id.</param>
/// <param name="HouseName">House name.</param>
/// <param name="Period">Folder name of the period, for example <c>2025-W42</c>.</param>
/// <param name="RiskHours">Risk hours, or null when not known. [h]</param>
/// <param name="Low">Low end of their range. [h]</param>
/// <param name="High">High end. [h]</param>
/// <param name="ExpectedHours">Hours of the period.</param>
/// <param name="HoursWithData">Hours with usable readings.</param>
/// <param name="SetAside">Rows set aside of the files behind the page.</param>
/// <param name="Page">Path of the page from the site's folder, with '/'.</param>
/// <param name="InputHash">Hash of the review's input.</param>
public sealed record HouseWeekSummary(
    string House,
    string HouseName,
    string Period,
    double? RiskHours,
    double? Low,
    double? High,
    int ExpectedHours,
    int HoursWithData,
    int SetAside,
    string Page,
    string InputHash);

/// <summary>A page that was written.</summary>
/// <param name="Summary">It in a line.</param>
/// <param name="IndexHtml">Full path of its index.html.</param>
/// <param name="FailedCells">Names of the cells that threw; each says so in the page. A cell that lacks data has not failed.</param>
public sealed record PublishedPage(HouseWeekSummary Summary, string IndexHtml, ImmutableArray<string> FailedCells);

/// <summary>Another process makes the same page at this moment; the command line answers with exit code 75: try again.</summary>
/// <param name="message">Which page.</param>
/// <param name="cause">The system's own error.</param>
public sealed class PageHeldException(string message, Exception cause) : Exception(message, cause);

/// <summary>A comparison that was written.</summary>
/// <param name="IndexHtml">Full path of its index.html.</param>
/// <param name="FailedCells">Names of the cells that threw.</param>
public sealed record PublishedComparison(string IndexHtml, ImmutableArray<string> FailedCells)
{
    /// <summary>What it tells.</summary>
    public required Analysis.Comparison.ComparisonReport Report { get; init; }
}

/// <summary>The site's folder cannot be written or read; the message names the file and the reason. Nothing is half-written.</summary>
/// <param name="message">What could not be done.</param>
/// <param name="cause">The system's own error.</param>
public sealed class SiteUnavailableException(string message, Exception cause) : Exception(message, cause);
