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
        _drawing = _relations.Find("vmlDrawing") is { } drawing && LegacyDrawing(edit.Sheet) is { } id && _relations.ById(id) is { } named && workbook.Package.Has(named) ? named : null;
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
        var shapes = _shapes ?? (texts.Count > 0 ? new NoteShapes(_workbook.Package.Names.Count(name => name.EndsWith(".vml", StringComparison.OrdinalIgnoreCase)) + 1) : null);
        foreach (var ((row, column), text) in texts.OrderBy(pair => pair.Key))
        {
            if (!Put(document, row, column, text, shapes)) fails.Add((row, column));
        }

        Save(document, shapes);
        return fails.ToImmutable();
    }

    private bool TakeOut(XDocument document)
    {
        var changed = false;
        foreach (var comment in Comments(document).ToArray())
        {
            if (Named(comment, "text") is not { } text || !CommentText.CutOut(text)) continue;
            changed = true;
            if (!CommentText.IsEmpty(text)) continue;
            comment.Remove();
            var (row, column) = Place(comment);
            _shapes?.Remove(row, column);
        }

        return changed;
    }

    private bool Put(XDocument document, int row, int column, string text, NoteShapes? shapes)
    {
        var space = XmlPart.Root(document).Name.Namespace;
        var there = Comments(document).FirstOrDefault(comment => Place(comment) == (row, column));
        if (there is not null)
        {
            // A conversation is kept in another part; the program that shows it would not show what is added here.
            if (AuthorOf(document, there).StartsWith("tc=", StringComparison.Ordinal) || Named(there, "text") is not { } runs) return false;
            MakeRuns(runs);
            runs.Add(Run(space, "\n\n" + text));
            return true;
        }

        var root = XmlPart.Root(document);
        var list = Named(root, "commentList");
        if (list is null) root.Add(list = new XElement(space + "commentList"));
        var made = new XElement(
            space + "comment",
            new XAttribute("ref", CellRef.Letters(column) + row.ToString(CultureInfo.InvariantCulture)),
            new XAttribute("authorId", AuthorId(document)),
            new XElement(space + "text", Run(space, text)));
        var after = list.Elements().FirstOrDefault(comment => Place(comment).CompareTo((row, column)) > 0);
        if (after is null) list.Add(made);
        else after.AddBeforeSelf(made);
        shapes?.Add(row, column, text, _edit.Sheet.ColumnsWide(column + 1, NoteShapes.LettersALine));
        return true;
    }

    // A text that stands in its comment without runs would be passed over beside them.
    private static void MakeRuns(XElement text)
    {
        foreach (var plain in text.Elements().Where(element => element.Name.LocalName == "t").ToArray()) plain.ReplaceWith(new XElement(text.Name.Namespace + "r", plain));
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
        return new XDocument(new XDeclaration("1.0", "UTF-8", "yes"), new XElement(space + "comments", new XElement(space + "authors"), new XElement(space + "commentList")));
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
        return (int.TryParse(reference.AsSpan().TrimStart("ABCDEFGHIJKLMNOPQRSTUVWXYZ"), NumberStyles.None, CultureInfo.InvariantCulture, out var row) ? row : 0, column);
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
