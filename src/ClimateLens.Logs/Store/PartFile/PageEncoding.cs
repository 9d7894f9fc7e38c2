namespace ClimateLens.Logs.Store.PartFile;

/// <summary>How values stand in a page, by Parquet's numbers [PARQUET].</summary>
internal enum PageEncoding
{
    /// <summary>One behind the other.</summary>
    Plain = 0,

    /// <summary>Runs and packed bits.</summary>
    Runs = 3,

    /// <summary>As places in a dictionary, in runs and packed bits.</summary>
    Dictionary = 8,
}
