namespace ClimateLens.Nursery.Settings.Reading;

/// <summary>Codes of the problems that a nursery file can have; docs/nursery-file.md explains each.</summary>
internal static class FaultCodes
{
    public const string Size = "toml.size";
    public const string Encoding = "toml.encoding";
    public const string Empty = "toml.empty";
    public const string Syntax = "toml.syntax";
    public const string RepeatedKey = "toml.repeatedKey";
    public const string UnknownKey = "nursery.unknownKey";
    public const string MissingKey = "nursery.missingKey";
    public const string WrongType = "nursery.wrongType";
    public const string Range = "nursery.range";
    public const string Choice = "nursery.choice";
    public const string Text = "nursery.text";
    public const string Id = "nursery.id";
    public const string Repeated = "nursery.repeated";
    public const string Reference = "nursery.reference";
    public const string Channel = "nursery.channel";
    public const string Unit = "nursery.unit";
    public const string TimeZone = "nursery.timeZone";
    public const string Place = "nursery.place";
    public const string Format = "nursery.format";
    public const string Date = "nursery.date";
    public const string Order = "nursery.order";
    public const string Dialect = "nursery.dialect";
    public const string Column = "nursery.column";
    public const string NotHere = "nursery.notHere";
    public const string Method = "nursery.method";
    public const string End = "nursery.end";
    public const string Unused = "nursery.unused";
    public const string Spacing = "nursery.spacing";
    public const string File = "nursery.file";
    public const string More = "nursery.more";
}
