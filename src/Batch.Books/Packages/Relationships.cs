using System.Globalization;
using System.Xml.Linq;

namespace Batch.Books.Packages;

/// <summary>What a part refers to.</summary>
internal sealed class Relationships
{
    private static readonly XNamespace Space = "http://schemas.openxmlformats.org/package/2006/relationships";

    private readonly Package _package;
    private readonly string _owner;
    private readonly XDocument _document;

    private Relationships(Package package, string owner, XDocument document) => (_package, _owner, _document) = (package, owner, document);

    /// <summary>The relationships of a part; none where it has no list of them.</summary>
    /// <param name="package">The package.</param>
    /// <param name="owner">The part; empty for the package itself.</param>
    public static Relationships Of(Package package, string owner) => new(
        package, owner, package.Find(ListName(owner)) is { } bytes
            ? XmlPart.Load(bytes)
            : new XDocument(new XDeclaration("1.0", "UTF-8", "yes"), new XElement(Space + "Relationships")));

    /// <summary>The part that the first relationship of a type leads to; null where there is none. Types are known by their last word.</summary>
    /// <param name="lastWord">Such as <c>comments</c>.</param>
    public string? Find(string lastWord) => All.Where(relation => Type(relation).EndsWith("/" + lastWord, StringComparison.Ordinal)).Select(Target)
        .OfType<string>().FirstOrDefault();

    /// <summary>The parts that the relationships of a type lead to. Types are known by their last word.</summary>
    /// <param name="lastWord">Such as <c>table</c>.</param>
    public IEnumerable<string> FindAll(string lastWord) => All.Where(relation => Type(relation).EndsWith("/" + lastWord, StringComparison.Ordinal))
        .Select(Target).OfType<string>();

    /// <summary>The part that an id leads to; null where there is none.</summary>
    public string? ById(string id) => All.Where(relation => (string?)relation.Attribute("Id") == id).Select(Target).FirstOrDefault();

    /// <summary>Adds a relationship and gives its id.</summary>
    /// <param name="type">Its type, an address.</param>
    /// <param name="target">Name of the part it leads to.</param>
    public string Add(string type, string target)
    {
        var taken = All.Select(relation => (string?)relation.Attribute("Id")).ToHashSet(StringComparer.Ordinal);
        var number = 1;
        while (taken.Contains(Name(number))) number++;
        XmlPart.Root(_document).Add(
            new XElement(Space + "Relationship", new XAttribute("Id", Name(number)), new XAttribute("Type", type), new XAttribute("Target", "/" + target)));
        _package.Put(ListName(_owner), XmlPart.Bytes(_document));
        return Name(number);

        static string Name(int number) => "rIdTrip" + number.ToString(CultureInfo.InvariantCulture);
    }

    private IEnumerable<XElement> All => XmlPart.Root(_document).Elements(Space + "Relationship");

    private static string Type(XElement relation) => (string?)relation.Attribute("Type") ?? "";

    private static string ListName(string owner)
    {
        var slash = owner.LastIndexOf('/');
        return owner[..(slash + 1)] + "_rels/" + owner[(slash + 1)..] + ".rels";
    }

    private string? Target(XElement relation)
    {
        if ((string?)relation.Attribute("TargetMode") == "External" || (string?)relation.Attribute("Target") is not { } target) return null;
        var path = target.StartsWith('/') ? target[1..] : _owner[..(_owner.LastIndexOf('/') + 1)] + target;
        var steps = new List<string>();
        foreach (var step in path.Split('/'))
        {
            if (step == ".." && steps.Count > 0) steps.RemoveAt(steps.Count - 1);
            else if (step is not ("." or "..")) steps.Add(step);
        }

        return string.Join('/', steps);
    }
}
