using System.IO.Compression;
using PdfSharp.Pdf;

namespace Batch.Paper.Paint;

/// <summary>Dictionaries and compressed streams of a PDF. Streams are written by the platform's zlib: PDFsharp 6.2.4 leaves out the checksum at the end, which strict readers note.</summary>
internal static class PdfParts
{
    /// <summary>A new object of its own in the file.</summary>
    public static PdfDictionary Indirect(PdfDocument document, params ReadOnlySpan<(string Key, PdfItem? Value)> entries)
    {
        var dictionary = new PdfDictionary(document);
        document.Internals.AddObject(dictionary);
        Set(dictionary, entries);
        return dictionary;
    }

    public static void Set(PdfDictionary dictionary, params ReadOnlySpan<(string Key, PdfItem? Value)> entries)
    {
        foreach (var (key, value) in entries) dictionary.Elements[key] = value;
    }

    public static void Fill(PdfDictionary target, byte[] content)
    {
        using var packed = new MemoryStream();
        using (var zlib = new ZLibStream(packed, CompressionLevel.Optimal, leaveOpen: true)) zlib.Write(content);
        target.CreateStream(packed.ToArray());
        target.Elements["/Filter"] = new PdfName("/FlateDecode");
    }
}
