using System.Text;
using ClimateLens.Logs.Times;
using ClimateLens.Nursery.Time;

namespace ClimateLens.Logs.Describe.Clock;

/// <summary>The shapes of the stamps of a sample, and the formats that may read them.</summary>
internal sealed class ShapeTally
{
    private const int MostShapes = 12;

    private readonly Dictionary<string, Facts> _shapes = new(StringComparer.Ordinal);
    private readonly StampParser _isoParser = StampParser.TryCompile(StampWords.Iso)!;
    private bool _iso;

    /// <summary>Adds a stamp.</summary>
    public void Add(string stamp)
    {
        List<StampToken> tokens = StampToken.Cut(stamp);
        string key = StampShape.KeyOf(tokens);
        if (!_shapes.TryGetValue(key, out Facts? facts))
        {
            if (_shapes.Count == MostShapes)
            {
                return;
            }

            _shapes.Add(key, facts = new Facts(tokens));
        }

        facts.Add(tokens);
        _iso |= _isoParser.TryRead(Encoding.UTF8.GetBytes(stamp), out _);
    }

    /// <summary>The formats, those of the most frequent shape first.</summary>
    public IEnumerable<StampFormat> Formats()
    {
        if (_iso)
        {
            yield return new StampFormat(StampWords.Iso, "yMd", StampHolds.Both);
        }

        foreach (Facts facts in _shapes.Values.OrderByDescending(f => f.Count))
        {
            foreach (StampFormat packed in PackedStamps.Of(facts.Tokens))
            {
                yield return packed;
            }

            foreach (StampForm form in StampForms.Of(facts.Tokens))
            {
                yield return new StampFormat(form.Pattern(facts.IsPadded), form.Order, form.Holds);
            }
        }
    }

    /// <summary>What is known of the digits of a shape.</summary>
    private sealed class Facts(IReadOnlyList<StampToken> tokens)
    {
        private readonly bool[] _single = new bool[tokens.Count];
        private readonly bool[] _zero = new bool[tokens.Count];

        public IReadOnlyList<StampToken> Tokens => tokens;

        public int Count { get; private set; }

        public void Add(List<StampToken> stamp)
        {
            Count++;
            for (int i = 0; i < stamp.Count && i < _single.Length; i++)
            {
                _single[i] |= stamp[i].Digits == 1;
                _zero[i] |= stamp[i].Digits == 2 && stamp[i].Text[0] == '0';
            }
        }

        /// <summary>
        /// Two digits are asked for only where a first zero was seen, in this part or in another part of the date: one letter reads one digit
        /// and two.
        /// </summary>
        public bool IsPadded(int token)
        {
            bool date = token + 2 < tokens.Count && tokens[token + 1].Kind == StampTokenKind.Mark && !tokens[token + 1].Is(':');
            bool near = date && !_single[token + 2] && _zero[token + 2];
            bool before = token >= 2 && tokens[token - 1].Kind == StampTokenKind.Mark && !tokens[token - 1].Is(':') && !_single[token - 2] && _zero[token - 2];
            return token >= 0 && !_single[token] && (_zero[token] || near || before);
        }
    }
}
