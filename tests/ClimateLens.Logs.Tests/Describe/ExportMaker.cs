using System.Globalization;
using System.Text;

namespace ClimateLens.Logs.Tests.Describe;

/// <summary>Makes exports by chance: dialect, time, marks, language and shape.</summary>
internal sealed class ExportMaker
{
    private static readonly string[] Gaps = ["", "", "", "NA", "-999", "---", "#N/A", "null", "Err7"];

    private readonly Random _random;
    private readonly string _language;
    private readonly char _delimiter;
    private readonly char _mark;
    private readonly MakerStamp _stamp;
    private readonly bool _quoteAll;
    private readonly string _gap;
    private readonly string _units;
    private readonly bool _fahrenheit;
    private readonly bool _fraction;
    private readonly bool _groups;
    private readonly string _quirk;

    private ExportMaker(int seed)
    {
        _random = new Random(seed);
        _language = Pick(MakerWords.Languages);
        _mark = _language == "en" || _random.Next(4) == 0 ? '.' : ',';
        _quoteAll = _random.Next(4) == 0;
        _delimiter = Pick<char>(_mark == ',' && !_quoteAll ? [';', '\t', '|', ';'] : [';', '\t', ',', ',']);
        _stamp = Pick(MakerStamp.All);
        _gap = Pick(Gaps);
        _units = Pick(["bracket", "square", "row", "none", "behind"]);
        _fahrenheit = _language == "en" && _random.Next(4) == 0;
        _fraction = _random.Next(12) == 0;
        _groups = _random.Next(8) == 0 && (_delimiter != ',' || _quoteAll);
        _quirk = Pick(["none", "none", "none", "comments", "header again", "torn rows", "twin names", "no names", "both marks", "bare midnight", "swapped dates"]);
    }

    /// <summary>Makes one.</summary>
    public static MadeExport Make(int seed) => new ExportMaker(seed).Make();

    private MadeExport Make()
    {
        int step = Pick([5, 10, 15, 30, 60]);
        int days = _random.Next(1, 14);
        DateTime start = new DateTime(2024, 1, 1, 0, 0, 0, DateTimeKind.Utc).AddDays(_random.Next(700)).AddMinutes(step * _random.Next(3));
        DateTime[] times = [.. Enumerable.Range(0, days * 1440 / step).Select(i => start.AddMinutes(i * step))];
        if (_random.Next(6) == 0)
        {
            Array.Reverse(times);
        }

        List<string[]> rows = [.. times.Select(Stamp)];
        List<string> names = [.. _stamp.Headers(_language)];
        List<string> units = [.. names.Select(_ => "")];
        int first = names.Count;
        var columns = new List<MadeColumn>();
        foreach (string channel in Channels())
        {
            Add(channel, times, rows, names, units, columns);
        }

        string[] header = Header(names, units);
        string[] lines = [.. Titles(), .. header, .. rows.Select(Line), .. Footer(names.Count)];
        lines = Spoil(lines, header);
        string end = Pick(["\n", "\r\n", "\r\n", "\r"]);
        string encoding = Pick(["utf-8", "bom", "utf-16le", "utf-16be", "windows-1252", "utf-8"]);
        string story = $"{_language} {_stamp.Name} delimiter {(int)_delimiter} mark {_mark} units {_units} gap {_gap} {encoding} {_quirk} F {_fahrenheit} fraction {_fraction} groups {_groups} step {step} days {days} quoted {_quoteAll}\n{string.Join('\n', lines.Take(6))}";
        return new MadeExport("made.csv", Encode(string.Join(end, lines) + end, encoding), story, [.. times.Select(t => (t - DateTime.UnixEpoch).Ticks / 10)], columns, first);
    }

    private string[] Stamp(DateTime time)
    {
        string[] cells = _stamp.Write(time, _language, _mark);
        if (_quirk == "bare midnight" && time.TimeOfDay == TimeSpan.Zero && cells.Length == 1 && cells[0].EndsWith(" 00:00", StringComparison.Ordinal))
        {
            return [cells[0][..^6]];
        }

        bool swaps = _quirk == "swapped dates" && _stamp.Name is "dd/MM/yyyy HH:mm:ss" or "d/M/yyyy HH:mm" && time.Day <= 12;
        return swaps ? [_stamp.Name[0] == 'd' && _stamp.Name[1] == 'd' ? time.ToString("MM/dd/yyyy HH:mm:ss", CultureInfo.InvariantCulture) : time.ToString("M/d/yyyy HH:mm", CultureInfo.InvariantCulture)] : cells;
    }

