using System.Text;
using System.Xml;

namespace Batch.Books.Packages;

/// <summary>The text of an XML part with the encoding it is written in.</summary>
/// <param name="Text">The text without byte order mark.</param>
/// <param name="Encoding">Its encoding; writes the byte order mark that was there.</param>
internal sealed record PartText(string Text, Encoding Encoding)
{
    private static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>The text of a part, once it is seen to be well-formed XML without a document type.</summary>
    /// <param name="bytes">The part.</param>
    /// <exception cref="XmlException">It is not well-formed, holds a document type, or is in an encoding other than UTF-8 and UTF-16.</exception>
    public static PartText Of(byte[] bytes)
    {
        var part = Decode(bytes);
        using var reader = XmlReader.Create(new StringReader(part.Text),
            new XmlReaderSettings { DtdProcessing = DtdProcessing.Prohibit, CheckCharacters = false });
        while (reader.Read())
        {
            if (reader.NodeType == XmlNodeType.XmlDeclaration
                && reader.GetAttribute("encoding") is { } named
                && !named.StartsWith("UTF-", StringComparison.OrdinalIgnoreCase))
                throw new XmlException($"it is written in {named}");
        }

        return part;
    }

    /// <summary>The bytes of the part with another text.</summary>
    /// <param name="text">The text.</param>
    public byte[] Bytes(string text) => [.. Encoding.GetPreamble(), .. Encoding.GetBytes(text)];

    private static PartText Decode(byte[] bytes)
    {
        try
        {
            return bytes switch
            {
                [0xEF, 0xBB, 0xBF, ..] => new PartText(Utf8.GetString(bytes, 3, bytes.Length - 3), new UTF8Encoding(encoderShouldEmitUTF8Identifier: true)),
                [0xFF, 0xFE, ..] => new PartText(Encoding.Unicode.GetString(bytes, 2, bytes.Length - 2), Encoding.Unicode),
                [0xFE, 0xFF, ..] => new PartText(Encoding.BigEndianUnicode.GetString(bytes, 2, bytes.Length - 2), Encoding.BigEndianUnicode),
                _ => new PartText(Utf8.GetString(bytes), Utf8),
            };
        }
        catch (DecoderFallbackException thrown)
        {
            throw new XmlException("it is not written in UTF-8", thrown);
        }
    }
}
