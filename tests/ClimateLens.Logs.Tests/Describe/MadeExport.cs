namespace ClimateLens.Logs.Tests.Describe;

/// <summary>A column that was written, and what its values are.</summary>
/// <param name="Header">Header, or the variable of a long table.</param>
/// <param name="Channel">Channel.</param>
/// <param name="Values">Value by row in the unit of the store; NaN where none was written.</param>
internal sealed record MadeColumn(string Header, string Channel, double[] Values);

/// <summary>An invented export and what stands in it.</summary>
/// <param name="FileName">Name of the file.</param>
/// <param name="Bytes">Its bytes.</param>
/// <param name="Story">How it was made, for messages.</param>
/// <param name="Times">Instant of each row. [µs]</param>
/// <param name="Columns">Its columns of values, in the order of the file.</param>
/// <param name="FirstColumn">0-based place of the first of them.</param>
internal sealed record MadeExport(string FileName, byte[] Bytes, string Story, long[] Times, IReadOnlyList<MadeColumn> Columns, int FirstColumn);