    /// <summary>Lines that are no rows of data, put where they do no harm to those that are.</summary>
    private string[] Spoil(string[] lines, string[] header)
    {
        List<string> spoilt = [.. lines];
        int at = lines.Length - 3 - _random.Next(Math.Max(1, lines.Length / 2));
        spoilt.InsertRange(Math.Max(header.Length + 4, at), _quirk switch
        {
            "comments" => ["# logger restarted", "# battery 3.1 V"],
            "header again" => [header[0]],
            "torn rows" => [lines[^2][..(lines[^2].Length / 3)], "%%%"],
            _ => Array.Empty<string>(),
        });
        return [.. spoilt];
    }

    private IEnumerable<string> Channels()
    {
        List<string> others = [.. MakerHouse.Units.Keys.Where(k => k is not ("airTemperature" or "relativeHumidity")).OrderBy(_ => _random.Next()).Take(_random.Next(0, 8))];
        if (others.Contains("lee") != others.Contains("wind"))
        {
            others.Add(others.Contains("lee") ? "wind" : "lee");
        }

        return ["airTemperature", "relativeHumidity", .. others, .. _random.Next(3) == 0 ? ["other"] : Array.Empty<string>()];
    }

    private void Add(string channel, DateTime[] times, List<string[]> rows, List<string> names, List<string> units, List<MadeColumn> columns)
    {
        bool known = channel != "other";
        (string written, double factor, double offset, int decimals) = known ? Unit(channel) : ("", 1, 0, 0);
        string header = Pick(known ? MakerWords.Channels[channel][_language] : MakerWords.Others[_language]);
        header = _quirk == "twin names" && channel is "heatingSetPoint" or "other" && names.Count > 3 ? names[2] : header;
        string name = written.Length == 0 || _units is "none" or "row" ? header : _units switch { "bracket" => $"{header} ({written})", "square" => $"{header} [{written}]", _ => $"{header} {written}" };
        double[] values = new double[times.Length];
        for (int i = 0; i < times.Length; i++)
        {
            double value = (MakerHouse.Value(channel, times[i], _random) - offset) / factor;
            string plain = value.ToString("F" + decimals, CultureInfo.InvariantCulture);
            string cell = _random.Next(60) == 0 ? _gap : Marked(plain, i);
            rows[i] = [.. rows[i], cell];
            values[i] = cell == _gap ? double.NaN : (double.Parse(plain, CultureInfo.InvariantCulture) * factor) + offset;
        }

        names.Add(name);
        units.Add(_units == "row" ? written : "");
        columns.Add(new MadeColumn(name, channel is "lee" or "wind" ? "ventPosition" : channel, values));
    }

    private (string Written, double Factor, double Offset, int Decimals) Unit(string channel)
    {
        (string Written, double Factor, double Offset, int Decimals) unit = Pick(MakerHouse.Units[channel]);
        bool temperature = channel.EndsWith("Temperature", StringComparison.Ordinal) || channel is "heatingSetPoint" or "dewPoint";
        return _fahrenheit && temperature ? ("°F", 5.0 / 9, -160.0 / 9, 1)
            : _fraction && channel == "relativeHumidity" ? ("", 100, 0, 3)
            : unit;
    }

    private string Marked(string plain, int row)
    {
        char mark = _quirk == "both marks" && row % 5 == 0 && _delimiter != ',' ? (_mark == '.' ? ',' : '.') : _mark;
        int whole = plain.IndexOf('.') < 0 ? plain.Length : plain.IndexOf('.');
        string marked = plain.Replace('.', mark);
        return _groups && whole > 3 && plain[0] != '-' ? $"{marked[..(whole - 3)]}{(_mark == '.' ? ',' : '.')}{marked[(whole - 3)..]}" : marked;
    }

    private string[] Titles() => _random.Next(3) switch
    {
        0 => ["Gannet Row", "Export 13-10-2025", ""],
        1 => ["Invented nursery"],
        _ => [],
    };

    private string[] Header(List<string> names, List<string> units) => _quirk == "no names" ? [] : _units == "row" ? [Line([.. names]), Line([.. units])] : [Line([.. names])];

    private string[] Footer(int fields) => _random.Next(5) == 0 ? [Line(["Average", .. Enumerable.Repeat("", fields - 1)])] : [];

    private string Line(string[] cells)
        => string.Join(_delimiter, cells.Select(c => (_quoteAll && c.Length > 0) || c.Contains(_delimiter) ? $"\"{c}\"" : c));

    private static byte[] Encode(string text, string encoding)
    {
        Encoding.RegisterProvider(CodePagesEncodingProvider.Instance);
        Encoding chosen = encoding switch
        {
            "bom" => new UTF8Encoding(true),
            "utf-16le" => new UnicodeEncoding(false, true),
            "utf-16be" => new UnicodeEncoding(true, false),
            "windows-1252" => Encoding.GetEncoding(1252),
            _ => new UTF8Encoding(false),
        };
        return [.. chosen.GetPreamble(), .. chosen.GetBytes(text)];
    }

    private T Pick<T>(IReadOnlyList<T> choices) => choices[_random.Next(choices.Count)];
}
