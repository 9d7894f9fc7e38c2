namespace ClimateLens.Logs;

/// <summary>Another run holds the store. The command line answers with exit code 75: try again later.</summary>
public sealed class StoreLockedException : IOException
{
    /// <summary>The usual message.</summary>
    public StoreLockedException()
        : this("Another run holds the store.")
    {
    }

    /// <summary>A message.</summary>
    public StoreLockedException(string message)
        : base(message)
    {
    }

    /// <summary>A message and its cause.</summary>
    public StoreLockedException(string message, Exception innerException)
        : base(message, innerException)
    {
    }
}

/// <summary>The store's folder cannot be written or read. The command line answers with exit code 73 or 74.</summary>
public sealed class StoreUnavailableException : IOException
{
    /// <summary>The usual message.</summary>
    public StoreUnavailableException()
        : this("The store cannot be written.")
    {
    }

    /// <summary>A message.</summary>
    public StoreUnavailableException(string message)
        : base(message)
    {
    }

    /// <summary>A message and its cause.</summary>
    public StoreUnavailableException(string message, Exception innerException)
        : base(message, innerException)
    {
    }
}
