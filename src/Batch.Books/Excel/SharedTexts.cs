using System.Text;
using System.Xml;
using DocumentFormat.OpenXml.Packaging;

namespace Batch.Books.Excel;

/// <summary>The shared strings of a workbook.</summary>
internal static class SharedTexts
{
    /// <summary>Most characters of one text; a spreadsheet program allows 32,767.</summary>
    private const int GreatestText = 1_000_000;

    /// <summary>The strings by index; rich text without its formats, phonetic hints left out.</summary>
    public static IReadOnlyList<string> Of(WorkbookPart workbook, string name)
    {
        if (workbook.SharedStringTablePart is not { } part) return [];
        var texts = new List<string>();
        using var reader = PartReader.Open(part, name);
        while (reader.Read())
        {
            if (reader.NodeType == XmlNodeType.Element && reader.LocalName == "si") texts.Add(Text(reader, name));
        }

        return texts;
    }

    /// <summary>The text of the element the reader stands on, from its <c>t</c> elements.</summary>
    /// <param name="reader">The reader.</param>
    /// <param name="name">Name of the book, for the refusal of a text too long.</param>
    public static string Text(XmlReader reader, string name)
    {
        if (reader.IsEmptyElement) return "";
        var depth = reader.Depth;
        var text = "";
        StringBuilder? more = null;
        var inText = false;
        var phonetic = -1;
        while (reader.Read() && reader.Depth > depth)
        {
            if (reader.NodeType == XmlNodeType.Element)
            {
                if (phonetic < 0 && reader.LocalName == "rPh" && !reader.IsEmptyElement) phonetic = reader.Depth;
                inText = reader.LocalName == "t" && !reader.IsEmptyElement && phonetic < 0;
            }
            else if (reader.NodeType == XmlNodeType.EndElement)
            {
                inText = false;
                if (reader.Depth == phonetic) phonetic = -1;
            }
            else if (inText && reader.NodeType is XmlNodeType.Text or XmlNodeType.CDATA or XmlNodeType.SignificantWhitespace or XmlNodeType.Whitespace)
            {
                if (text.Length == 0)
                {
                    text = reader.Value;
                }
                else
                {
                    more ??= new StringBuilder(text);
                    more.Append(reader.Value);
                    if (more.Length > GreatestText) throw new BookException($"{name} holds a text too large to be that of a cell");
                }
            }
        }

        return more?.ToString() ?? text;
    }
}
