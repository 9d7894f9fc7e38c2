using System.Reflection;
using Plotly.NET;

namespace ClimateLens.Reports.Publishing;

/// <summary>Script and style that all pages share, once beside them: our own, and the drawing library as its package carries it.</summary>
internal static class SiteAssets
{
    /// <summary>File name of the drawing library.</summary>
    public const string ChartLibrary = "plotly-2.28.0.min.js";

    /// <summary>File name of our own script.</summary>
    public const string PageScript = "page.js";

    /// <summary>File name of the style sheet.</summary>
    public const string Style = "site.css";

    // Assemblies on demand: a run with nothing to do need not load the drawing library.
    private static readonly (string File, Func<Assembly> From, string Resource)[] Files =
    [
        (ChartLibrary, () => typeof(GenericChart).Assembly, "Plotly.NET." + ChartLibrary),
        (ChartLibrary + ".LICENSE.txt", () => typeof(GenericChart).Assembly, "Plotly.NET." + ChartLibrary + ".LICENSE.txt"),
        (PageScript, () => typeof(SiteAssets).Assembly, PageScript),
        (Style, () => typeof(SiteAssets).Assembly, Style),
    ];

    /// <summary>Writes what is missing or differs.</summary>
    public static void Ensure(SiteFolder site)
    {
        foreach ((string file, Func<Assembly> from, string resource) in Files)
        {
            string place = "assets/" + file;
            byte[] wanted = Bytes(from(), resource);
            if (site.Read(place) is not { } present || !present.AsSpan().SequenceEqual(wanted))
            {
                site.Write(place, wanted);
            }
        }
    }

    /// <summary>Whether all are there, whatever they hold; a look that costs next to nothing.</summary>
    public static bool AreThere(SiteFolder site) => Files.All(f => site.Exists("assets/" + f.File));

    /// <summary>One of them as text.</summary>
    public static string Text(string file)
    {
        (_, Func<Assembly> from, string resource) = Files.Single(f => f.File == file);
        return System.Text.Encoding.UTF8.GetString(Bytes(from(), resource));
    }

    private static byte[] Bytes(Assembly from, string resource)
    {
        using Stream stream = from.GetManifestResourceStream(resource)
            ?? throw new InvalidOperationException($"{from.GetName().Name} lacks the resource {resource}.");
        byte[] bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }
}
