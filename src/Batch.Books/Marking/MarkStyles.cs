using System.Xml.Linq;
using Batch.Books.Editing;

namespace Batch.Books.Marking;

/// <summary>
/// The styles of marked cells. A mark changes the fill of a cell only; its named style, called <c>tripbatch fail</c> or <c>tripbatch caution</c>, keeps the
/// fill that was there before, so that the mark can be taken off again, also after another program has saved the book and numbered its styles anew.
/// </summary>
internal sealed class MarkStyles(StylesPart styles)
{
    private const string Fail = "tripbatch fail";
    private const string Caution = "tripbatch caution";

    /// <summary>Stands between the name of ours and that of the user's named style beneath.</summary>
    private const string On = " on ";

    /// <summary>Stands before the number of a style without a name.</summary>
    private const string Numbered = "style ";

    /// <summary>Red of a failure: black text on it has a contrast of 6 to 1, white text 3 to 1 (WCAG 2.1, 1.4.3, reckoned).</summary>
    public const string Red = "FFEF5350";

    /// <summary>Amber of a caution: black text on it has a contrast of 12 to 1.</summary>
    public const string Amber = "FFFFC107";

    private readonly Dictionary<int, int> _unmarked = [];
    private readonly Dictionary<(int Style, State State), int> _marked = [];

    /// <summary>The style of a cell once a mark of ours is taken off; the same where it has none.</summary>
    /// <param name="style">The style it has.</param>
    public int Unmarked(int style)
    {
        if (!_unmarked.TryGetValue(style, out var before)) _unmarked.Add(style, before = TakenOff(style));
        return before;
    }

    /// <summary>The style with the fill of a state.</summary>
    /// <param name="style">The style without a mark.</param>
    /// <param name="state">Fail or caution.</param>
    public int Marked(int style, State state)
    {
        if (!_marked.TryGetValue((style, state), out var marked)) _marked.Add((style, state), marked = PutOn(style, state));
        return marked;
    }

    private int PutOn(int style, State state)
    {
        var before = styles.Format(style);
        var named = Name(StylesPart.Int(before, "xfId"));
        var word = (state == State.Fail ? Fail : Caution) + (named.Length > 0 ? On + named : "");
        var format = new XElement(before);
        format.SetAttributeValue("fillId", styles.Fill(state == State.Fail ? Red : Amber));
        format.SetAttributeValue("applyFill", 1);
        format.SetAttributeValue("xfId", NamedFormat(word, before));
        return StylesPart.FindOrAdd(styles.CellFormats, format);
    }

    // The named style of a word that keeps the fill of a format; made where there is none.
    private int NamedFormat(string word, XElement before)
    {
        var fill = StylesPart.Int(before, "fillId");
        var taken = new HashSet<string>(StringComparer.Ordinal);
        foreach (var named in styles.NamedStyles.Elements())
        {
            var name = (string?)named.Attribute("name") ?? "";
            taken.Add(name);
            var at = StylesPart.Int(named, "xfId");
            if (WithoutNumber(name) == word && styles.StyleFormats.Elements().ElementAtOrDefault(at) is { } kept && StylesPart.Int(kept, "fillId") == fill)
                return at;
        }

        var free = word;
        for (var number = 2; taken.Contains(free); number++) free = word + " #" + number.ToString(System.Globalization.CultureInfo.InvariantCulture);
        var format = new XElement(before);
        format.Attribute("xfId")?.Remove();
        var index = styles.StyleFormats.Elements().Count();
        styles.StyleFormats.Add(format);
        styles.StyleFormats.SetAttributeValue("count", index + 1);
        styles.NamedStyles.Add(styles.Made("cellStyle", new XAttribute("name", free), new XAttribute("xfId", index)));
        styles.NamedStyles.SetAttributeValue("count", styles.NamedStyles.Elements().Count());
        return index;
    }

    private int TakenOff(int style)
    {
        var marked = styles.Format(style);
        var at = StylesPart.Int(marked, "xfId");
        var name = NameOf(at);
        if (!name.StartsWith(Fail, StringComparison.Ordinal) && !name.StartsWith(Caution, StringComparison.Ordinal)) return style;
        if (styles.StyleFormats.Elements().ElementAtOrDefault(at) is not { } kept) return style;
        var word = WithoutNumber(name);
        var on = word.IndexOf(On, StringComparison.Ordinal);
        var before = new XElement(marked);
        before.SetAttributeValue("fillId", StylesPart.Int(kept, "fillId"));
        before.SetAttributeValue("xfId", on < 0 ? 0 : IndexOf(word[(on + On.Length)..]));
        // Best the very format it was made from; else one that looks the same, since programs write formats anew.
        foreach (var words in new Func<XElement, string>[] { AllWords, Looks })
        {
            var (sought, index) = (words(before), 0);
            foreach (var format in styles.CellFormats.Elements())
            {
                if (words(format) == sought) return index;
                index++;
            }
        }

        return StylesPart.FindOrAdd(styles.CellFormats, before);
    }

    // The name of a user's named style; empty for the usual one. Libraries write formats for styles that have no name: those go by number.
    private string Name(int xfId) =>
        xfId == 0 ? "" : NameOf(xfId) is { Length: > 0 } name ? name : Numbered + xfId.ToString(System.Globalization.CultureInfo.InvariantCulture);

    private string NameOf(int xfId) =>
        (string?)styles.NamedStyles.Elements().FirstOrDefault(named => StylesPart.Int(named, "xfId") == xfId)?.Attribute("name") ?? "";

    private int IndexOf(string name)
    {
        if (styles.NamedStyles.Elements().FirstOrDefault(named => (string?)named.Attribute("name") == name) is { } found) return StylesPart.Int(found, "xfId");
        return name.StartsWith(Numbered, StringComparison.Ordinal)
            && int.TryParse(name.AsSpan(Numbered.Length), System.Globalization.NumberStyles.None, System.Globalization.CultureInfo.InvariantCulture,
                out var number)
            && number < styles.StyleFormats.Elements().Count() ? number : 0;
    }

    private static string WithoutNumber(string name) => name.IndexOf(" #", StringComparison.Ordinal) is var at and > 0 ? name[..at] : name;

    private static string Looks(XElement format) => string.Join(
        ' ', new[] { "numFmtId", "fontId", "fillId", "borderId", "xfId" }
            .Select(name => StylesPart.Int(format, name).ToString(System.Globalization.CultureInfo.InvariantCulture))
            .Append((string?)format.Attribute("quotePrefix") is "1" or "true" ? "quoted" : "")
            .Concat(Children(format)));

    private static string AllWords(XElement format) => string.Join(
        ' ', format.Attributes().Where(attribute => !attribute.IsNamespaceDeclaration && attribute.Name.LocalName != "applyFill")
            .Select(attribute => attribute.Name + "=" + attribute.Value).Order(StringComparer.Ordinal).Concat(Children(format)));

    private static IEnumerable<string> Children(XElement format) => format.Elements().Select(Words);

    // By names without prefixes: an element that is not in a document does not know the prefix of its namespace.
    private static string Words(XElement element) => string.Join(
        ' ', element.Attributes().Where(attribute => !attribute.IsNamespaceDeclaration).Select(attribute => attribute.Name.LocalName + "=" + attribute.Value)
            .Prepend(element.Name.LocalName).Concat(Children(element)));
}
