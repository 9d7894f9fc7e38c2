using System.Collections.Immutable;
using System.Text;

namespace ClimateLens.Logs.Text;

/// <summary>Cuts a line into fields where no mark stands between them: by runs of blanks, or at fixed widths.</summary>
internal abstract class FieldCutter
{
    /// <summary>Where the fields of the last line stand in it.</summary>
    protected List<Range> Ranges { get; } = [];

    /// <summary>Number of fields of the last line.</summary>
    public int Count => Ranges.Count;

    /// <summary>Cuts a line; false when a quote in it is not closed.</summary>
    public abstract bool Cut(ReadOnlySpan<byte> line);

    /// <summary>A field of the line that was cut last.</summary>
    public ReadOnlySpan<byte> Field(ReadOnlySpan<byte> line, int index) => line[Ranges[index]];
}

/// <summary>Fields stand between runs of blanks and tabs; blanks at both ends of a line count for nothing, and quotes hold a field with blanks together.</summary>
/// <param name="quote">The quote.</param>
internal sealed class BlanksCutter(byte quote) : FieldCutter
{
    /// <inheritdoc/>
    public override bool Cut(ReadOnlySpan<byte> line)
    {
        Ranges.Clear();
        int at = 0;
        while (true)
        {
            int blanks = line[at..].IndexOfAnyExcept((byte)' ', (byte)'\t');
            if (blanks < 0)
            {
                return true;
            }

            at += blanks;
            bool quoted = line[at] == quote;
            int start = quoted ? at + 1 : at;
            int length = quoted ? line[start..].IndexOf(quote) : line[start..].IndexOfAny((byte)' ', (byte)'\t');
            if (quoted && length < 0)
            {
                return false;
            }

            int end = length < 0 ? line.Length : start + length;
            Ranges.Add(start..end);
            at = quoted ? end + 1 : end;
        }
    }
}

/// <summary>
/// Fields have fixed widths in characters; what stands behind the last one makes one more field, so that it is seen. A line
/// may end early: the fields that it does not reach are empty as long as one was reached.
/// </summary>
/// <param name="widths">Widths. [characters]</param>
internal sealed class WidthsCutter(ImmutableArray<int> widths) : FieldCutter
{
    /// <inheritdoc/>
    public override bool Cut(ReadOnlySpan<byte> line)
    {
        Ranges.Clear();
        int at = 0;
        foreach (int width in widths)
        {
            int end = Past(line, at, width);
            Ranges.Add(at..end);
            at = end;
        }

        if (line[at..].IndexOfAnyExcept((byte)' ', (byte)'\t') >= 0)
        {
            Ranges.Add(at..line.Length);
        }

        return true;
    }

    private static int Past(ReadOnlySpan<byte> line, int at, int characters)
    {
        for (; characters > 0 && at < line.Length; characters--)
        {
            at += Rune.DecodeFromUtf8(line[at..], out _, out int bytes) == System.Buffers.OperationStatus.Done ? bytes : 1;
        }

        return at;
    }
}
