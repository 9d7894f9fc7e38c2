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

        List<string[]> rows = [.. times.Select(t => _stamp.Write(t, _language, _mark))];
        List<string> names = [.. _stamp.Headers(_language)];
        List<string> units = [.. names.Select(_ => "")];
        int first = names.Count;
        var columns = new List<MadeColumn>();
        foreach (string channel in Channels())
        {
            Add(channel, times, rows, names, units, columns);
        }

        string[] lines = [.. Titles(), .. Header(names, units), .. rows.Select(Line), .. Footer(names.Count)];
        string end = Pick(["\n", "\r\n", "\r\n", "\r"]);
        string encoding = Pick(["utf-8", "bom", "utf-16le", "utf-16be", "windows-1252", "utf-8"]);
        string story = $"{_language} {_stamp.Name} delimiter {(int)_delimiter} mark {_mark} units {_units} gap {_gap} {encoding} step {step} days {days} quoted {_quoteAll}\n{string.Join('\n', lines.Take(6))}";
        return new MadeExport("made.csv", Encode(string.Join(end, lines) + end, encoding), story, [.. times.Select(t => (t - DateTime.UnixEpoch).Ticks / 10)], columns, first);
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
        (string written, double factor, double offset, int decimals) = known ? Pick(MakerHouse.Units[channel]) : ("", 1, 0, 0);
        string header = Pick(known ? MakerWords.Channels[channel][_language] : MakerWords.Others[_language]);
        string name = written.Length == 0 || _units is "none" or "row" ? header : _units switch { "bracket" => $"{header} ({written})", "square" => $"{header} [{written}]", _ => $"{header} {written}" };
        double[] values = new double[times.Length];
        for (int i = 0; i < times.Length; i++)
        {
            double value = (MakerHouse.Value(channel, times[i], _random) - offset) / factor;
            string cell = _random.Next(60) == 0 ? _gap : value.ToString("F" + decimals, CultureInfo.InvariantCulture).Replace('.', _mark);
            rows[i] = [.. rows[i], cell];
            values[i] = cell == _gap ? double.NaN : (double.Parse(cell.Replace(',', '.'), CultureInfo.InvariantCulture) * factor) + offset;
        }

        names.Add(name);
        units.Add(_units == "row" ? written : "");
        columns.Add(new MadeColumn(name, channel is "lee" or "wind" ? "ventPosition" : channel, values));
    }

    private string[] Titles() => _random.Next(3) switch
    {
        0 => ["Gannet Row", "Export 13-10-2025", ""],
        1 => ["Invented nursery"],
        _ => [],
    };

    private string[] Header(List<string> names, List<string> units) => _units == "row" ? [Line([.. names]), Line([.. units])] : [Line([.. names])];

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
