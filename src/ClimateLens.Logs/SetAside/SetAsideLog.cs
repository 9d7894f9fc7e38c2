using ClimateLens.Logs.Sheets;

namespace ClimateLens.Logs.SetAside;

/// <summary>Keeps what a file's import could not use, and reports it.</summary>
/// <param name="file">The export's name.</param>
/// <param name="problems">Where it is reported.</param>
/// <param name="open">Opens the file that keeps it, at the first row; null where nothing is kept (a check).</param>
internal sealed class SetAsideLog(string file, ProblemList problems, Func<Stream>? open) : IDisposable
{
    private SetAsideCsv? _csv;

    /// <summary>Whether anything was kept in a file.</summary>
    public bool HasFile => _csv is not null;

    /// <summary>The export's name.</summary>
    public string File => file;

    /// <summary>What was set aside, counted by reason.</summary>
    public ReasonList Reasons { get; } = new();

    /// <summary>Where problems go.</summary>
    public ProblemList Problems => problems;

    /// <summary>Keeps and reports a cell, or the values of a row that was overruled.</summary>
    public void Add(ProblemCode code, int line, int? column, ReadOnlySpan<byte> text, string expected)
        => AddRow(code, line, column, text, expected, text);

    /// <summary>Keeps a row as it stands in the file and reports what is wrong with it.</summary>
    public void AddRow(ProblemCode code, int line, int? column, ReadOnlySpan<byte> found, string expected, ReadOnlySpan<byte> text)
    {
        problems.AddRow(code, file, line, column, found, expected);
        Reasons.Add(code.Code, line);
        if (open is not null)
        {
            _csv ??= new SetAsideCsv(open(), file);
            _csv.Write(line, column, code.Code, text, found, expected);
        }
    }

    /// <inheritdoc/>
    public void Dispose() => _csv?.Dispose();
}
