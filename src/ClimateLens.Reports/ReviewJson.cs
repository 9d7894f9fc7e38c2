using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Unicode;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Reports.Json;

namespace ClimateLens.Reports;

/// <summary>Writes review.json, the image of a <see cref="Review"/> that docs/review.schema.json describes.</summary>
public static class ReviewJson
{
    // The context's own options carry the converters; only the encoder is ours: letters of every script stay readable,
    // and < > & ' are still escaped, so that the file may be pasted into a page.
    internal static readonly ReviewJsonContext Context = new(
        new JsonSerializerOptions(ReviewJsonContext.Default.Options) { Encoder = JavaScriptEncoder.Create(UnicodeRanges.All) });

    /// <summary>
    /// UTF-8 without a byte order mark, indented by two blanks, lines ended by LF, one line end at the end. Keys stand in
    /// the order of the record in camelCase; numbers are SI and shortened as <see cref="Rounding.Shorten"/> says; an
    /// unknown value is null, never NaN; times are ISO 8601 with offset. Equal reviews give equal bytes.
    /// </summary>
    /// <param name="review">The review.</param>
    public static byte[] Write(Review review)
    {
        ArgumentNullException.ThrowIfNull(review);
        byte[] body = JsonSerializer.SerializeToUtf8Bytes(review, Context.Review);
        return [.. body, (byte)'\n'];
    }

    /// <summary>Reads what <see cref="Write"/> wrote. Throws <see cref="JsonException"/> on anything else.</summary>
    public static Review Read(ReadOnlySpan<byte> json)
        => JsonSerializer.Deserialize(json, ReviewJsonContext.Default.Review) ?? throw new JsonException("There is no review in it.");
}
