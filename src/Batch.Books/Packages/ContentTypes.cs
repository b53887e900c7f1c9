using System.Xml.Linq;

namespace Batch.Books.Packages;

/// <summary>The list that says what each part of a package is.</summary>
internal static class ContentTypes
{
    private const string List = "[Content_Types].xml";

    private static readonly XNamespace Space = "http://schemas.openxmlformats.org/package/2006/content-types";

    /// <summary>The kind of a part; empty where the list does not say.</summary>
    public static string Of(Package package, string name)
    {
        var root = Root(package, out _);
        return (string?)root.Elements(Space + "Override").FirstOrDefault(part =>
            string.Equals((string?)part.Attribute("PartName"), "/" + name, StringComparison.OrdinalIgnoreCase))?.Attribute("ContentType")
            ?? (string?)ByEnding(root, Path.GetExtension(name).TrimStart('.'))?.Attribute("ContentType") ?? "";
    }

    /// <summary>Says what one part is.</summary>
    public static void Say(Package package, string name, string type)
    {
        if (Of(package, name) == type) return;
        var root = Root(package, out var document);
        root.Add(new XElement(Space + "Override", new XAttribute("PartName", "/" + name), new XAttribute("ContentType", type)));
        package.Put(List, XmlPart.Bytes(document));
    }

    /// <summary>Says what the parts of an ending are, where nothing is said yet.</summary>
    public static void SayOfEnding(Package package, string ending, string type)
    {
        var root = Root(package, out var document);
        if (ByEnding(root, ending) is not null) return;
        root.AddFirst(new XElement(Space + "Default", new XAttribute("Extension", ending), new XAttribute("ContentType", type)));
        package.Put(List, XmlPart.Bytes(document));
    }

    private static XElement? ByEnding(XElement root, string ending) =>
        root.Elements(Space + "Default")
            .FirstOrDefault(entry => string.Equals((string?)entry.Attribute("Extension"), ending, StringComparison.OrdinalIgnoreCase));

    private static XElement Root(Package package, out XDocument document)
    {
        document = XmlPart.Load(package.Find(List) ?? throw new InvalidDataException("it has no list of its parts"));
        return XmlPart.Root(document);
    }
}
