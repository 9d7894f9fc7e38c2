using ClimateLens.Logs.SetAside;
using ClimateLens.Logs.Store;

namespace ClimateLens.Logs.Import;

/// <summary>The file that keeps what an export's import could not use; dropped unless it is kept.</summary>
internal sealed class SetAsideFile : IDisposable
{
    private readonly SourceKey _key;
    private readonly string _name;
    private readonly StoreTransaction? _transaction;
    private string _path;
    private bool _kept;

    /// <summary>Opens nothing yet.</summary>
    /// <param name="key">The source.</param>
    /// <param name="name">Name of the export.</param>
    /// <param name="sha256">Its hash, or null as long as it is not known.</param>
    /// <param name="transaction">Takes the file; null for a check.</param>
    /// <param name="problems">Where problems go.</param>
    public SetAsideFile(SourceKey key, string name, string? sha256, StoreTransaction? transaction, ProblemList problems)
    {
        (_key, _name, _transaction) = (key, name, transaction);
        _path = StorePaths.SetAside(key, name, sha256 ?? StorePaths.HashToCome);
        Log = new SetAsideLog(name, problems, transaction is null ? null : () => transaction.Create(_path));
    }

    /// <summary>Takes rows and cells.</summary>
    public SetAsideLog Log { get; }

    /// <summary>Ends the file under its lasting name; null where there is nothing in it.</summary>
    public StoredFile? Keep(string sha256)
    {
        Log.Dispose();
        if (!Log.HasFile)
        {
            return null;
        }

        string place = StorePaths.SetAside(_key, _name, sha256);
        if (place != _path)
        {
            _transaction!.Rename(_path, place);
            _path = place;
        }

        StoredFile stored = _transaction!.Seal(_path);
        _kept = true;
        return stored;
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        Log.Dispose();
        if (Log.HasFile && !_kept)
        {
            _transaction?.Discard(_path);
        }
    }
}
