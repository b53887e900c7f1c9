using System.Globalization;
using System.Xml.Linq;
using Batch.Books.Cells;
using Batch.Books.Editing;
using Batch.Books.Packages;

namespace Batch.Books.Marking;

/// <summary>The comments of one sheet: takes those of ours out and puts new ones in; what others wrote stays.</summary>
internal sealed class SheetComments
{
    /// <summary>The author of our comments.</summary>
    private const string Author = "tripbatch check";

    private readonly WorkbookParts _workbook;
    private readonly string _sheet;
    private readonly SheetEdit _edit;
    private readonly Relationships _relations;
    private readonly string? _name;
    private readonly string? _drawing;
    private readonly XDocument? _document;
    private readonly NoteShapes? _shapes;

    /// <summary>Opens the comments of a sheet.</summary>
    /// <param name="workbook">The workbook.</param>
    /// <param name="sheet">Name of the sheet's part.</param>
    /// <param name="edit">The changes to the sheet.</param>
    public SheetComments(WorkbookParts workbook, string sheet, SheetEdit edit)
    {
        (_workbook, _sheet, _edit) = (workbook, sheet, edit);
        _relations = Relationships.Of(workbook.Package, sheet);
        _name = _relations.Find("comments") is { } name && workbook.Package.Has(name) ? name : null;
        if (_name is not null && workbook.Package.Find(_name) is { } bytes) _document = XmlPart.Load(bytes);
        _drawing = _relations.Find("vmlDrawing") is { } drawing
            && LegacyDrawing(edit.Sheet) is { } id
            && _relations.ById(id) is { } named
            && workbook.Package.Has(named) ? named : null;
        if (_drawing is not null && workbook.Package.Find(_drawing) is { } shapes) _shapes = new NoteShapes(shapes);
    }

    /// <summary>Takes the comments of ours out and puts others in.</summary>
    /// <param name="texts">The new ones by row and column.</param>
    /// <returns>The cells whose comment could not be written, such as those with a conversation.</returns>
    public ImmutableArray<(int Row, int Column)> Replace(IReadOnlyDictionary<(int Row, int Column), string> texts)
    {
        var document = _document;
        var changed = document is not null && TakeOut(document);
        if (texts.Count == 0 && !changed) return [];
        var fails = ImmutableArray.CreateBuilder<(int Row, int Column)>();
        if (_shapes is { IsUnderstood: false }) return [.. texts.Keys.Order()];
        document ??= New();
        var shapes = _shapes
            ?? (texts.Count > 0 ? new NoteShapes(_workbook.Package.Names.Count(name => name.EndsWith(".vml", StringComparison.OrdinalIgnoreCase)) + 1) : null);
        Put(document, texts, shapes, fails);

        Save(document, shapes);
        return fails.ToImmutable();
    }

    private bool TakeOut(XDocument document)
    {
        var changed = false;
        var gone = new HashSet<(int Row, int Column)>();
        foreach (var comment in Comments(document).ToArray())
        {
            if (Named(comment, "text") is not { } text || !CommentText.CutOut(text)) continue;
            changed = true;
            if (!CommentText.IsEmpty(text)) continue;
            gone.Add(Place(comment));
            comment.Remove();
        }

        _shapes?.Remove(gone);
        return changed;
    }

    // Both go by row and column, so that one pass over what is there finds every place.
    private void Put(XDocument document, IReadOnlyDictionary<(int Row, int Column), string> texts, NoteShapes? shapes,
        ImmutableArray<(int Row, int Column)>.Builder fails)
    {
        var root = XmlPart.Root(document);
        var list = Named(root, "commentList");
        if (list is null) root.Add(list = new XElement(root.Name.Namespace + "commentList"));
        var there = list.Elements().Select(comment => (Comment: comment, At: Place(comment))).ToArray();
        var known = there.GroupBy(pair => pair.At).ToDictionary(pairs => pairs.Key, pairs => pairs.First().Comment);
        var author = AuthorId(document);
        var next = 0;
        foreach (var (at, text) in texts.OrderBy(pair => pair.Key))
        {
            if (known.TryGetValue(at, out var comment))
            {
                if (!Append(document, comment, text)) fails.Add(at);
                continue;
            }

            while (next < there.Length && there[next].At.CompareTo(at) < 0) next++;
            var made = New(root.Name.Namespace, at, author, text);
            if (next < there.Length) there[next].Comment.AddBeforeSelf(made);
            else list.Add(made);
            shapes?.Add(at.Row, at.Column, text, _edit.Sheet.ColumnsWide(at.Column + 1, NoteShapes.LettersALine));
        }
    }

