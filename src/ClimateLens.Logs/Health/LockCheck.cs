using ClimateLens.Logs.Store;

namespace ClimateLens.Logs.Health;

/// <summary>Whether another run holds the store, and whether one was cut off.</summary>
internal static class LockCheck
{
    public static CheckupLine Of(string store)
    {
        string path = Path.Combine(store, StorePaths.Lock);
        if (!File.Exists(path))
        {
            return CheckupLine.Fine("store.lock", "No run holds the store.");
        }

        try
        {
            // Held for a moment and only beside other readers; a run that starts in this very moment ends with 75 and is tried again.
            using (new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.Read))
            {
            }
        }
        catch (UnauthorizedAccessException e)
        {
            return CheckupLine.Look("store.lock", $"The store's lock cannot be read: {e.Message}", "Give the user of the scheduled run the right to read and write the store.");
        }
        catch (IOException)
        {
            return CheckupLine.Fine("store.lock", "Another run holds the store at this moment. If it has for hours, look whether that run hangs.");
        }

        int staged = StorePaths.StagedFiles(store).Count();
        return CheckupLine.Fine("store.lock", staged == 0
            ? "No run holds the store."
            : $"No run holds the store. An earlier one was cut off and left {Checkup.Count(staged, "unfinished file")}; the next run clears them away.");
    }
}
