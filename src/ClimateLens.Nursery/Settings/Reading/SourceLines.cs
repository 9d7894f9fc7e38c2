using System.Text.RegularExpressions;

namespace ClimateLens.Nursery.Settings.Reading;

/// <summary>The lines of the file, some of which can be blanked out so that the rest can still be read at its own place.</summary>
internal sealed partial class SourceLines(string text)
{
    private readonly string[] _lines = text.Split('\n');

    public string Text => string.Join('\n', _lines);

    public string this[int line] => line >= 0 && line < _lines.Length ? _lines[line] : "";

    /// <summary>Blanks the statement that starts in a line (0-based): to the next statement, or to the next header when it is one itself.</summary>
    /// <returns>Whether anything was there to blank.</returns>
    public bool Blank(int first)
    {
        bool wholeTable = this[first].TrimStart().StartsWith('[');
        bool any = false;
        for (int line = first; line < _lines.Length; line++)
        {
            if (line > first && (Header().IsMatch(_lines[line]) || (!wholeTable && Assignment().IsMatch(_lines[line]))))
            {
                break;
            }

            any |= !string.IsNullOrWhiteSpace(_lines[line]);
            _lines[line] = "";
        }

        return any;
    }

    /// <summary>The line (0-based) with the most opening brackets.</summary>
    public int DeepestLine() => _lines.Index().MaxBy(l => l.Item.Count(c => c is '[' or '{')).Index;

    [GeneratedRegex(@"^\s*\[{1,2}\s*[A-Za-z_][\w.\s-]*\]{0,2}\s*(#.*)?$", RegexOptions.CultureInvariant)]
    private static partial Regex Header();

    [GeneratedRegex("""^\s*([\w.-]+|"[^"]*"|'[^']*')\s*=""", RegexOptions.CultureInvariant)]
    private static partial Regex Assignment();
}
