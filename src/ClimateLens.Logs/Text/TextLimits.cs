namespace ClimateLens.Logs.Text;

/// <summary>Bounds that keep memory in hand whatever a file holds.</summary>
internal static class TextLimits
{
    /// <summary>Largest file. [bytes]</summary>
    public const long FileBytes = 4L << 30;

    /// <summary>Longest row; a longer one ends the reading of the file. [bytes of UTF-8]</summary>
    public const int RowBytes = 64 << 20;

    /// <summary>Longest field; a row with a longer one is set aside. [bytes of UTF-8]</summary>
    public const int FieldBytes = 64 << 10;
}
