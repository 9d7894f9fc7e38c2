using System.Text;
using System.Text.RegularExpressions;

namespace ClimateLens.Reports.Markup;

/// <summary>
/// Finds what people read in an interpolated string of markup: the text between tags, and the attributes that screen
/// readers and pointers show. Each is one message, with the holes in it numbered from 0; tags end a message.
/// </summary>
/// <param name="markup">Takes markup as it is.</param>
/// <param name="message">Takes a message and the holes in it, by their place in the whole string.</param>
/// <param name="hole">Takes a hole that stands in no message.</param>
internal sealed partial class MarkupTexts(Action<string> markup, Action<string, IReadOnlyList<int>> message, Action<int> hole)
{
    private static readonly string[] ReadAttributes = ["aria-label=\"", "title=\"", "alt=\""];
    private readonly StringBuilder _run = new();
    private readonly StringBuilder _tag = new();
    private readonly List<int> _holes = [];
    private bool _inTag, _inValue, _read;
    private int _count;

    /// <summary>A literal part.</summary>
    public void Literal(string text)
    {
        foreach (char c in text)
        {
            if (_inValue)
            {
                Value(c);
            }
            else if (_inTag)
            {
                Tag(c);
            }
            else if (c == '<')
            {
                End();
                _inTag = true;
                _tag.Append(c);
            }
            else
            {
                _run.Append(c);
            }
        }
    }

    /// <summary>A hole.</summary>
    public void Hole()
    {
        int at = _count++;
        if (_inTag && !_read)
        {
            FlushTag();
            hole(at);
            return;
        }

        _run.Append('{').Append(_holes.Count).Append('}');
        _holes.Add(at);
    }

    /// <summary>Ends the string.</summary>
    public void End()
    {
        string run = _run.ToString();
        string text = run.Trim(' ', '\n');
        if (HasWords(text))
        {
            int lead = run.IndexOf(text, StringComparison.Ordinal);
            markup(run[..lead]);
            message(text, [.. _holes]);
            markup(run[(lead + text.Length)..]);
        }
        else
        {
            Raw(run);
        }

        _run.Clear();
        _holes.Clear();
        FlushTag();
    }

    private void Tag(char c)
    {
        _tag.Append(c);
        if (c == '>')
        {
            _inTag = false;
            FlushTag();
        }
        else if (c == '"')
        {
            _inValue = true;
            string tag = _tag.ToString();
            _read = ReadAttributes.Any(a => tag.EndsWith(a, StringComparison.Ordinal));
            if (_read)
            {
                FlushTag();
            }
        }
    }

    private void Value(char c)
    {
        if (c != '"')
        {
            (_read ? _run : _tag).Append(c);
            return;
        }

        if (_read)
        {
            End();
        }

        _inValue = _read = false;
        _tag.Append(c);
    }

    /// <summary>A run without words: its text and its holes as they come.</summary>
    private void Raw(string run)
    {
        int from = 0;
        for (int i = 0; i < _holes.Count; i++)
        {
            string mark = $"{{{i}}}";
            int at = run.IndexOf(mark, from, StringComparison.Ordinal);
            markup(run[from..at]);
            hole(_holes[i]);
            from = at + mark.Length;
        }

        markup(run[from..]);
    }

    private void FlushTag()
    {
        if (_tag.Length > 0)
        {
            markup(_tag.ToString());
            _tag.Clear();
        }
    }

    private static bool HasWords(string text) => Words().IsMatch(Holes().Replace(Entities().Replace(text, ""), "")) && !Attribute().IsMatch(text);

    [GeneratedRegex(@"\p{L}{2,}")]
    private static partial Regex Words();

    [GeneratedRegex(@"\{\d+\}")]
    private static partial Regex Holes();

    [GeneratedRegex("&#?[a-z0-9]+;")]
    private static partial Regex Entities();

    [GeneratedRegex("^[a-z-]+=")]
    private static partial Regex Attribute();
}
