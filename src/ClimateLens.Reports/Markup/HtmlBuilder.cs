using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text;
using ClimateLens.Nursery.Languages;

namespace ClimateLens.Reports.Markup;

/// <summary>
/// Builds HTML from interpolated strings: the literal parts are markup, each hole is encoded unless it is
/// <see cref="Html"/> already. Text between tags reads in the language of the moment. Numbers go in as whole numbers; others must have been given their decimals first.
/// </summary>
public sealed class HtmlBuilder
{
    private readonly StringBuilder _text = new();

    /// <summary>Appends one line.</summary>
    public HtmlBuilder Line([InterpolatedStringHandlerArgument("")] ref Holes markup)
    {
        markup.End();
        _text.Append('\n');
        return this;
    }

    /// <summary>Appends without a line end.</summary>
    public HtmlBuilder Add([InterpolatedStringHandlerArgument("")] ref Holes markup)
    {
        markup.End();
        return this;
    }

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
    public static Html Of(ref Standalone markup) => markup.End().ToHtml();

    /// <summary>Writes an interpolated string into a builder; in a language other than English once all of it is there.</summary>
    [InterpolatedStringHandler]
    public readonly ref struct Holes
    {
        private readonly StringBuilder _text;
        private readonly List<(bool IsHole, string Text)>? _parts; // null for English, which goes straight into the builder

        /// <summary>Called by the compiler.</summary>
        public Holes(int literalLength, int formattedCount, HtmlBuilder builder)
        {
            _text = builder._text;
            _parts = Language.Current.IsEnglish ? null : [];
        }

        /// <summary>Markup.</summary>
        public void AppendLiteral(string markup)
        {
            if (_parts is null)
            {
                _text.Append(markup);
            }
            else
            {
                _parts.Add((false, markup));
            }
        }

        /// <summary>Text: encoded.</summary>
        public void AppendFormatted(string? text) => Hole(Html.Encode(text ?? ""));

        /// <summary>A whole number.</summary>
        public void AppendFormatted(int number) => Hole(number.ToString(CultureInfo.InvariantCulture));

        /// <summary>A whole number.</summary>
        public void AppendFormatted(long number) => Hole(number.ToString(CultureInfo.InvariantCulture));

        /// <summary>Finished HTML.</summary>
        public void AppendFormatted(Html html) => Hole(html.ToString());

        private void Hole(string html)
        {
            if (_parts is null)
            {
                _text.Append(html);
            }
            else
            {
                _parts.Add((true, html));
            }
        }

        internal void End()
        {
            if (_parts is not null)
            {
                TranslatedMarkup.Append(_text, _parts);
            }
        }
    }

    /// <summary>Writes an interpolated string into a builder of its own.</summary>
    [InterpolatedStringHandler]
    public readonly ref struct Standalone
    {
        private readonly Holes _holes;
        private readonly HtmlBuilder _builder;

        /// <summary>Called by the compiler.</summary>
        public Standalone(int literalLength, int formattedCount)
        {
            _builder = new HtmlBuilder();
            _holes = new Holes(literalLength, formattedCount, _builder);
        }

        /// <summary>Markup.</summary>
        public void AppendLiteral(string markup) => _holes.AppendLiteral(markup);

        /// <summary>Text: encoded.</summary>
        public void AppendFormatted(string? text) => _holes.AppendFormatted(text);

        /// <summary>A whole number.</summary>
        public void AppendFormatted(int number) => _holes.AppendFormatted(number);

        /// <summary>Finished HTML.</summary>
        public void AppendFormatted(Html html) => _holes.AppendFormatted(html);

        internal HtmlBuilder End()
        {
            _holes.End();
            return _builder;
        }
    }
}
