using System.Collections.Immutable;
using System.Text;
using System.Xml;
using ClimateLens.Nursery.Languages;
using ClimateLens.Reports.Publishing;

namespace ClimateLens.Reports.Pages;

/// <summary>The newest pages as an Atom feed (RFC 4287). Its times are the ends of the periods: a feed made again is the same.</summary>
internal static class Feed
{
    private const string Atom = "http://www.w3.org/2005/Atom";
    private const int Most = 60;

    /// <summary>The feed.</summary>
    /// <param name="entries">All pages, newest first.</param>
    public static byte[] Write(ImmutableArray<SiteEntry> entries)
    {
        using MemoryStream stream = new();
        using (XmlWriter xml = XmlWriter.Create(stream, new XmlWriterSettings { Encoding = new UTF8Encoding(false), Indent = true, NewLineChars = "\n" }))
        {
            string nursery = entries.IsEmpty ? "" : entries[0].Nursery;
            xml.WriteStartElement("feed", Atom);
            xml.WriteElementString("title", Atom, Phrase.Of($"{Clean(nursery)}: climate reviews"));
            xml.WriteElementString("id", Atom, $"urn:climatelens:{Uri.EscapeDataString(nursery)}");
            xml.WriteElementString("updated", Atom, entries.IsEmpty ? "1970-01-01T00:00:00Z" : entries.Select(e => e.Ended).Max(StringComparer.Ordinal)!);
            Link(xml, "index.html");
            xml.WriteStartElement("author", Atom);
            xml.WriteElementString("name", Atom, "ClimateLens");
            xml.WriteEndElement();
            foreach (SiteEntry entry in entries.Take(Most))
            {
                Write(xml, entry);
            }

            xml.WriteEndElement();
        }

        return [.. stream.ToArray(), (byte)'\n'];
    }

    private static void Write(XmlWriter xml, SiteEntry entry)
    {
        HouseWeekSummary s = entry.Summary;
        xml.WriteStartElement("entry", Atom);
        xml.WriteElementString("title", Atom, Clean($"{s.HouseName}, {SitePeriod.Of(s.Period).Name}{(entry.Invented ? Phrase.Of(" (invented demonstration data)") : "")}"));
        xml.WriteElementString("id", Atom, $"urn:climatelens:{Uri.EscapeDataString(entry.Nursery)}:{s.House}:{s.Period}");
        xml.WriteElementString("updated", Atom, entry.Ended);
        Link(xml, s.Page);
        xml.WriteElementString("summary", Atom, Clean(entry.Said));
        xml.WriteEndElement();
    }

    private static void Link(XmlWriter xml, string page)
    {
        xml.WriteStartElement("link", Atom);
        xml.WriteAttributeString("href", page);
        xml.WriteEndElement();
    }

    /// <summary>Without the characters that XML cannot hold.</summary>
    private static string Clean(string text) => string.Concat(text.EnumerateRunes().Where(r => r.Value is 9 or 10 or 13 or (>= 0x20 and < 0xFFFE) or > 0xFFFF));
}
