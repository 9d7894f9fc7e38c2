using System.Collections.Frozen;
using System.Diagnostics.CodeAnalysis;
using System.Text.Json;

namespace ClimateLens.Nursery.Languages;

/// <summary>
/// A language of pages: its words for each message, its decimal mark and the mark between thousands. A message is named
/// by its English text, with holes as {0}, {1} and so on; one that a language lacks reads in English. English needs no words of its own.
/// The words lie in es.json and nl.json beside this file; tests hold them to the messages that the code has.
/// </summary>
public sealed class Language
{
    private static readonly AsyncLocal<Language?> Ambient = new();
    private static readonly Lazy<Language> Spanish = new(() => new Language("es", ',', "\u00A0", Read("es"))), SpanishOfAmerica = new(() => new Language("es-US", '.', ",", Read("es"))), Dutch = new(() => new Language("nl", ',', ".", Read("nl")));
    private readonly FrozenDictionary<string, string> _words;

    /// <summary>A language with words of its own; for tests and for those who add one.</summary>
    /// <param name="code">Its BCP 47 code.</param>
    /// <param name="decimalMark">The decimal mark.</param>
    /// <param name="groupMark">What stands between thousands.</param>
    /// <param name="words">Text by message.</param>
    public Language(string code, char decimalMark, string groupMark, IEnumerable<KeyValuePair<string, string>> words)
    {
        Code = code;
        DecimalMark = decimalMark;
        GroupMark = groupMark;
        _words = words.ToFrozenDictionary(StringComparer.Ordinal);
    }

    /// <summary>English, which the messages are written in.</summary>
    public static Language English { get; } = new("en", '.', ",", []);

    /// <summary>The codes of all languages, English first.</summary>
    public static IReadOnlyList<string> Codes { get; } = ["en", "es", "es-US", "nl"];

    /// <summary>The language that text made now is in; English unless <see cref="Use"/> says otherwise.</summary>
    public static Language Current => Ambient.Value ?? English;

    /// <summary>BCP 47 code: "en".</summary>
    public string Code { get; }

    /// <summary>The decimal mark of numbers.</summary>
    public char DecimalMark { get; }

    /// <summary>What stands between thousands.</summary>
    public string GroupMark { get; }

    /// <summary>Whether messages read as they are written.</summary>
    public bool IsEnglish => ReferenceEquals(this, English);

    /// <summary>All words, by message.</summary>
    public IReadOnlyDictionary<string, string> Words => _words;

    /// <summary>The language of a code.</summary>
    public static bool TryGet(string code, [NotNullWhen(true)] out Language? language)
    {
        language = code switch { "en" => English, "es" => Spanish.Value, "es-US" => SpanishOfAmerica.Value, "nl" => Dutch.Value, _ => null };
        return language is not null;
    }

    /// <summary>Makes this the language of all that runs until the result is disposed, on this thread and on those that it starts.</summary>
    public Scope Use()
    {
        Language? before = Ambient.Value;
        Ambient.Value = this;
        return new Scope(before);
    }

    /// <summary>The text of a message, or the message itself.</summary>
    public string Translate(string message) => _words.GetValueOrDefault(message, message);

    /// <summary>A number written with a point, with the decimal mark of this language.</summary>
    public string Number(string invariant)
    {
        ArgumentNullException.ThrowIfNull(invariant);
        return DecimalMark == '.' ? invariant : invariant.Replace('.', DecimalMark);
    }

    private static Dictionary<string, string> Read(string code)
    {
        using Stream file = typeof(Language).Assembly.GetManifestResourceStream($"ClimateLens.Nursery.Languages.{code}.json")
            ?? throw new InvalidOperationException($"The words of the language {code} are not in the program.");
        using JsonDocument json = JsonDocument.Parse(file);
        return json.RootElement.EnumerateObject().ToDictionary(p => p.Name, p => p.Value.GetString() ?? p.Name, StringComparer.Ordinal);
    }

    /// <summary>Gives the language before back.</summary>
    public readonly record struct Scope : IDisposable
    {
        private readonly Language? _before;

        internal Scope(Language? before) => _before = before;

        /// <inheritdoc/>
        public void Dispose() => Ambient.Value = _before;
    }
}
