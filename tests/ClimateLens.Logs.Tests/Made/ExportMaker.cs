using System.Globalization;
using NodaTime;

namespace ClimateLens.Logs.Tests.Made;

/// <summary>Makes exports by chance: dialect, time, marks, language, packing, and rows that are torn.</summary>
internal sealed class ExportMaker
{
    private readonly MakerStyle _style;
    private readonly Random _random;
    private readonly DateTime[] _local;
    private readonly long[] _micros;
    private readonly List<string[]> _rows;
    private readonly List<string> _names;
    private readonly List<string> _units;
    private readonly int _stamps;
    private readonly List<MadeColumn> _columns = [];

    private ExportMaker(MakerStyle style)
    {
        _style = style;
        _random = style.Random;
        Instant[] instants = [.. MakerClock.Instants(style)];
        _micros = [.. instants.Select(i => i.ToUnixTimeTicks() / 10)];
        DateTimeZone zone = style.Stamp.IsUtc ? DateTimeZone.Utc : DateTimeZoneProviders.Tzdb[style.Zone];
        _local = [.. instants.Select(i => i.InZone(zone).ToDateTimeUnspecified())];
        _rows = [.. _local.Select(t => MakerClock.Cells(style, t))];
        _names = [.. style.Stamp.Headers(style.Language)];
        _units = [.. _names.Select(_ => "")];
        _stamps = _names.Count;
    }

    /// <summary>Makes one.</summary>
    public static MadeExport Make(int seed) => new ExportMaker(new MakerStyle(seed)).Make();

    private MadeExport Make()
    {
        foreach (string channel in Channels())
        {
            Add(channel);
        }

        string[] titles = Titles();
        string[] header = Header();
        List<MadeLine> lines = [.. titles.Concat(header).Select(t => new MadeLine(t, [])), .. _rows.Select((row, i) => new MadeLine(Line(row), [i]))];
        Spoil(lines, header);
        bool[] torn = new bool[_rows.Count];
        var places = new List<int>[_rows.Count];
        for (int i = 0; i < _rows.Count; i++)
        {
            places[i] = [];
        }

        foreach ((int index, MadeLine line) in lines.Index())
        {
            foreach (int row in line.Rows)
            {
                places[row].Add(index + 1);
                torn[row] |= line.IsTorn;
            }
        }

        (string name, byte[] bytes) = _style.Packing == "xlsx" ? ("made.xlsx", MadeSheet.Of(_style, _stamps, _local, lines, _rows)) : MadePacking.Pack(MadePacking.Encode(Text(lines), _style.Encoding), _style.Packing);
        MadeRow[] rows = [.. _micros.Select((m, i) => new MadeRow(m, [.. places[i]], torn[i]))];
        string story = $"{_style}\n{string.Join('\n', lines.Take(6).Select(l => l.Text))}\n{string.Join('\n', lines.Index().Where(l => l.Item.IsTorn).Select(l => $"torn {l.Index + 1}: {l.Item.Text}"))}";
        return new MadeExport(name, bytes, story, rows, _columns, _stamps, _style) { Toml = TrueSettings.Of(_style, _columns, _stamps, titles.Length, _local.Min().Year) };
    }

    /// <summary>Tears rows, and puts lines that are no rows of data where they do no harm to those that are.</summary>
    private void Spoil(List<MadeLine> lines, string[] header)
    {
        var tearing = new Tearing(_style, new MadeCells(_style, _stamps, [.. lines.Where(l => l.Rows.Length > 0).Select(l => l.Text)]));
        tearing.Tear(lines);
        if (_style.HeaderAgain)
        {
            Insert(lines, header);
        }

        if (_style.Comments)
        {
            Insert(lines, ["# logger restarted", "# battery 3.1 V"]);
        }

        if (_style.Footer)
        {
            lines.Add(new MadeLine(Line(["Average", .. Enumerable.Repeat("", _names.Count - 1)]), []));
        }
        else if (_style.EndsOpen && _style.OneIn(2))
        {
            tearing.CutEnd(lines);
        }
    }

    /// <summary>Puts lines between two sound rows of the second half.</summary>
    private void Insert(List<MadeLine> lines, string[] texts)
    {
        int at = (lines.Count / 2) + _random.Next(lines.Count / 3);
        while (lines[at - 1].IsTorn || lines[at].IsTorn)
        {
            at++;
        }

        lines.InsertRange(at, texts.Select(t => new MadeLine(t, [])));
    }

