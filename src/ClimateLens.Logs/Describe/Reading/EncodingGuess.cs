using System.Text;

namespace ClimateLens.Logs.Describe.Reading;

/// <summary>How the bytes of a file are text.</summary>
/// <param name="Name">Name in the nursery file.</param>
/// <param name="Encoding">The encoding.</param>
/// <param name="Sureness">How sure.</param>
/// <param name="Evidence">Why, for the draft.</param>
internal sealed record EncodingGuess(string Name, Encoding Encoding, Sureness Sureness, string Evidence)
{
    /// <summary>Why the file is no text at all; null where it is.</summary>
    public string? NoText { get; init; }

    /// <summary>Whether nothing in the file tells encodings apart.</summary>
    public bool IsAscii { get; init; }

    /// <summary>Bytes of the file that were looked at.</summary>
    public long Bytes { get; init; }
}
