using System.Collections.Immutable;
using ClimateLens.Logs.Describe.Clock;
using ClimateLens.Logs.Describe.Cutting;
using ClimateLens.Logs.Describe.Numbers;
using ClimateLens.Logs.Describe.Reading;
using ClimateLens.Logs.Describe.Words;

namespace ClimateLens.Logs.Describe;

/// <summary>What was seen of a file, or of several of one kind: its layout, and what all its rows say of time and numbers.</summary>
/// <param name="Files">The file, or several that are laid out alike.</param>
/// <param name="Encoding">Encoding of them.</param>
/// <param name="Layout">Where names and data stand.</param>
/// <param name="Headers">Its headers taken apart.</param>
/// <param name="Rows">Rows of data looked at.</param>
/// <param name="LastLine">The last line of data.</param>
/// <param name="Numbers">A tally for each column.</param>
/// <param name="Stamps">A tally for each format of each place where the time may stand.</param>
/// <param name="Mixed">Tallies of formats that may be mixed.</param>
/// <param name="Sample">Rows spread over the file.</param>
/// <param name="Odd">Lines below the header that are no rows of data, the first few.</param>
/// <param name="OddCount">Number of such lines.</param>
internal sealed record Study(
    ImmutableArray<SourceText> Files,
    EncodingGuess Encoding,
    Layout Layout,
    ImmutableArray<HeaderText> Headers,
    int Rows,
    int LastLine,
    ImmutableArray<NumberTally> Numbers,
    ImmutableArray<StampTally> Stamps,
    ImmutableArray<MixedTally> Mixed,
    IReadOnlyList<SampleRow> Sample,
    ImmutableArray<TextLine> Odd,
    int OddCount)
{
    /// <summary>The first file.</summary>
    public SourceText File => Files[0];

    /// <summary>Whether a part of a file was not looked at, since it is too large.</summary>
    public bool IsCut { get; init; }
}
