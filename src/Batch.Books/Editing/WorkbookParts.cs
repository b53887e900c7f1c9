using System.Globalization;
using System.Xml;
using Batch.Books.Packages;

namespace Batch.Books.Editing;

/// <summary>The parts of a workbook by what they are: the workbook itself, its styles, its sheets by name.</summary>
internal sealed class WorkbookParts
{
    private readonly List<(string Name, string Part)> _sheets = [];

    /// <summary>Finds the parts.</summary>
    /// <param name="package">The package.</param>
    /// <exception cref="InvalidDataException">It has no workbook.</exception>
    public WorkbookParts(Package package)
    {
        Package = package;
        Name = Relationships.Of(package, "").Find("officeDocument") ?? throw new InvalidDataException("it has no workbook part");
        var text = Text(Name).Text;
        var relations = Relationships.Of(package, Name);
        IsStrict = text.Contains(Dialect.Sheets(strict: true), StringComparison.Ordinal);
        Styles = relations.Find("styles");
        foreach (var tag in XmlTags.Of(text).Where(tag => !tag.IsClose))
        {
            if (tag.LocalName(text) != "sheet" || Id(text, tag) is not { } id || relations.ById(id) is not { } part || !package.Has(part)) continue;
            _sheets.Add((tag.Value(text, "name") ?? "", part));
        }
    }

    /// <summary>The package.</summary>
    public Package Package { get; }

    /// <summary>Name of the workbook part.</summary>
    public string Name { get; }

    /// <summary>Name of the styles part; null where there is none.</summary>
    public string? Styles { get; }

    /// <summary>Whether the workbook is of the strict edition of the standard.</summary>
    public bool IsStrict { get; }

    /// <summary>Names of the sheets with their parts, in workbook order.</summary>
    public IReadOnlyList<(string Name, string Part)> Sheets => _sheets;

    /// <summary>The part of a sheet; null where there is none of that name.</summary>
    public string? Sheet(string name) => _sheets.Find(sheet => string.Equals(sheet.Name, name, StringComparison.Ordinal)).Part;

    /// <summary>The text of a part.</summary>
    /// <exception cref="InvalidDataException">It is not there.</exception>
    public PartText Text(string part) => PartText.Of(Package.Find(part) ?? throw new InvalidDataException($"the part {part} is missing"));

    /// <summary>Adds a sheet behind the others.</summary>
    /// <param name="name">Its name, which no other sheet has.</param>
    /// <param name="content">Its part.</param>
    public void AddSheet(string name, byte[] content)
    {
        var part = Package.FreeName("xl/worksheets/sheet", ".xml");
        var text = Text(Name);
        Package.Put(part, content);
        ContentTypes.Say(Package, part, "application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml");
        var id = Relationships.Of(Package, Name).Add(Dialect.Relations(IsStrict) + "/worksheet", part);
        var tags = XmlTags.Of(text.Text).ToList();
        var sheets = tags.Find(tag => tag.IsClose && tag.LocalName(text.Text) == "sheets");
        if (sheets == default) throw new XmlException("it lists no sheets");
        var prefix = text.Text[sheets.NameStart..sheets.NameEnd][..^"sheets".Length];
        var highest = tags.Where(tag => !tag.IsClose && tag.LocalName(text.Text) == "sheet")
            .Select(tag => uint.TryParse(tag.Value(text.Text, "sheetId"), CultureInfo.InvariantCulture, out var number) ? number : 0).DefaultIfEmpty(0u).Max();
        var splices = new Splices();
        splices.Insert(sheets.Start, string.Create(
            CultureInfo.InvariantCulture,
            $"<{prefix}sheet name=\"{XmlPart.Escaped(name)}\" sheetId=\"{highest + 1}\" xmlns:r=\"{Dialect.Relations(IsStrict)}\" r:id=\"{id}\"/>"));
        Package.Put(Name, text.Bytes(splices.Apply(text.Text)));
        _sheets.Add((name, part));
    }

    private static string? Id(string text, XmlTag sheet)
    {
        var tag = text[sheet.Start..sheet.End];
        var at = tag.IndexOf(":id=", StringComparison.Ordinal);
        if (at < 0) return null;
        var start = at;
        while (!char.IsWhiteSpace(tag[start - 1])) start--;
        return sheet.Value(text, tag[start..(at + 3)]);
    }
}
