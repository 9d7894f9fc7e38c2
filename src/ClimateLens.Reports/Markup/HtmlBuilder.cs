using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text;

namespace ClimateLens.Reports.Markup;

/// <summary>
/// Builds HTML from interpolated strings: the literal parts are markup, each hole is encoded unless it is
/// <see cref="Html"/> already. Numbers go in as whole numbers; others must have been given their decimals first.
/// </summary>
public sealed class HtmlBuilder
{
    private readonly StringBuilder _text = new();

    /// <summary>Appends one line.</summary>
    public HtmlBuilder Line([InterpolatedStringHandlerArgument("")] ref Holes markup)
    {
        _text.Append('\n');
        return this;
    }

    /// <summary>Appends without a line end.</summary>
    public HtmlBuilder Add([InterpolatedStringHandlerArgument("")] ref Holes markup) => this;

    /// <summary>Appends finished HTML and, when it is not empty, a line end.</summary>
    public HtmlBuilder Line(Html html)
    {
        if (!html.IsEmpty)
        {
            _text.Append(html.ToString());
            if (_text[^1] != '\n')
            {
                _text.Append('\n');
            }
        }

        return this;
    }

    /// <summary>The HTML so far.</summary>
    public Html ToHtml() => new(_text.ToString());

    /// <summary>One piece of HTML from an interpolated string.</summary>
    public static Html Of(ref Standalone markup) => markup.Builder.ToHtml();

    /// <summary>Writes an interpolated string into a builder.</summary>
    [InterpolatedStringHandler]
    public readonly ref struct Holes
    {
        private readonly StringBuilder _text;

        /// <summary>Called by the compiler.</summary>
        public Holes(int literalLength, int formattedCount, HtmlBuilder builder) => _text = builder._text;

        /// <summary>Markup.</summary>
        public void AppendLiteral(string markup) => _text.Append(markup);

        /// <summary>Text: encoded.</summary>
        public void AppendFormatted(string? text) => _text.Append(Html.Encode(text ?? ""));

        /// <summary>A whole number.</summary>
        public void AppendFormatted(int number) => _text.Append(number.ToString(CultureInfo.InvariantCulture));

        /// <summary>A whole number.</summary>
        public void AppendFormatted(long number) => _text.Append(number.ToString(CultureInfo.InvariantCulture));

        /// <summary>Finished HTML.</summary>
        public void AppendFormatted(Html html) => _text.Append(html.ToString());
    }

    /// <summary>Writes an interpolated string into a builder of its own.</summary>
    [InterpolatedStringHandler]
    public readonly ref struct Standalone
    {
        private readonly Holes _holes;

        /// <summary>Called by the compiler.</summary>
        public Standalone(int literalLength, int formattedCount)
        {
            Builder = new HtmlBuilder();
            _holes = new Holes(literalLength, formattedCount, Builder);
        }

        internal HtmlBuilder Builder { get; }

        /// <summary>Markup.</summary>
        public void AppendLiteral(string markup) => _holes.AppendLiteral(markup);

        /// <summary>Text: encoded.</summary>
        public void AppendFormatted(string? text) => _holes.AppendFormatted(text);

        /// <summary>A whole number.</summary>
        public void AppendFormatted(int number) => _holes.AppendFormatted(number);

        /// <summary>Finished HTML.</summary>
        public void AppendFormatted(Html html) => _holes.AppendFormatted(html);
    }
}
