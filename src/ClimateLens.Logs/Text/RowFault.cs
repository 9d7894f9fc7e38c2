namespace ClimateLens.Logs.Text;

/// <summary>What makes a row of text unreadable before any cell is looked at.</summary>
internal enum RowFault
{
    /// <summary>Nothing.</summary>
    None,

    /// <summary>A quote that is not closed, or stands where none may stand.</summary>
    Quotes,

    /// <summary>Bytes that are no text in the file's encoding.</summary>
    Bytes,

    /// <summary>A field beyond all measure.</summary>
    FieldTooLong,
}
