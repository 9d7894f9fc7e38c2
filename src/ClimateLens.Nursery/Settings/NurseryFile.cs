using System.Security.Cryptography;
using ClimateLens.Nursery.Problems;
using ClimateLens.Nursery.Settings.Reading;
using ClimateLens.Nursery.Settings.Tables;

namespace ClimateLens.Nursery.Settings;

/// <summary>Reads a nursery file. docs/nursery-file.md lists every key.</summary>
public static class NurseryFile
{
    /// <summary>
    /// Reads and checks a nursery file. What is wrong but does no harm is in <see cref="NurserySettings.Warnings"/>.
    /// </summary>
    /// <param name="fileName">The file's name as the user gave it, for messages.</param>
    /// <param name="utf8">The file's bytes; a byte order mark is accepted.</param>
    /// <param name="fileExists">
    /// Tells whether a path under <c>files</c> that is no pattern is there, so that a missing file is told with the other
    /// faults; null: not asked.
    /// </param>
    /// <exception cref="NurseryFileException">The file cannot be used; holds every fault and warning, in file order.</exception>
    public static NurserySettings Parse(string fileName, ReadOnlyMemory<byte> utf8, Func<string, bool>? fileExists = null)
    {
        FaultList faults = new(fileName) { FileExists = fileExists ?? (_ => true) };
        NurserySettings? settings = Read(fileName, utf8.Span, faults);
        IReadOnlyList<Problem> problems = faults.InFileOrder();
        if (settings is null || faults.HasErrors)
        {
            throw new NurseryFileException(problems);
        }

        return settings with { Warnings = [.. problems] };
    }

    /// <summary>The ids of the houses and the name of the zone, as far as they can be read, whatever else is wrong in the file.</summary>
    /// <param name="utf8">The file's bytes.</param>
    /// <returns>The ids in file order, none where they cannot be read; the zone, null where it is none that is known.</returns>
    public static (string[] HouseIds, string? Zone) Outline(ReadOnlyMemory<byte> utf8)
    {
        FaultList faults = new("");
        if (TomlSource.Decode(utf8.Span, faults) is not { } text || SyntaxRecovery.Read(text, faults) is not { } document)
        {
            return ([], null);
        }

        TomlTable file = TomlTree.Build(document, NurseryTable.FileKeys, faults);
        string[] ids = file.Find("house")?.Value is TomlArray { FromHeaders: true } houses
            ? [.. houses.Items.OfType<TomlTable>().Select(h => h.Find("id")?.Value).OfType<TomlScalar>().Select(s => s.Value).OfType<string>()]
            : [];
        string? zone = file.Find("nursery")?.Value is TomlTable nursery && nursery.Find("timeZone")?.Value is TomlScalar { Value: string name }
            ? NodaTime.DateTimeZoneProviders.Tzdb.GetZoneOrNull(name)?.Id
            : null;
        return (ids, zone);
    }

    private static NurserySettings? Read(string fileName, ReadOnlySpan<byte> utf8, FaultList faults)
    {
        if (TomlSource.Decode(utf8, faults) is not { } text || SyntaxRecovery.Read(text, faults) is not { } document)
        {
            return null;
        }

        string hash = Convert.ToHexStringLower(SHA256.HashData(utf8));
        return NurseryTable.Read(TomlTree.Build(document, NurseryTable.FileKeys, faults), faults, fileName, hash);
    }
}
