namespace ClimateLens.Logs.Readings;

/// <summary>What a file says of one year of the store.</summary>
/// <param name="Rows">For each row of the file what it says of the row of that time; a time that the store lacks always adds.</param>
/// <param name="Replaced">Stamps of rows of the store that an earlier version of the file held and this one does not, ascending. [µs]</param>
internal readonly record struct YearNews(RowNews[] Rows, List<long> Replaced)
{
    /// <summary>Whether the store is to be changed.</summary>
    public bool Any => Replaced.Count > 0 || Array.Exists(Rows, news => news != RowNews.None);
}