    private IEnumerable<string> Channels()
    {
        List<string> others = [.. MakerHouse.Units.Keys.Where(k => k is not ("airTemperature" or "relativeHumidity")).OrderBy(_ => _random.Next()).Take(_random.Next(0, 8))];
        if (others.Contains("lee") != others.Contains("wind"))
        {
            others.Add(others.Contains("lee") ? "wind" : "lee");
        }

        return ["airTemperature", "relativeHumidity", .. others, .. _style.OneIn(3) ? ["other"] : Array.Empty<string>()];
    }

    private void Add(string channel)
    {
        bool known = channel != "other";
        (string written, double factor, double offset, int decimals) = known ? Unit(channel) : ("", 1, 0, 0);
        string header = _style.Pick(known ? MakerWords.Channels[channel][_style.Language] : MakerWords.Others[_style.Language]);
        header = _style.TwinNames && channel is "heatingSetPoint" or "other" && _columns.Count > 1 ? _names[_stamps + _random.Next(2)] : header;
        string name = written.Length == 0 || _style.Units is "none" or "row" ? header : _style.Units switch { "bracket" => $"{header} ({written})", "square" => $"{header} [{written}]", _ => $"{header} {written}" };
        double[] values = new double[_local.Length];
        for (int i = 0; i < _local.Length; i++)
        {
            double value = (MakerHouse.Value(channel, _local[i], _random) - offset) / factor;
            string plain = value.ToString("F" + decimals, CultureInfo.InvariantCulture);
            string cell = _random.Next(60) == 0 ? _style.Gap : Marked(plain, i);
            _rows[i] = [.. _rows[i], cell];
            values[i] = cell == _style.Gap ? double.NaN : (double.Parse(plain, CultureInfo.InvariantCulture) * factor) + offset;
        }

        _names.Add(name);
        _units.Add(_style.Units == "row" ? written : "");
        _columns.Add(new MadeColumn(name, channel, channel == "relativeHumidity" && written.Length == 0 ? "1" : written, values));
    }

    private (string Written, double Factor, double Offset, int Decimals) Unit(string channel)
    {
        (string Written, double Factor, double Offset, int Decimals) unit = _style.Pick(MakerHouse.Units[channel]);
        bool temperature = channel.EndsWith("Temperature", StringComparison.Ordinal) || channel is "heatingSetPoint" or "dewPoint";
        return _style.Fahrenheit && temperature ? ("°F", 5.0 / 9, -160.0 / 9, 1)
            : _style.Fraction && channel == "relativeHumidity" ? ("", 100, 0, 3)
            : unit;
    }

    private string Marked(string plain, int row)
    {
        char mark = _style.BothMarks && row % 5 == 0 ? (_style.Mark == '.' ? ',' : '.') : _style.Mark;
        int whole = plain.IndexOf('.') < 0 ? plain.Length : plain.IndexOf('.');
        string marked = plain.Replace('.', mark);
        return _style.Groups && whole > 3 && plain[0] != '-' ? $"{marked[..(whole - 3)]}{(_style.Mark == '.' ? ',' : '.')}{marked[(whole - 3)..]}" : marked;
    }

    private string[] Titles() => _random.Next(3) switch
    {
        0 => ["Gannet Row", "Export 13-10-2025", ""],
        1 => ["Invented nursery"],
        _ => [],
    };

    private string[] Header() => [.. (_style.NoNames ? [] : _style.Units == "row" ? [_names, _units] : (List<string>[])[_names]).Select(row => Cells([.. row]) + Mark(_style.HeaderMark))];

    private string Line(string[] cells) => Cells(cells) + Mark(_style.MarkAtEnd);

    private string Cells(string[] cells) => string.Join(_style.Delimiter, cells.Select(c => (_style.QuoteAll && c.Length > 0) || c.Contains(_style.Delimiter) ? $"\"{c}\"" : c));

    private string Mark(bool has) => has ? $"{_style.Delimiter}" : "";

    private string Text(List<MadeLine> lines)
    {
        var text = new System.Text.StringBuilder();
        for (int i = 0; i < lines.Count; i++)
        {
            string end = _style.LineEnd == "mixed" ? _style.Pick(["\n", "\r\n"]) : _style.LineEnd;
            text.Append(lines[i].Text).Append(i == lines.Count - 1 && _style.EndsOpen ? "" : end);
        }

        return text.ToString();
    }
}
