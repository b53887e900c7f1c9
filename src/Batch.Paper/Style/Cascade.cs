using System.Text.RegularExpressions;
using AngleSharp.Dom;
using Batch.Paper.Html;

namespace Batch.Paper.Style;

/// <summary>Rules to computed styles: origin, importance, specificity, order, inheritance, custom properties.</summary>
internal sealed partial class Cascade(StyleSheet sheet, Report report)
{
    private readonly Dictionary<(ComputedStyle Parent, List<StyleRule> Rules, string? Inline, string Presentation), ComputedStyle> _shared = [];
    private double _rootFontSize = 16;

    /// <summary>Style of an element under its parent's style; elements with the same rules share one object.</summary>
    public ComputedStyle Of(IElement element, ComputedStyle parent)
    {
        var rules = sheet.Matching(element);
        var inline = element.GetAttribute("style");
        var presentation = element.NamespaceUri == NamespaceNames.SvgUri
            ? element.Attributes.Where(a => Properties.IsPresentationAttribute(a.LocalName)).ToList() : [];
        var key = (parent, rules, inline, string.Join(';', presentation.Select(a => a.LocalName + ":" + a.Value)));
        if (_shared.TryGetValue(key, out var known)) return known;
        var declared = rules.Where(r => r.UserAgent).SelectMany(r => r.Declarations)
            .Concat(presentation.Select(a => new Declaration(a.LocalName, Properties.WithUnit(a.LocalName, a.Value), Important: false, report.Offset(element), element.LocalName)))
            .Concat(rules.Where(r => !r.UserAgent).SelectMany(r => r.Declarations)).ToList();
        if (inline is not null) declared.AddRange(Inline(element, inline));
        var style = Compute([.. declared.Where(d => !d.Important), .. declared.Where(d => d.Important)], parent, element);
        if (element.ParentElement is null) _rootFontSize = style.FontSize;
        if (_shared.Count < 100_000) _shared[key] = style;
        return style;
    }

    /// <summary>An anonymous box's style: only what is inherited.</summary>
    public static ComputedStyle Anonymous(ComputedStyle parent, Display display) => new(parent) { Display = display };

    /// <summary>Style of a page margin box, which inherits from the root element.</summary>
    public ComputedStyle OfMarginBox(IEnumerable<Declaration> declarations, ComputedStyle root) => Compute([.. declarations], root, null);

    private IEnumerable<Declaration> Inline(IElement element, string inline)
    {
        foreach (var declaration in CssScanner.Declarations(CssScanner.WithoutComments(inline), 0, inline.Length, -1, element.LocalName))
        {
            if (!Properties.Knows(declaration.Name)) report.Add(element, declaration.Name, "property not supported");
            yield return declaration with { Offset = report.Offset(element) };
        }
    }

    private ComputedStyle Compute(List<Declaration> declared, ComputedStyle parent, IElement? element)
    {
        var style = new ComputedStyle(parent);
        foreach (var custom in declared.Where(d => d.Name.StartsWith("--", StringComparison.Ordinal))) style.Custom = style.Custom.SetItem(custom.Name, custom.Value);
        var longhands = new Dictionary<string, (string Value, Declaration Source)>();
        foreach (var declaration in declared.Where(d => !d.Name.StartsWith("--", StringComparison.Ordinal)))
        {
            var value = Substituted(declaration.Value, style.Custom, 0);
            var expanded = value is null ? null : Shorthands.Knows(declaration.Name) ? Shorthands.Expand(declaration.Name, value) : [(declaration.Name, value)];
            if (expanded is null) Complain(declaration, value ?? declaration.Value, element);
            foreach (var (name, part) in expanded ?? []) longhands[name] = (part, declaration);
        }

        var context = new StyleContext(style, parent, _rootFontSize);
        foreach (var (name, (value, source)) in longhands.OrderBy(l => l.Key is "font-size" ? 0 : l.Key is "color" ? 1 : 2))
        {
            if (!Properties.Apply(style, name, value, context)) Complain(source, value, element);
        }

        return style;
    }

    private void Complain(Declaration declaration, string value, IElement? element)
    {
        if (declaration.Offset >= 0) report.Add(element?.LocalName ?? "@page", declaration.Name, declaration.Offset, "value not supported: " + value);
    }

    /// <summary>Puts values in place of var(); null when one is unknown without a fallback, or refers to itself.</summary>
    private static string? Substituted(string value, ImmutableDictionary<string, string> custom, int depth)
    {
        if (!value.Contains("var(", StringComparison.Ordinal)) return value;
        if (depth > 16) return null;
        var failed = false;
        var result = Variable().Replace(value, match =>
        {
            var parts = match.Groups["inside"].Value.Split(',', 2);
            var found = custom.GetValueOrDefault(parts[0].Trim()) ?? (parts.Length > 1 ? parts[1].Trim() : null);
            failed |= found is null;
            return found ?? "";
        });
        return failed ? null : Substituted(result, custom, depth + 1);
    }

    [GeneratedRegex(@"var\((?<inside>(?:[^()]|\((?:[^()]|\([^()]*\))*\))*)\)", RegexOptions.None, matchTimeoutMilliseconds: 20_000)]
    private static partial Regex Variable();
}
