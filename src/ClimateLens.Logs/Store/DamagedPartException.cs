namespace ClimateLens.Logs.Store;

/// <summary>A part of the store is not what the ledger says; its source is to be built again.</summary>
internal sealed class DamagedPartException(string path, Exception? cause = null) : Exception($"The store's {path} is damaged.", cause)
{
    /// <summary>The part, relative to the store.</summary>
    public string Path { get; } = path;
}
