namespace ClimateLens.Logs.Tests.Made;

/// <summary>Tears rows as loggers do that lose their power, disks that lose a block, and people who edit: never so that what is left looks like another sound row.</summary>
/// <param name="style">How the file is written.</param>
/// <param name="cells">What its cells look like.</param>
internal sealed class Tearing(MakerStyle style, MadeCells cells)
{
    private const int Apart = 14;
    private const int Tries = 30;

    /// <summary>Tears some rows, each far from the others.</summary>
    public void Tear(List<MadeLine> lines)
    {
        var taken = new List<int>();
        for (int i = 0; i < style.Tears; i++)
        {
            int row = Apart + style.Random.Next(Math.Max(1, lines.Count(l => l.Rows.Length > 0) - (3 * Apart)));
            int at = lines.FindIndex(l => l.Rows is [var only] && only == row);
            bool whole = at >= 0 && at + Apart < lines.Count && !taken.Exists(t => Math.Abs(t - row) < 3 * Apart) && lines.Skip(at - Apart).Take(2 * Apart).All(l => l.Rows.Length == 1);
            if (whole && TearOne(lines, at))
            {
                taken.Add(row);
            }
        }
    }

    /// <summary>Cuts the last line short.</summary>
    public void CutEnd(List<MadeLine> lines)
    {
        MadeLine last = lines[^1];
        for (int t = 0; t < Tries && last.Rows.Length == 1; t++)
        {
            string text = last.Text[..style.Random.Next(1, last.Text.Length)];
            bool shorter = cells.LastOf(text) is { } end && lines[..^1].FindLast(l => l.Rows.Length == 1 && !l.IsTorn && cells.LastOf(l.Text).Length > 0) is { } before && end.Length < cells.LastOf(before.Text).Length;
            if (shorter || !cells.LooksWhole(text, last.Rows[0], 0))
            {
                lines[^1] = new MadeLine(text, IsBlank(text) ? [] : last.Rows, IsTorn: true);
                return;
            }
        }
    }

    private bool TearOne(List<MadeLine> lines, int at)
    {
        for (int t = 0; t < Tries; t++)
        {
            int last = at + style.Random.Next(1, 5);
            int kind = style.Random.Next(8);
            string text = lines[at].Text;
            int cut = style.Random.Next(1, text.Length);
            MadeLine[]? torn = kind switch
            {
                0 => Cut(lines[at], cut),
                1 => Join(lines[at], lines[at + 1], cut),
                2 => Break(lines[at], cut),
                3 => Lose(lines[at..(last + 1)], cut),
                4 => Cut(lines[at] with { Text = text[cut..] }, text.Length - cut),
                5 => Marks(lines[at], text.Remove(Delimiter(text), 1)),
                6 => Marks(lines[at], text.Insert(Delimiter(text), $"{style.Delimiter}")),
                _ => Marks(lines[at], text.Insert(cut, new string('\0', style.Random.Next(1, 6)))),
            };
            if (torn is not null)
            {
                int gone = kind switch { 1 => 2, 3 => last + 1 - at, _ => 1 };
                lines.RemoveRange(at, gone);
                lines.InsertRange(at, torn.Select(line => IsBlank(line.Text) ? line with { Rows = [] } : line));
                return true;
            }
        }

        return false;
    }

    /// <summary>A row whose end is lost.</summary>
    private MadeLine[]? Cut(MadeLine line, int length) => Sound(line.Text[..length], line.Rows[0]) ? null : [line with { Text = line.Text[..length], IsTorn = true }];

    /// <summary>A row whose end is lost, and the next one right behind it.</summary>
    private static MadeLine[] Join(MadeLine line, MadeLine next, int cut) => [new MadeLine(line.Text[..cut] + next.Text, [.. line.Rows, .. next.Rows], true)];

    /// <summary>A line end in the middle of a row.</summary>
    private MadeLine[]? Break(MadeLine line, int cut)
    {
        (string head, string tail) = (line.Text[..cut], line.Text[cut..]);
        bool told = tail.All(c => char.IsAsciiDigit(c) || c is '.' or ','); // a piece of a number by itself says what the line before it lacks
        return Sound(tail, line.Rows[0]) || (!told && Sound(head, line.Rows[0])) ? null : [line with { Text = head, IsTorn = true }, line with { Text = tail, IsTorn = true }];
    }

    /// <summary>A block lost: the start of one row and the end of a later one.</summary>
    private MadeLine[]? Lose(List<MadeLine> lines, int cut)
    {
        string text = lines[0].Text[..cut] + lines[^1].Text[style.Random.Next(1, lines[^1].Text.Length)..];
        bool lettered = style.Gap.Any(char.IsLetter) && style.Gap.Any(c => lines[0].Text[cut - 1] == c); // a piece of a word for "no value" says nothing of the rest of its row
        return lettered || cells.LooksWhole(text, lines[0].Rows[0], lines.Count) ? null : [new MadeLine(text, [.. lines.SelectMany(l => l.Rows)], true)];
    }

    /// <summary>Nothing of a row is left that anybody could set aside.</summary>
    private bool IsBlank(string text) => text.All(c => c == style.Delimiter || c is ' ' or '"');

    private MadeLine[]? Marks(MadeLine line, string text) => Sound(text, line.Rows[0]) ? null : [line with { Text = text, IsTorn = true }];

    private int Delimiter(string text)
    {
        var places = new List<int>();
        bool quoted = false;
        for (int i = 0; i < text.Length; i++)
        {
            quoted ^= text[i] == '"';
            places.AddRange(text[i] == style.Delimiter && !quoted ? [i] : Array.Empty<int>());
        }

        return style.Pick(places);
    }

    private bool Sound(string text, int row) => cells.LooksWhole(text, row, 0);
}
