using ClimateLens.Analysis.Reviews;
using ClimateLens.Reports.Cells;
using ClimateLens.Reports.Publishing;

namespace ClimateLens.Reports;

/// <summary>
/// Makes the page of one house and period beside other processes that make other pages of the same site. It leaves index, feed and
/// site.json alone: what is to be known of the page lies beside it until <see cref="SitePublisher"/> next completes the site.
/// </summary>
public sealed class OnePagePublisher : IDisposable
{
    private readonly string _houseId;
    private readonly string _periodName;
    private readonly SiteFolder _site;
    private readonly SitePublisher _publisher;

    /// <summary>Opens the place of the page and holds it.</summary>
    /// <param name="siteFolder">The site's folder; made when it does not exist.</param>
    /// <param name="options">How the page is to read.</param>
    /// <param name="houseId">House id.</param>
    /// <param name="periodName">Folder name of the period, such as <c>2025-W42</c>.</param>
    /// <exception cref="PageHeldException">Another process makes this page.</exception>
    /// <exception cref="SiteUnavailableException">The folder cannot be written or read.</exception>
    public OnePagePublisher(string siteFolder, PageOptions options, string houseId, string periodName)
    {
        ArgumentException.ThrowIfNullOrEmpty(siteFolder);
        ArgumentNullException.ThrowIfNull(options);
        (_houseId, _periodName) = (houseId, periodName);
        string folder = SitePublisher.FolderOf(houseId, periodName);
        _site = SiteFolder.ForOnePage(siteFolder, folder);
        try
        {
            _publisher = new SitePublisher(_site, options, folder);
        }
        catch
        {
            _site.Dispose();
            throw;
        }
    }

    /// <summary>The page as it stands, where it was made from this input, by this program and with these options; else null.</summary>
    /// <param name="inputHash">Hash of the input that a page made now would show.</param>
    public HouseWeekSummary? CurrentOf(string inputHash)
        => _publisher.IsCurrent(_houseId, _periodName, inputHash) ? _publisher.EntryOf(_houseId, _periodName)!.Summary : null;

    /// <summary>The review behind the page, where its pages can be made again from it; else null.</summary>
    /// <param name="inputHash">Hash of the input that a review made now would have.</param>
    public Review? ReviewOf(string inputHash) => _publisher.ReviewOf(_houseId, _periodName, inputHash);

    /// <summary>Makes the page and its data files, puts them in place, and what is to be known of it beside them.</summary>
    /// <param name="review">A review of the house and period.</param>
    /// <param name="trace">What the store tells of its input; empty where that is not known.</param>
    public PublishedPage Publish(Review review, string trace = "")
    {
        ArgumentNullException.ThrowIfNull(review);
        return review.House.Id == _houseId && PeriodWords.FolderName(review.Period) == _periodName
            ? _publisher.Publish(review, trace)
            : throw new ArgumentException($"The review is not of {_houseId}, {_periodName}.", nameof(review));
    }

    /// <summary>Gives the page free.</summary>
    public void Dispose() => _site.Dispose();
}
