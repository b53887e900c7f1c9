using System.Security.Cryptography;
using System.Text;
using AngleSharp.Html.Dom;
using Batch.Paper.Html;
using Batch.Paper.Pages;
using PdfSharp.Drawing;
using PdfSharp.Pdf;

namespace Batch.Paper.Paint;

/// <summary>Painted pages to a PDF file: pages, links, bookmarks, metadata, encryption. PDFsharp 6.2.4 keeps the objects and writes the file.</summary>
internal sealed class PdfDocumentWriter(PageSetup setup, PrintOptions options, IHtmlDocument html, Report report)
{
    public byte[] Write(IReadOnlyList<List<DisplayItem>> pages)
    {
        using var document = new PdfDocument();
        document.Options.CompressContentStreams = false;
        using var digest = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        var resources = new PdfResources(document);
        var written = pages.Select(items => Page(document, items, resources, digest)).ToList();
        Describe(document, digest);
        var shared = resources.Finish();
        foreach (var page in written) page.Elements["/Resources"] = shared.Reference;
        var places = Places(pages);
        for (var i = 0; i < pages.Count; i++) Links(document, written, i, pages[i], places);
        Bookmarks(document, written, pages);
        using var stream = new MemoryStream();
        if (options.Password is { } password)
        {
            document.SecuritySettings.UserPassword = password;
            document.SecuritySettings.OwnerPassword = password;
            document.SecurityHandler.SetEncryptionToV5(encryptMetadata: false);
        }

        document.Save(stream, closeStream: false);
        var file = stream.ToArray();
        var open = options.Password is null;
        Xmp.Replace(file, open ? document.Info.Title : "", open ? document.Info.Author : "", options.MadeAt);
        return file;
    }

    private PdfPage Page(PdfDocument document, List<DisplayItem> items, PdfResources resources, IncrementalHash digest)
    {
        options.CancellationToken.ThrowIfCancellationRequested();
        var page = document.AddPage();
        page.Width = XUnit.FromPoint(Math.Round(setup.Width * 0.75, 3));
        page.Height = XUnit.FromPoint(Math.Round(setup.Height * 0.75, 3));
        var content = new PdfCanvas(resources).Draw(items, setup.Height);
        digest.AppendData(content);
        PdfParts.Fill(page.Contents.AppendContent(), content);
        return page;
    }

    /// <summary>What stands in the file beside its pages. The file's id is a digest of what is drawn, sixteen characters of one byte each.</summary>
    private void Describe(PdfDocument document, IncrementalHash digest)
    {
        var title = html.Title ?? "";
        var author = html.QuerySelector("meta[name=author]")?.GetAttribute("content") ?? "";
        var made = options.MadeAt.UtcDateTime;
        digest.AppendData(Encoding.UTF8.GetBytes(FormattableString.Invariant($"{title}\n{author}\n{options.MadeAt.ToUnixTimeSeconds()}\n{setup.Width}")));
        document.Info.Title = title;
        document.Info.Author = author;
        document.Info.Creator = "tripbatch";
        document.Info.CreationDate = made;
        document.Info.ModificationDate = made;
        document.Internals.FirstDocumentID = document.Internals.SecondDocumentID = Encoding.Latin1.GetString(digest.GetHashAndReset(), 0, 16);
        document.ViewerPreferences.DisplayDocTitle = title.Length > 0;
        if (html.DocumentElement.GetAttribute("lang") is { Length: > 0 } language) document.Language = language;
    }

    /// <summary>Where each element with an id begins.</summary>
    public static Dictionary<string, (int Page, double Y)> Places(IReadOnlyList<List<DisplayItem>> pages)
    {
        var places = new Dictionary<string, (int, double)>();
        for (var i = 0; i < pages.Count; i++)
        {
            foreach (var anchor in pages[i].OfType<DisplayItem.Anchor>()) places.TryAdd(anchor.Id, (i, anchor.Y));
        }

        return places;
    }

