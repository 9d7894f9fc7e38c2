using System.Text.Json;
using System.Text.Json.Serialization;

namespace ClimateLens.Logs.Store;

/// <summary>The ledger as JSON.</summary>
[JsonSourceGenerationOptions(WriteIndented = true, PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase, DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull, NewLine = "\n", RespectRequiredConstructorParameters = true)]
[JsonSerializable(typeof(Ledger))]
[JsonSerializable(typeof(List<SourceFile>))]
[JsonSerializable(typeof(SortedDictionary<string, string>))]
internal sealed partial class LedgerFormat : JsonSerializerContext
{
    /// <summary>Writes a ledger.</summary>
    public static byte[] Write(Ledger ledger) => JsonSerializer.SerializeToUtf8Bytes(ledger, Default.Ledger);

    /// <summary>Reads a ledger; null when it is damaged or of another format.</summary>
    public static Ledger? Read(byte[] json)
    {
        try
        {
            Store.Ledger? ledger = JsonSerializer.Deserialize(json, Default.Ledger);
            return ledger is { Format: Store.Ledger.CurrentFormat } ? ledger : null;
        }
        catch (JsonException)
        {
            return null;
        }
    }
}

/// <summary>A file that rows came from, as Parquet files name it.</summary>
/// <param name="Sha256">SHA-256 of its bytes.</param>
/// <param name="File">Its name.</param>
internal sealed record SourceFile(string Sha256, string File);
