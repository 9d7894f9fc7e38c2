namespace ClimateLens.Logs.Describe.Numbers;

/// <summary>What the cells of one column look like, over all rows.</summary>
internal sealed class NumberTally
{
    private const int MostTexts = 200;
    private const int LongestText = 120;

    private readonly int[] _shapes = new int[Enum.GetValues<NumberShape>().Length];
    private readonly Dictionary<string, int> _texts = new(StringComparer.Ordinal);
    private readonly Dictionary<string, int> _suspects = new(StringComparer.Ordinal);

    /// <summary>Cells that hold something.</summary>
    public int Filled { get; private set; }

    /// <summary>Empty cells.</summary>
    public int Empty { get; private set; }

    /// <summary>Cells that are no number.</summary>
    public int Words { get; private set; }

    /// <summary>Whether there were more different texts than are kept.</summary>
    public bool ManyTexts { get; private set; }

    /// <summary>Whole numbers that were not 0 or 1.</summary>
    public int BeyondOne { get; private set; }

    /// <summary>Texts that are no number, with how often they stand.</summary>
    public IReadOnlyDictionary<string, int> Texts => _texts;

    /// <summary>Numbers that loggers write for "no value", as they stand in the file.</summary>
    public IReadOnlyDictionary<string, int> Suspects => _suspects;

    /// <summary>The blank or apostrophe between thousands, where there is one.</summary>
    public char GroupMark { get; private set; }

    /// <summary>Cells of a shape.</summary>
    public int Of(NumberShape shape) => _shapes[(int)shape];

    /// <summary>Cells that are numbers.</summary>
    public int Numbers => Filled - Words;

    /// <summary>Adds a trimmed cell.</summary>
    public void Add(string cell)
    {
        if (cell.Length == 0)
        {
            Empty++;
            return;
        }

        Filled++;
        NumberShape shape = NumberShapes.Of(cell);
        _shapes[(int)shape]++;
        if (shape == NumberShape.None)
        {
            Words++;
            Count(_texts, cell);
        }
        else if (SentinelCodes.MayBe(cell))
        {
            Count(_suspects, cell);
        }

        if (shape == NumberShape.GroupedByBlank && GroupMark == '\0')
        {
            GroupMark = cell[cell.AsSpan().IndexOfAny(" \u00A0\u202F'’")];
        }

        BeyondOne += shape == NumberShape.Whole && cell is not ("0" or "1") ? 1 : 0;
    }

    private void Count(Dictionary<string, int> counts, string cell)
    {
        string text = cell.Length > LongestText ? cell[..LongestText] : cell;
        if (counts.TryGetValue(text, out int seen) || counts.Count < MostTexts)
        {
            counts[text] = seen + 1;
        }
        else
        {
            ManyTexts = true;
        }
    }
}
