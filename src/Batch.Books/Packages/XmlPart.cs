using System.Text;
using System.Xml;
using System.Xml.Linq;

namespace Batch.Books.Packages;

/// <summary>Loads and writes small parts as trees; white space and order stay.</summary>
internal static class XmlPart
{
    private static readonly XmlReaderSettings Reading = new() { DtdProcessing = DtdProcessing.Prohibit, CheckCharacters = false };

    private static readonly XmlWriterSettings Writing = new()
    {
        Encoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false),
        NewLineHandling = NewLineHandling.Entitize,
        CheckCharacters = false,
    };

    /// <summary>The tree of a part.</summary>
    /// <exception cref="XmlException">It is not well-formed or holds a document type.</exception>
    public static XDocument Load(byte[] bytes)
    {
        using var reader = XmlReader.Create(new MemoryStream(bytes, writable: false), Reading);
        return XDocument.Load(reader, LoadOptions.PreserveWhitespace);
    }

    /// <summary>The bytes of a tree.</summary>
    public static byte[] Bytes(XDocument document)
    {
        document.Declaration ??= new XDeclaration("1.0", "UTF-8", "yes");
        document.Declaration.Encoding = "UTF-8";
        using var buffer = new MemoryStream();
        using (var writer = XmlWriter.Create(buffer, Writing)) document.Save(writer);
        return buffer.ToArray();
    }

    /// <summary>The root of a tree.</summary>
    public static XElement Root(XDocument document) => document.Root ?? throw new XmlException("it has no root element");

    /// <summary>
    /// A text as a spreadsheet program takes it: characters that XML does not allow become blanks, and text that looks like an escape is escaped itself.
    /// </summary>
    /// <remarks>Source: ECMA-376 part 1, 22.9.2.19 (ST_Xstring): <c>_xHHHH_</c> stands for a character.</remarks>
    public static string Clean(string text)
    {
        var clean = new StringBuilder(text.Length);
        for (var i = 0; i < text.Length; i++)
        {
            if (char.IsHighSurrogate(text[i]) && i + 1 < text.Length && char.IsLowSurrogate(text[i + 1])) clean.Append(text[i++]).Append(text[i]);
            else if (text[i] == '\r') clean.Append(i + 1 < text.Length && text[i + 1] == '\n' ? "" : "\n");
            else if (text[i] == '_' && LooksEscaped(text.AsSpan(i))) clean.Append("_x005F_");
            else clean.Append(XmlConvert.IsXmlChar(text[i]) ? text[i] : ' ');
        }

        return clean.ToString();
    }

    /// <summary>A text to stand between tags or in an attribute of quotation marks.</summary>
    public static string Escaped(string text) =>
        Clean(text).Replace("&", "&amp;", StringComparison.Ordinal).Replace("<", "&lt;", StringComparison.Ordinal)
            .Replace(">", "&gt;", StringComparison.Ordinal).Replace("\"", "&quot;", StringComparison.Ordinal);

    private static bool LooksEscaped(ReadOnlySpan<char> text) =>
        text.Length >= 7 && text[1] == 'x' && text[6] == '_' && char.IsAsciiHexDigit(text[2]) && char.IsAsciiHexDigit(text[3]) && char.IsAsciiHexDigit(
            text[4]) && char.IsAsciiHexDigit(
            text[5]);
}
