using System.Runtime.InteropServices;
using System.Text;

namespace ClimateLens.Reports.Publishing;

/// <summary>Everything that changes the site's folder goes through here, so that a test can let the disk fail at any step.</summary>
internal class SiteDisk
{
    /// <summary>The disk itself.</summary>
    public static SiteDisk Real { get; } = new();

    /// <summary>Writes a new file and makes what was written durable.</summary>
    public virtual void Write(string path, ReadOnlySpan<byte> content)
    {
        using FileStream file = new(path, FileMode.Create, FileAccess.Write, FileShare.Read, bufferSize: 0);
        file.Write(content);
        file.Flush(flushToDisk: true);
    }

    /// <summary>Renames a file over another one.</summary>
    public virtual void Move(string from, string to) => File.Move(from, to, overwrite: true);

    /// <summary>Removes a file if it is there.</summary>
    public virtual void Remove(string path)
    {
        if (File.Exists(path))
        {
            File.Delete(path);
        }
    }

    /// <summary>Makes a folder and those above it.</summary>
    public virtual void MakeFolder(string path) => Directory.CreateDirectory(path);

    /// <summary>Makes renames in a folder durable; where the system knows no such step (Windows), they are already.</summary>
    public virtual void PersistFolder(string path)
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        int folder = Open(Encoding.UTF8.GetBytes(path + '\0'), 0);
        if (folder >= 0)
        {
            _ = Sync(folder); // a file system that refuses it for folders has no more to give
            _ = Close(folder);
        }
    }

#pragma warning disable SYSLIB1054 // the generated form needs unsafe code, which the project does without
    [DllImport("libc", EntryPoint = "open")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.System32)]
    private static extern int Open(byte[] path, int flags);

    [DllImport("libc", EntryPoint = "fsync")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.System32)]
    private static extern int Sync(int descriptor);

    [DllImport("libc", EntryPoint = "close")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.System32)]
    private static extern int Close(int descriptor);
#pragma warning restore SYSLIB1054
}
