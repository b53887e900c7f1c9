using Batch.Paper.Boxes;
using Batch.Paper.Fonts;
using Batch.Paper.Html;
using Batch.Paper.Pages;
using Batch.Paper.Paint;
using Batch.Paper.Style;
using Batch.Paper.Svg;

namespace Batch.Paper;

/// <summary>Prints HTML to PDF in process. What of HTML and CSS is promised stands in the README of this room; anything else is reported, never dropped in silence.</summary>
/// <remarks>Holds the built-in fonts and nothing else: one printer serves any number of threads, and the same input gives the same bytes on each.</remarks>
public sealed class PdfPrinter
{
    private readonly FontLibrary _fonts = new();

    /// <summary>Prints a document.</summary>
    /// <param name="html">The whole document as text, at most 32 million characters, elements nested at most 200 deep.</param>
    /// <param name="options">Pictures, date, paper, password.</param>
    /// <returns>The PDF, its number of pages, and what was not honoured.</returns>
    /// <exception cref="PaperException">A picture or line higher than a page, or a document beyond the limits.</exception>
    /// <exception cref="ArgumentException">An unknown page size in the options.</exception>
    /// <exception cref="OperationCanceledException">The token of the options was cancelled.</exception>
    public PrintedDocument Print(string html, PrintOptions options)
    {
        ArgumentNullException.ThrowIfNull(html);
        ArgumentNullException.ThrowIfNull(options);
        var (reader, setup, _, pages) = Painted(html, options);
        var pdf = new PdfDocumentWriter(setup, options, reader.Document, reader.Report).Write(pages);
        return new PrintedDocument(pdf, pages.Count, reader.Report.Found) { Faces = options.WithFaces ? WebFaces.Of(pages.SelectMany(page => page).OfType<DisplayItem.Text>()) : "", Places = PdfDocumentWriter.Places(pages).ToImmutableDictionary(place => place.Key, place => place.Value.Page + 1) };
    }

    /// <summary>A document that is not printed, with the regular and the semibold face in its head under the family <c>Sheet Sans</c>, cut down to its letters and to printable ASCII; a browser then shows it as the print would, without a file beside it.</summary>
    /// <param name="html">The whole document as text; as it is where it has no head.</param>
    public string WithFaces(string html)
    {
        ArgumentNullException.ThrowIfNull(html);
        return WebFaces.In(html, WebFaces.Of(html, _fonts));
    }

    internal (DocumentReader Reader, PageSetup Setup, Fragment Column, List<List<DisplayItem>> Pages) Painted(string html, PrintOptions options)
    {
        var reader = new DocumentReader(html, options.PageSize);
        var report = reader.Report;
        var setup = new PageSetup(reader.Sheet.Pages, options.PageSize, report);
        var cascade = new Cascade(reader.Sheet, report);
        var initial = new ComputedStyle { Display = Display.Block };
        var root = new BoxBuilder(cascade, report, new ImageSource(options.Images, report)).Build(reader.Document.DocumentElement, initial);
        var engine = new LayoutEngine(_fonts, report, options.CancellationToken);
        var margins = LayoutEngine.Margins(root.Style, setup.ContentWidth);
        var column = engine.Block(root, setup.ContentWidth, setup.ContentWidth - margins.Left - margins.Right).Fragment;
        (column.X, column.Y) = (margins.Left, margins.Top);
        var pages = new Paginator(setup, report, options.CancellationToken).Pages(column);
        column.Settle();
        var painter = new PagePainter(setup, _fonts, new SvgPainter(cascade, _fonts, report), report);
        var marginBoxes = new MarginBoxes(setup, cascade, root.Style, reader.Document.DocumentElement, engine, report);
        var painted = new List<List<DisplayItem>>();
        foreach (var page in pages)
        {
            options.CancellationToken.ThrowIfCancellationRequested();
            var items = painter.Paint(page, column);
            painter.Add(items, marginBoxes.On(page.Index, pages.Count, painter.Titles));
            painted.Add(items);
        }

        return (reader, setup, column, painted);
    }
}
