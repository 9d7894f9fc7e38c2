using System.Numerics;

namespace ClimateLens.Reports.Publishing;

/// <summary>Orders ids as people do: runs of digits by their value ("2" before "10"), the rest by code point.</summary>
internal sealed class NaturalOrder : IComparer<string>
{
    public static NaturalOrder Instance { get; } = new();

    public int Compare(string? x, string? y)
    {
        ReadOnlySpan<char> left = x;
        ReadOnlySpan<char> right = y;
        while (left.Length > 0 && right.Length > 0)
        {
            int order = Step(ref left, ref right);
            if (order != 0)
            {
                return order;
            }
        }

        return left.Length != right.Length ? left.Length.CompareTo(right.Length) : string.CompareOrdinal(x, y);
    }

    private static int Step(ref ReadOnlySpan<char> left, ref ReadOnlySpan<char> right)
    {
        int leftDigits = Digits(left);
        int rightDigits = Digits(right);
        int leftTake = Math.Max(1, leftDigits);
        int rightTake = Math.Max(1, rightDigits);
        int order = leftDigits > 0 && rightDigits > 0
            ? BigInteger.Parse(left[..leftTake], null).CompareTo(BigInteger.Parse(right[..rightTake], null))
            : left[0].CompareTo(right[0]);
        left = left[leftTake..];
        right = right[rightTake..];
        return order;
    }

    private static int Digits(ReadOnlySpan<char> text)
    {
        int end = text.IndexOfAnyExceptInRange('0', '9');
        return end < 0 ? text.Length : end;
    }
}
