namespace ClimateLens.Nursery.Records;

/// <summary>The words for watering methods in nursery files and in records: <c>overheadBoom</c>, <c>drip</c> and so on.</summary>
public static class WateringMethods
{
    /// <summary>All words, in the order of <see cref="WateringMethod"/>.</summary>
    public static IReadOnlyList<string> Words => FileWords<WateringMethod>.All;

    /// <summary>Finds the method for an exact word.</summary>
    public static bool TryParse(string word, out WateringMethod method) => FileWords<WateringMethod>.TryGet(word, out method);

    /// <summary>The word for a method.</summary>
    public static string WordOf(WateringMethod method) => FileWords<WateringMethod>.Of(method);
}
