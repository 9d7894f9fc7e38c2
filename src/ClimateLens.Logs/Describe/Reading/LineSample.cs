namespace ClimateLens.Logs.Describe.Reading;

/// <summary>
/// Lines spread over a file: its first ones, its last ones and every k-th between, so that memory stays in hand
/// whatever the file's length.
/// </summary>
internal sealed class LineSample
{
    private const int HeadLines = 400;
    private const int BodyLines = 800;
    private const int TailLines = 40;
    private const int MostCharacters = 16 << 20;

    private readonly List<TextLine> _body = [];
    private readonly Queue<TextLine> _tail = [];
    private int _stride = 1;
    private int _characters;

    private LineSample()
    {
    }

    /// <summary>The first lines, without a gap.</summary>
    public List<TextLine> Head { get; } = [];

    /// <summary>Lines of the whole file in order, those of <see cref="Head"/> first; blank ones are left out.</summary>
    public List<TextLine> All { get; private set; } = [];

    /// <summary>Number of lines of the file, as far as it was looked at.</summary>
    public int Count { get; private set; }

    /// <summary>Samples a file.</summary>
    public static LineSample Of(IEnumerable<TextLine> lines)
    {
        var sample = new LineSample();
        foreach (TextLine line in lines)
        {
            sample.Add(line);
        }

        int head = sample.Head.Count == 0 ? 0 : sample.Head[^1].Number;
        int tail = sample._tail.Count == 0 ? int.MaxValue : sample._tail.Peek().Number;
        sample.All =
        [
            .. sample.Head.Where(line => !line.IsBlank),
            .. sample._body.Where(line => line.Number > head && line.Number < tail && !line.IsBlank),
            .. sample._tail.Where(line => line.Number > head && !line.IsBlank),
        ];
        return sample;
    }

    private void Add(TextLine line)
    {
        Count = line.Number;
        _characters += line.Text.Length;
        if (Head.Count < HeadLines && (_characters < MostCharacters || Head.Count < 3))
        {
            Head.Add(line);
            return;
        }

        if (_tail.Count == TailLines || (_tail.Count > 2 && line.Text.Length * (long)TailLines > MostCharacters))
        {
            _tail.Dequeue();
        }

        _tail.Enqueue(line);
        if (line.Number % _stride == 0 && line.Text.Length * (long)BodyLines < MostCharacters)
        {
            _body.Add(line);
            Thin();
        }
    }

    private void Thin()
    {
        if (_body.Count < 2 * BodyLines)
        {
            return;
        }

        _stride *= 2;
        _body.RemoveAll(line => line.Number % _stride != 0);
    }
}
