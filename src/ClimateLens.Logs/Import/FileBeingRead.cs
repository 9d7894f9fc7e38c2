using ClimateLens.Logs.Readings;
using ClimateLens.Logs.SetAside;
using ClimateLens.Logs.Store;
using ClimateLens.Logs.Text;

namespace ClimateLens.Logs.Import;

/// <summary>A file while it is read into a source.</summary>
/// <param name="name">Its name.</param>
/// <param name="opened">Its text.</param>
/// <param name="sha256">Its hash; null when it is taken along with the rows.</param>
/// <param name="aside">Where goes what can't be read.</param>
/// <param name="counts">What becomes of its rows.</param>
internal sealed class FileBeingRead(string name, OpenedExport opened, string? sha256, SetAsideLog aside, RowCounts counts)
{
    /// <summary>Its name.</summary>
    public string Name => name;

    /// <summary>Its text.</summary>
    public OpenedExport Opened => opened;

    /// <summary>Where goes what can't be read.</summary>
    public SetAsideLog Aside => aside;

    /// <summary>What becomes of its rows.</summary>
    public RowCounts Counts => counts;

    /// <summary>Whether its rows may be expected in the order of time; false when they turned out not to be.</summary>
    public required bool ExpectOrder { get; init; }

    /// <summary>Whether a file of this name with other bytes was imported before.</summary>
    public required bool HasEarlierVersion { get; init; }

    /// <summary>Whether a file of this hash is there now, under whatever name.</summary>
    public required Func<string, bool> IsPresent { get; init; }

    /// <summary>Whether another file may hold a row of this time.</summary>
    public required Func<long, bool> IsElsewhere { get; init; }

    /// <summary>Its hash; null where it is taken along with the rows.</summary>
    public string? KnownHash => sha256;

    /// <summary>The file as rows name it. Where its hash is taken along with the rows, ask after reading.</summary>
    public SourceFile Source => new(sha256 ?? opened.Sha256(), name);
}

/// <summary>What became of a file.</summary>
internal enum Taken
{
    /// <summary>Its rows are in the source.</summary>
    Whole,

    /// <summary>Nothing of it can be taken, which is reported.</summary>
    Nothing,

    /// <summary>Its rows are not in the order of time: it is to be read again with <see cref="FileBeingRead.ExpectOrder"/> unset.</summary>
    Again,
}
