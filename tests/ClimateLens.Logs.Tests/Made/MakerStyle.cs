using System.Globalization;

namespace ClimateLens.Logs.Tests.Made;

/// <summary>What an export is made with, chosen by chance. Ways that belong together come together; all else may meet.</summary>
internal sealed class MakerStyle
{
    private static readonly string[] Gaps = ["", "", "", "NA", "-999", "---", "#N/A", "null", "Err7"];

    /// <summary>Chooses.</summary>
    public MakerStyle(int seed)
    {
        Random = new Random(seed);
        Language = Pick(MakerWords.Languages);
        Mark = Language == "en" || OneIn(4) ? '.' : ',';
        QuoteAll = OneIn(4);
        Delimiter = Pick<char>(Mark == ',' && !QuoteAll ? [';', '\t', '|', ';'] : [';', '\t', ',', ',']);
        Stamp = Pick(MakerStamp.All);
        Gap = Pick(Gaps);
        Units = Pick(["bracket", "square", "row", "none", "behind"]);
        Fahrenheit = Language == "en" && OneIn(4);
        Fraction = OneIn(12);
        Groups = OneIn(8) && (Delimiter != ',' || QuoteAll);
        Packing = Pick(["", "", "", "gz", "zip", "xlsx"]);
        Encoding = Packing == "xlsx" ? "utf-8" : Pick(["utf-8", "bom", "utf-16le", "utf-16be", "windows-1252", "utf-8"]);
        LineEnd = Packing == "xlsx" ? "\n" : Pick(["\n", "\r\n", "\r\n", "\r", "mixed"]);
        Zone = Pick(["Etc/UTC", "Etc/UTC", "Europe/Amsterdam", "America/New_York"]);
        Step = Pick([5, 10, 15, 30, 60]);
        Days = Random.Next(1, 14);
        Floored = Step == 5 && OneIn(3);
        NewestFirst = OneIn(6);
        LateMidnight = Stamp.CanBeLate && OneIn(4);
        BareMidnight = !LateMidnight && Stamp.BareFormat is not null && OneIn(4);
        SwappedDates = !LateMidnight && !BareMidnight && Stamp.Swapped is not null && OneIn(2);
        TwinNames = OneIn(9);
        NoNames = OneIn(12);
        BothMarks = Delimiter != ',' && !Groups && OneIn(12);
        HeaderAgain = OneIn(5) && !NoNames;
        Comments = OneIn(10);
        Footer = OneIn(5);
        MarkAtEnd = Packing != "xlsx" && OneIn(8);
        HeaderMark = MarkAtEnd && OneIn(2);
        Tears = Packing == "xlsx" || OneIn(2) ? 0 : Random.Next(1, 5);
        EndsOpen = Packing != "xlsx" && !Footer && OneIn(4);
    }

    /// <summary>What everything is chosen by.</summary>
    public Random Random { get; }

    public string Language { get; }

    public char Mark { get; }

    public bool QuoteAll { get; }

    public char Delimiter { get; }

    public MakerStamp Stamp { get; }

    public string Gap { get; }

    public string Units { get; }

    public bool Fahrenheit { get; }

    public bool Fraction { get; }

    public bool Groups { get; }

    public string Encoding { get; }

    public string LineEnd { get; }

    public string Packing { get; }

    public string Zone { get; }

    public int Step { get; }

    public int Days { get; }

    public bool Floored { get; }

    public bool NewestFirst { get; }

    public bool LateMidnight { get; }

    public bool BareMidnight { get; }

    public bool SwappedDates { get; }

    public bool TwinNames { get; }

    public bool NoNames { get; }

    public bool BothMarks { get; }

    public bool HeaderAgain { get; }

    public bool Comments { get; }

    public bool Footer { get; }

    /// <summary>Whether each row ends with a mark.</summary>
    public bool MarkAtEnd { get; }

    /// <summary>Whether the header has that mark as well.</summary>
    public bool HeaderMark { get; }

    /// <summary>How many rows are torn.</summary>
    public int Tears { get; }

    /// <summary>Whether nothing ends the last line.</summary>
    public bool EndsOpen { get; }

    public T Pick<T>(IReadOnlyList<T> choices) => choices[Random.Next(choices.Count)];

    public bool OneIn(int n) => Random.Next(n) == 0;

    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Language} {Stamp.Name} delimiter {(int)Delimiter} mark {Mark} units {Units} gap {Gap} {Encoding} {Zone} step {Step}{Told(Floored, "floored")} days {Days} {Packing} ends {LineEnd.Replace("\r", "CR", StringComparison.Ordinal).Replace("\n", "LF", StringComparison.Ordinal)} tears {Tears}")
        + Told(QuoteAll, "quoted") + Told(Fahrenheit, "F") + Told(Fraction, "fraction") + Told(Groups, "groups") + Told(NewestFirst, "newest-first") + Told(LateMidnight, "24:00") + Told(BareMidnight, "bare-midnight")
        + Told(SwappedDates, "swapped") + Told(TwinNames, "twins") + Told(NoNames, "nameless") + Told(BothMarks, "both-marks") + Told(HeaderAgain, "header-again") + Told(Comments, "comments") + Told(Footer, "footer")
        + Told(MarkAtEnd, "mark-at-end") + Told(EndsOpen, "ends-open");

    private static string Told(bool flag, string word) => flag ? " " + word : "";
}
