namespace ClimateLens.Nursery.Records;

/// <summary>The words for kinds of record in nursery files and in the store: <c>waterings</c>, <c>potChecks</c> and so on.</summary>
public static class RecordKinds
{
    /// <summary>All words, in the order of <see cref="RecordKind"/>.</summary>
    public static IReadOnlyList<string> Words => FileWords<RecordKind>.All;

    /// <summary>Finds the kind for an exact word.</summary>
    public static bool TryParse(string word, out RecordKind kind) => FileWords<RecordKind>.TryGet(word, out kind);

    /// <summary>The word for a kind.</summary>
    public static string WordOf(RecordKind kind) => FileWords<RecordKind>.Of(kind);
}
