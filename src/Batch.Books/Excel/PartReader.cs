using System.Xml;
using DocumentFormat.OpenXml.Packaging;

namespace Batch.Books.Excel;

/// <summary>Opens a part of a workbook for reading in one forward pass.</summary>
internal static class PartReader
{
    /// <summary>Most bytes of one part [B].</summary>
    public const long GreatestPart = 128L * 1024 * 1024;

    /// <summary>The reader; refuses document type declarations and parts beyond the limit.</summary>
    public static XmlReader Open(OpenXmlPart part, string name) => XmlReader.Create(
        new LimitedStream(part.GetStream(FileMode.Open, FileAccess.Read), GreatestPart, name),
        new XmlReaderSettings
        {
            DtdProcessing = DtdProcessing.Prohibit,
            CloseInput = true,
            IgnoreComments = true,
            IgnoreProcessingInstructions = true,
            CheckCharacters = false
        });
}
