using System.Globalization;
using System.Xml.Linq;
using Batch.Books.Packages;

namespace Batch.Books.Editing;

/// <summary>The styles of a workbook: finds one that looks as asked, or adds it. Styles that are there keep their numbers.</summary>
internal sealed class StylesPart
{
    /// <summary>The first number of a format that a workbook defines itself (ECMA-376 part 1, 18.8.30).</summary>
    private const int FirstOwnFormat = 164;

    private const string UsualName = "xl/styles.xml";

    // The order the schema demands of what may stand before the cell formats (ECMA-376 part 1, 18.8.39).
    private static readonly string[] Order =
        ["numFmts", "fonts", "fills", "borders", "cellStyleXfs", "cellXfs", "cellStyles", "dxfs", "tableStyles", "colors", "extLst"];

    private readonly WorkbookParts _workbook;
    private readonly string _name;
    private readonly XDocument _document;
    private readonly XNamespace _space;

    /// <summary>Opens the styles; begins them where the workbook has none.</summary>
    /// <param name="workbook">The workbook.</param>
    public StylesPart(WorkbookParts workbook)
    {
        _workbook = workbook;
        _space = Dialect.Sheets(workbook.IsStrict);
        if (workbook.Styles is { } name && workbook.Package.Find(name) is { } bytes)
        {
            (_name, _document) = (name, XmlPart.Load(bytes));
            _space = XmlPart.Root(_document).Name.Namespace;
        }
        else
        {
            // Some programs look for the styles under this name alone, whatever the relationship says.
            _name = workbook.Package.Has(UsualName) ? workbook.Package.FreeName("xl/styles", ".xml") : UsualName;
            _document = new XDocument(new XDeclaration("1.0", "UTF-8", "yes"), new XElement(_space + "styleSheet"));
            workbook.Package.Put(_name, XmlPart.Bytes(_document));
            ContentTypes.Say(workbook.Package, _name, "application/vnd.openxmlformats-officedocument.spreadsheetml.styles+xml");
            Relationships.Of(workbook.Package, workbook.Name).Add(Dialect.Relations(workbook.IsStrict) + "/styles", _name);
        }

        Seed();
    }

    /// <summary>Namespace of the part.</summary>
    public XNamespace Space => _space;

    /// <summary>The formats that cells name by number.</summary>
    public XElement CellFormats => List("cellXfs");

    /// <summary>The formats behind named styles.</summary>
    public XElement StyleFormats => List("cellStyleXfs");

    /// <summary>The named styles.</summary>
    public XElement NamedStyles => List("cellStyles");

    /// <summary>The format of a number; the first where the number is beyond the list.</summary>
    public XElement Format(int index) => CellFormats.Elements().ElementAtOrDefault(index) ?? CellFormats.Elements().First();

    /// <summary>The number of an entry of a list that equals one; it is added where none does.</summary>
    /// <param name="list">The list, such as <see cref="CellFormats"/>.</param>
    /// <param name="entry">The entry.</param>
    public static int FindOrAdd(XElement list, XElement entry)
    {
        var index = 0;
        foreach (var known in list.Elements())
        {
            if (Same(known, entry)) return index;
            index++;
        }

        list.Add(entry);
        list.SetAttributeValue("count", index + 1);
        return index;
    }

    /// <summary>The number of a solid fill.</summary>
    /// <param name="argb">Its colour, eight hexadecimal digits.</param>
    public int Fill(string argb) => FindOrAdd(List("fills"), Made("fill", Made(
        "patternFill", new XAttribute("patternType", "solid"), Made("fgColor", new XAttribute("rgb", argb)), Made("bgColor", new XAttribute("indexed", 64)))));

    /// <summary>The number of a font made from the workbook's first one.</summary>
    /// <param name="change">Changes a copy of it.</param>
    public int Font(Action<XElement, XNamespace> change)
    {
        var font = new XElement(List("fonts").Elements().First());
        change(font, _space);
        return FindOrAdd(List("fonts"), font);
    }

