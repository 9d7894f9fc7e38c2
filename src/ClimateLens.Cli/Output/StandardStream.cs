using System.Text;

namespace ClimateLens.Cli.Output;

/// <summary>Standard output and error, in UTF-8 and with LF. A scheduler may start a program with one of them closed: then nobody hears what is said, and the work is done all the same.</summary>
internal static class StandardStream
{
    /// <summary>The stream's writer; one that drops all where the stream is closed.</summary>
    /// <param name="number">1 for the output, 2 for the error.</param>
    /// <param name="writer">The system's writer.</param>
    public static TextWriter Open(int number, Func<TextWriter> writer)
    {
        try
        {
            if (IsClosed(number))
            {
                return TextWriter.Null;
            }

            Console.OutputEncoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
            TextWriter open = writer();
            open.NewLine = "\n";
            return open;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return TextWriter.Null;
        }
    }

    /// <summary>
    /// Whether nothing can be written there. Where it was closed, the first file that the runtime opens gets its number; what is said must not end up in a file.
    /// </summary>
    private static bool IsClosed(int number)
    {
        string info = $"/proc/self/fdinfo/{number}";
        if (!OperatingSystem.IsLinux() || !Directory.Exists("/proc/self/fdinfo"))
        {
            return false;
        }

        const int AccessMode = 3; // O_ACCMODE of fcntl.h; 0 is open to read only
        string? flags = File.Exists(info) ? File.ReadLines(info).FirstOrDefault(line => line.StartsWith("flags:", StringComparison.Ordinal)) : null;
        return flags is null || (Convert.ToInt32(flags["flags:".Length..].Trim(), 8) & AccessMode) == 0;
    }
}
