using System.Runtime.CompilerServices;
using System.Text;

namespace ClimateLens.TestKit;

/// <summary>
/// Compares text with a file kept beside the test, in <c>Golden/&lt;name&gt;</c>. On a difference the new text is written
/// to <c>&lt;name&gt;.received</c> and the check throws. With CLIMATELENS_UPDATE_GOLDEN=1 the kept file is replaced
/// instead; look at the change before you commit it.
/// </summary>
public static class GoldenFile
{
    private const string UpdateVariable = "CLIMATELENS_UPDATE_GOLDEN";

    public static void Check(string name, string text, [CallerFilePath] string testFile = "")
    {
        string folder = Path.Combine(Repository.FolderOf(testFile), "Golden");
        string kept = Path.Combine(folder, name);
        string received = kept + ".received";
        string expected = File.Exists(kept) ? File.ReadAllText(kept) : "";
        if (expected == text && File.Exists(kept))
        {
            File.Delete(received);
            return;
        }

        Directory.CreateDirectory(folder);
        if (Environment.GetEnvironmentVariable(UpdateVariable) == "1")
        {
            File.WriteAllText(kept, text, new UTF8Encoding(false));
            File.Delete(received);
            return;
        }

        File.WriteAllText(received, text, new UTF8Encoding(false));
        throw new InvalidOperationException($"{name} differs from the kept file at character {FirstDifference(expected, text)}. Compare {received} with {kept}; {UpdateVariable}=1 takes the new text over.");
    }

    private static int FirstDifference(string left, string right)
    {
        int i = 0;
        while (i < Math.Min(left.Length, right.Length) && left[i] == right[i])
        {
            i++;
        }

        return i;
    }
}