    /// <summary>The number of a number format.</summary>
    /// <param name="code">Its code.</param>
    public int NumberFormat(string code)
    {
        var formats = List("numFmts");
        var known = formats.Elements().FirstOrDefault(format => (string?)format.Attribute("formatCode") == code);
        if (known is not null) return Int(known, "numFmtId");
        var number = Math.Max(FirstOwnFormat, formats.Elements().Select(format => Int(format, "numFmtId") + 1).DefaultIfEmpty(0).Max());
        return Int(formats.Elements().ElementAt(FindOrAdd(formats, Made("numFmt", new XAttribute("numFmtId", number), new XAttribute("formatCode", code)))),
            "numFmtId");
    }

    /// <summary>An element of this part.</summary>
    public XElement Made(string name, params object[] content) => new(_space + name, content);

    /// <summary>Puts the styles back into the package.</summary>
    public void Save()
    {
        if (XmlPart.Root(_document).Element(_space + "numFmts") is { HasElements: false } empty) empty.Remove();
        _workbook.Package.Put(_name, XmlPart.Bytes(_document));
    }

    /// <summary>A whole number in an attribute; 0 where there is none.</summary>
    public static int Int(XElement element, string attribute) =>
        int.TryParse((string?)element.Attribute(attribute), NumberStyles.Integer, CultureInfo.InvariantCulture, out var number) ? number : 0;

    private XElement List(string name)
    {
        var root = XmlPart.Root(_document);
        if (root.Element(_space + name) is { } list) return list;
        list = Made(name);
        var later = Order.Skip(Array.IndexOf(Order, name) + 1).Select(next => root.Element(_space + next)).FirstOrDefault(next => next is not null);
        if (later is null) root.Add(list);
        else later.AddBeforeSelf(list);
        return list;
    }

    // A workbook may leave out what it does not use; what is numbered from must be there.
    private void Seed()
    {
        Begin("fonts", () => [Made("font", Made("sz", new XAttribute("val", 11)), Made("name", new XAttribute("val", "Calibri")))]);
        Begin("fills", () => [Made("fill", Made("patternFill", new XAttribute("patternType", "none"))),
            Made("fill", Made("patternFill", new XAttribute("patternType", "gray125")))]);
        Begin("borders", () => [Made("border")]);
        Begin("cellStyleXfs", () => [Plain()]);
        Begin("cellXfs", () => [Plain()]);
        Begin("cellStyles", () => [Made("cellStyle", new XAttribute("name", "Normal"), new XAttribute("xfId", 0), new XAttribute("builtinId", 0))]);
    }

    private XElement Plain() =>
        Made("xf", new XAttribute("numFmtId", 0), new XAttribute("fontId", 0), new XAttribute("fillId", 0), new XAttribute("borderId", 0));

    private void Begin(string name, Func<XElement[]> entries)
    {
        var list = List(name);
        if (list.HasElements) return;
        foreach (var entry in entries()) list.Add(entry);
        list.SetAttributeValue("count", list.Elements().Count());
    }

    private static bool Same(XElement a, XElement b)
    {
        if (a.Name != b.Name) return false;
        var left = a.Attributes().Where(attribute => !attribute.IsNamespaceDeclaration).ToDictionary(attribute => attribute.Name, attribute => attribute.Value);
        var right = b.Attributes().Where(attribute => !attribute.IsNamespaceDeclaration).ToArray();
        if (left.Count != right.Length || !Array.TrueForAll(right, attribute => left.TryGetValue(attribute.Name, out var value) && value == attribute.Value))
            return false;
        var (inA, inB) = (a.Elements().ToArray(), b.Elements().ToArray());
        return inA.Length == inB.Length && inA.Zip(inB).All(pair => Same(pair.First, pair.Second)) && (inA.Length > 0 || a.Value == b.Value);
    }
}
