using System.Buffers.Binary;
using AngleSharp.Dom;
using Batch.Paper.Html;

namespace Batch.Paper.Boxes;

/// <summary>Bytes and natural size of the pictures of a document; a picture that cannot be had is reported and shown by its alternative text.</summary>
internal sealed class ImageSource(Func<string, byte[]?>? resolve, Report report)
{
    private readonly Dictionary<string, byte[]?> _loaded = [];

    public (byte[]? Bytes, (double Width, double Height)? Natural) Load(IElement image)
    {
        var source = image.GetAttribute("src") ?? "";
        if (!_loaded.TryGetValue(source, out var bytes)) _loaded[source] = bytes = Bytes(source);
        var size = bytes is null ? null : Size(bytes);
        if (size is null) report.Add(image, "src", "picture not found or neither PNG nor JPEG: " + (source.Length > 60 ? source[..60] + "..." : source));
        return size is null ? (null, null) : (bytes, size);
    }

    private byte[]? Bytes(string source)
    {
        if (!source.StartsWith("data:", StringComparison.Ordinal)) return resolve?.Invoke(source);
        var comma = source.IndexOf(";base64,", StringComparison.Ordinal);
        var buffer = new byte[source.Length];
        return comma > 0 && Convert.TryFromBase64String(source[(comma + 8)..], buffer, out var length) ? buffer[..length] : null;
    }

    /// <summary>Width and height in pixels from the file's own head; null for other formats.</summary>
    private static (double, double)? Size(byte[] bytes)
    {
        if (bytes.Length > 24 && bytes[0] == 0x89 && bytes.AsSpan(1, 3).SequenceEqual("PNG"u8))
            return (BinaryPrimitives.ReadUInt32BigEndian(bytes.AsSpan(16)), BinaryPrimitives.ReadUInt32BigEndian(bytes.AsSpan(20)));
        if (bytes.Length < 4 || bytes[0] != 0xFF || bytes[1] != 0xD8) return null;
        for (var at = 2; at + 9 < bytes.Length && bytes[at] == 0xFF; at += 2 + BinaryPrimitives.ReadUInt16BigEndian(bytes.AsSpan(at + 2)))
        {
            if (bytes[at + 1] is >= 0xC0 and <= 0xCF and not (0xC4 or 0xC8 or 0xCC))
                return (BinaryPrimitives.ReadUInt16BigEndian(bytes.AsSpan(at + 7)), BinaryPrimitives.ReadUInt16BigEndian(bytes.AsSpan(at + 5)));
        }

        return null;
    }
}
