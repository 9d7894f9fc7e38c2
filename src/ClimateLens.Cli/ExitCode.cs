namespace ClimateLens.Cli;

/// <summary>Exit codes after sysexits.h, so that schedulers know what to retry.</summary>
internal static class ExitCode
{
    public const int Done = 0;

    /// <summary>Done, but something was set aside, skipped or failed for one house; the rest is published.</summary>
    public const int DoneWithLoss = 1;

    public const int WrongCommandLine = 64;

    /// <summary>No data for what was asked.</summary>
    public const int NoData = 66;

    public const int Bug = 70;

    /// <summary>Not enough memory.</summary>
    public const int NoMemory = 71;

    public const int CannotWrite = 73;

    public const int CannotRead = 74;

    /// <summary>Another run holds the store: try again.</summary>
    public const int TryAgain = 75;

    public const int WrongNurseryFile = 78;
}
