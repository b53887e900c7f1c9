using System.IO.Compression;
using PdfSharp.Pdf;

namespace Batch.Paper.Paint;

/// <summary>Compressed streams written by the platform's zlib: PDFsharp 6.2.4 leaves out the checksum at the end, which strict readers note.</summary>
internal static class PdfStreams
{
    public static void Fill(PdfDictionary target, byte[] content)
    {
        using var packed = new MemoryStream();
        using (var zlib = new ZLibStream(packed, CompressionLevel.Optimal, leaveOpen: true)) zlib.Write(content);
        target.CreateStream(packed.ToArray());
        target.Elements["/Filter"] = new PdfName("/FlateDecode");
    }
}
