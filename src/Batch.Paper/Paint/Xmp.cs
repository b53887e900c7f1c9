using System.Globalization;
using System.Security;
using System.Text;

namespace Batch.Paper.Paint;

/// <summary>The XMP packet of a document (ISO 16684-1), the same for the same input. PDFsharp 6.2.4 writes its own, with new ids every time and the title not escaped, and cannot be told not to.</summary>
internal static class Xmp
{
    /// <summary>Puts our packet in the place of PDFsharp's, filled up with blanks to its length, which the format allows.</summary>
    /// <param name="file">A finished file whose metadata are neither compressed nor encrypted.</param>
    /// <param name="title">Title, left out when it is so full of characters to be escaped that the packet would not fit.</param>
    /// <param name="author">Author.</param>
    /// <param name="made">Date of the document.</param>
    public static void Replace(byte[] file, string title, string author, DateTimeOffset made)
    {
        var start = file.AsSpan().LastIndexOf("<?xpacket begin="u8);
        var end = file.AsSpan().LastIndexOf("<?xpacket end="u8);
        if (start < 0 || end < start) throw new InvalidOperationException("The file has no metadata packet.");
        var room = file.AsSpan(start, end - start);
        var packet = Encoding.UTF8.GetBytes(Packet(title, author, made));
        if (packet.Length > room.Length) packet = Encoding.UTF8.GetBytes(Packet("", "", made));
        if (packet.Length > room.Length) throw new InvalidOperationException("The metadata packet does not fit.");
        room.Fill((byte)' ');
        packet.CopyTo(room);
    }

    private static string Packet(string title, string author, DateTimeOffset made)
    {
        var date = made.UtcDateTime.ToString("yyyy-MM-dd'T'HH:mm:ss'Z'", CultureInfo.InvariantCulture);
        return $"""
            <?xpacket begin="{'\uFEFF'}" id="W5M0MpCehiHzreSzNTczkc9d"?>
            <x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
            <rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/" xmlns:xmp="http://ns.adobe.com/xap/1.0/">
            <dc:title><rdf:Alt><rdf:li xml:lang="x-default">{Escaped(title)}</rdf:li></rdf:Alt></dc:title>
            <dc:creator><rdf:Seq><rdf:li>{Escaped(author)}</rdf:li></rdf:Seq></dc:creator>
            <xmp:CreatorTool>tripbatch</xmp:CreatorTool><xmp:CreateDate>{date}</xmp:CreateDate><xmp:ModifyDate>{date}</xmp:ModifyDate>
            </rdf:Description></rdf:RDF></x:xmpmeta>
            """;
    }

    private static string Escaped(string text) => SecurityElement.Escape(new string([.. text.Where(c => c >= ' ' && !char.IsSurrogate(c))])) ?? "";
}