    private void Links(PdfDocument document, List<PdfPage> written, int index, List<DisplayItem> items, Dictionary<string, (int Page, double Y)> places)
    {
        var annotations = new PdfArray(document);
        foreach (var link in Joined(items.OfType<DisplayItem.Link>()))
        {
            var (left, top) = (link.X * 0.75, (setup.Height - link.Y) * 0.75);
            var area = new PdfRectangle(new XPoint(Math.Round(left, 3), Math.Round(top - link.Height * 0.75, 3)), new XPoint(Math.Round(left + link.Width * 0.75, 3), Math.Round(top, 3)));
            var annotation = new PdfDictionary(document);
            PdfParts.Set(annotation, ("/Type", new PdfName("/Annot")), ("/Subtype", new PdfName("/Link")), ("/Rect", area), ("/Border", new PdfArray(document, new PdfInteger(0), new PdfInteger(0), new PdfInteger(0))), ("/F", new PdfInteger(4)));
            if (link.Target.StartsWith('#'))
            {
                if (!places.TryGetValue(Uri.UnescapeDataString(link.Target[1..]), out var place))
                {
                    report.Add(html.QuerySelectorAll("a[href]").FirstOrDefault(a => a.GetAttribute("href") == link.Target), "href", "no such place in the document: " + link.Target);
                    continue;
                }

                annotation.Elements["/Dest"] = Destination(document, written[place.Page], place.Y);
            }
            else
            {
                var action = new PdfDictionary(document);
                PdfParts.Set(action, ("/S", new PdfName("/URI")), ("/URI", new PdfString(Uri.TryCreate(link.Target, UriKind.Absolute, out var uri) ? uri.AbsoluteUri : link.Target)));
                annotation.Elements["/A"] = action;
            }

            document.Internals.AddObject(annotation);
            annotations.Elements.Add(annotation.Reference ?? throw new InvalidOperationException("A link without a number."));
        }

        if (annotations.Elements.Count > 0) written[index].Elements["/Annots"] = annotations;
    }

    /// <summary>Pieces of one link beside each other on a line become one rectangle.</summary>
    private static List<DisplayItem.Link> Joined(IEnumerable<DisplayItem.Link> links)
    {
        var joined = new List<DisplayItem.Link>();
        foreach (var link in links)
        {
            if (joined.Count > 0 && joined[^1] is var last && last.Target == link.Target && last.Y == link.Y && Math.Abs(last.X + last.Width - link.X) < 1) joined[^1] = last with { Width = link.X + link.Width - last.X };
            else joined.Add(link);
        }

        return joined;
    }

    private PdfArray Destination(PdfDocument document, PdfPage page, double y) =>
        new(document, page.Reference ?? throw new InvalidOperationException("A page without a number."), new PdfName("/XYZ"), new PdfInteger(0), new PdfReal(Math.Round((setup.Height - y) * 0.75, 2)), PdfNull.Value);

    private void Bookmarks(PdfDocument document, List<PdfPage> written, IReadOnlyList<List<DisplayItem>> pages)
    {
        var open = new Stack<(int Level, PdfOutlineCollection Children)>();
        for (var i = 0; i < pages.Count; i++)
        {
            foreach (var bookmark in pages[i].OfType<DisplayItem.Bookmark>())
            {
                while (open.Count > 0 && open.Peek().Level >= bookmark.Level) open.Pop();
                var outline = (open.Count > 0 ? open.Peek().Children : document.Outlines).Add(bookmark.Title, written[i], opened: true);
                if (bookmark.Title.All(c => c is >= ' ' and < '\u007F')) outline.Elements["/Title"] = new PdfString(bookmark.Title);
                outline.PageDestinationType = PdfPageDestinationType.Xyz;
                outline.Left = 0;
                outline.Top = Math.Round((setup.Height - bookmark.Y) * 0.75, 2);
                open.Push((bookmark.Level, outline.Outlines));
            }
        }
    }
}
