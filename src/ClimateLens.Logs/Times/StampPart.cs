using System.Text;
using ClimateLens.Nursery.Time;

namespace ClimateLens.Logs.Times;

/// <summary>A step of reading a stamp by a pattern.</summary>
/// <param name="Letter">Letter of the pattern; <see cref="StampField.Mark"/>, ' ', or one of the two below.</param>
/// <param name="Width">How often the letter stands; of packed hours, the most digits.</param>
/// <param name="After">Digits of the parts that follow without a mark.</param>
/// <param name="Literal">The text that has to stand here, of a mark.</param>
internal sealed record StampPart(char Letter, int Width, int After, byte[] Literal)
{
    /// <summary>Whether a point follows as a mark, so that the one behind a short name is not the name's own.</summary>
    public bool BeforePoint { get; init; }

    /// <summary>Hours (0 to 23), minutes and perhaps seconds in one number whose first zeros may be missing, as in 830 or 5.</summary>
    public const char Packed = '#';

    /// <summary>The same with hours from 1 to 12.</summary>
    public const char PackedHalf = '~';

    /// <summary>A blank that may be missing, before AM and PM.</summary>
    public const char MaybeBlank = '_';

    /// <summary>Whether it holds the hour.</summary>
    public bool IsHour => Letter is 'H' or 'h' or Packed or PackedHalf;

    /// <summary>Whether it is a part of the date.</summary>
    public bool IsDate => Letter is 'y' or 'M' or 'd' or 'D' or 'E';

    /// <summary>Whether it takes the same number of bytes in every stamp.</summary>
    public bool IsFixed => Letter is 'y' or '\0' || (Letter is 'M' or 'd' && Width == 2) || (Letter == 'D' && Width == 3);

    /// <summary>The steps of a pattern that has no fault.</summary>
    public static StampPart[] Of(IReadOnlyList<StampField> fields)
    {
        var parts = new List<StampPart>();
        for (int i = 0; i < fields.Count; i++)
        {
            int packed = PackedFields(fields, i);
            if (packed > 0)
            {
                parts.Add(new StampPart(fields[i].Letter == 'H' ? Packed : PackedHalf, packed * 2, 0, []));
                i += packed - 1;
            }
            else
            {
                parts.Add(Of(fields, i));
            }
        }

        return [.. parts];
    }

    private static StampPart Of(IReadOnlyList<StampField> fields, int i)
    {
        StampField field = fields[i];
        int after = 0;
        for (int later = i + 1; field.IsDigits && later < fields.Count && fields[later].IsDigits; later++)
        {
            after += fields[later].FixedDigits;
        }

        StampField? next = i + 1 < fields.Count ? fields[i + 1] : null;
        char letter = field.Letter == ' ' && next?.Letter == 'a' ? MaybeBlank : field.Letter;
        byte[] literal = letter == StampField.Mark ? Encoding.UTF8.GetBytes(field.Text) : [];
        return new StampPart(letter, field.Width, after, literal) { BeforePoint = next?.Letter == StampField.Mark && next.Text.StartsWith('.') };
    }

    /// <summary>How many fields from here on make one number of hours, minutes and seconds that no other digits touch; else 0.</summary>
    private static int PackedFields(IReadOnlyList<StampField> fields, int at)
    {
        bool Digits(int i) => i >= 0 && i < fields.Count && fields[i].IsDigits;

        if (fields[at].Letter is not ('H' or 'h') || Digits(at - 1) || !Digits(at + 1) || fields[at + 1].Text != "mm")
        {
            return 0;
        }

        int count = Digits(at + 2) && fields[at + 2].Text == "ss" ? 3 : 2;
        return Digits(at + count) ? 0 : count;
    }
}
