using System.Globalization;
using System.Security;

namespace Batch.Paper.Paint;

/// <summary>The XMP packet of a document (ISO 16684-1), the same for the same input. PDFsharp's own neither escapes the title nor repeats.</summary>
internal static class Xmp
{
    public static string Packet(string title, string author, DateTimeOffset made)
    {
        var date = made.UtcDateTime.ToString("yyyy-MM-dd'T'HH:mm:ss'Z'", CultureInfo.InvariantCulture);
        return $"""
            <?xpacket begin="{'\uFEFF'}" id="W5M0MpCehiHzreSzNTczkc9d"?>
            <x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
            <rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/" xmlns:xmp="http://ns.adobe.com/xap/1.0/" xmlns:pdf="http://ns.adobe.com/pdf/1.3/">
            <dc:title><rdf:Alt><rdf:li xml:lang="x-default">{Escaped(title)}</rdf:li></rdf:Alt></dc:title>
            <dc:creator><rdf:Seq><rdf:li>{Escaped(author)}</rdf:li></rdf:Seq></dc:creator>
            <xmp:CreatorTool>tripbatch</xmp:CreatorTool><xmp:CreateDate>{date}</xmp:CreateDate><xmp:ModifyDate>{date}</xmp:ModifyDate><pdf:Producer>PDFsharp</pdf:Producer>
            </rdf:Description></rdf:RDF></x:xmpmeta>
            <?xpacket end="w"?>
            """;
    }

    private static string Escaped(string text) => SecurityElement.Escape(new string([.. text.Where(c => c >= ' ' && !char.IsSurrogate(c))])) ?? "";
}