    // A conversation is kept in another part; the program that shows it would not show what is added here.
    private static bool Append(XDocument document, XElement comment, string text)
    {
        if (AuthorOf(document, comment).StartsWith("tc=", StringComparison.Ordinal) || Named(comment, "text") is not { } runs) return false;
        MakeRuns(runs);
        runs.Add(Run(XmlPart.Root(document).Name.Namespace, "\n\n" + text));
        return true;
    }

    private static XElement New(XNamespace space, (int Row, int Column) at, int author, string text) => new(
        space + "comment",
        new XAttribute("ref", CellRef.Letters(at.Column) + at.Row.ToString(CultureInfo.InvariantCulture)),
        new XAttribute("authorId", author),
        new XElement(space + "text", Run(space, text)));

    // A text that stands in its comment without runs would be passed over beside them.
    private static void MakeRuns(XElement text)
    {
        foreach (var plain in text.Elements().Where(element => element.Name.LocalName == "t").ToArray())
            plain.ReplaceWith(new XElement(text.Name.Namespace + "r", plain));
    }

    private static XElement Run(XNamespace space, string text) => new(
        space + "r",
        new XElement(space + "rPr", new XElement(space + "sz", new XAttribute("val", 9)), new XElement(space + "rFont", new XAttribute("val", "Tahoma"))),
        new XElement(space + "t", new XAttribute(XNamespace.Xml + "space", "preserve"), XmlPart.Clean(text)));

    private void Save(XDocument document, NoteShapes? shapes)
    {
        var package = _workbook.Package;
        var name = _name ?? package.FreeName("xl/comments", ".xml");
        package.Put(name, XmlPart.Bytes(document));
        if (_name is null)
        {
            ContentTypes.Say(package, name, "application/vnd.openxmlformats-officedocument.spreadsheetml.comments+xml");
            _relations.Add(Dialect.Relations(_workbook.IsStrict) + "/comments", name);
        }

        if (shapes is null) return;
        var drawing = _drawing ?? package.FreeName("xl/drawings/vmlDrawing", ".vml");
        package.Put(drawing, shapes.Bytes());
        if (_drawing is not null) return;
        ContentTypes.SayOfEnding(package, "vml", "application/vnd.openxmlformats-officedocument.vmlDrawing");
        _edit.SetLegacyDrawing(_relations.Add(Dialect.Relations(_workbook.IsStrict) + "/vmlDrawing", drawing));
    }

    private XDocument New()
    {
        XNamespace space = Dialect.Sheets(_workbook.IsStrict);
        return new XDocument(new XDeclaration("1.0", "UTF-8", "yes"),
            new XElement(space + "comments", new XElement(space + "authors"), new XElement(space + "commentList")));
    }

    private static int AuthorId(XDocument document)
    {
        var root = XmlPart.Root(document);
        var authors = Named(root, "authors");
        if (authors is null) root.AddFirst(authors = new XElement(root.Name.Namespace + "authors"));
        var index = authors.Elements().TakeWhile(author => author.Value != Author).Count();
        if (index == authors.Elements().Count()) authors.Add(new XElement(root.Name.Namespace + "author", Author));
        return index;
    }

    private static string AuthorOf(XDocument document, XElement comment) =>
        Named(XmlPart.Root(document), "authors")?.Elements().ElementAtOrDefault(StylesPart.Int(comment, "authorId"))?.Value ?? "";

    private static IEnumerable<XElement> Comments(XDocument document) => Named(XmlPart.Root(document), "commentList")?.Elements() ?? [];

    private static XElement? Named(XElement parent, string name) => parent.Elements().FirstOrDefault(element => element.Name.LocalName == name);

    private static (int Row, int Column) Place(XElement comment)
    {
        var reference = (string?)comment.Attribute("ref") ?? "";
        var column = SheetText.ColumnOf(reference);
        return (int.TryParse(reference.AsSpan().TrimStart("ABCDEFGHIJKLMNOPQRSTUVWXYZ"), NumberStyles.None, CultureInfo.InvariantCulture, out var row)
            ? row
            : 0, column);
    }

    private static string? LegacyDrawing(SheetText sheet)
    {
        for (var tag = XmlTags.Next(sheet.Text, sheet.DataClose.End); tag is { } at; tag = XmlTags.Next(sheet.Text, at.End))
        {
            if (!at.Is(sheet.Text, sheet.Prefix + "legacyDrawing")) continue;
            var text = sheet.Text[at.Start..at.End];
            var id = text.IndexOf(":id", StringComparison.Ordinal);
            if (id < 0) return null;
            var start = id;
            while (!char.IsWhiteSpace(text[start - 1])) start--;
            return at.Value(sheet.Text, text[start..(id + 3)]);
        }

        return null;
    }
}
