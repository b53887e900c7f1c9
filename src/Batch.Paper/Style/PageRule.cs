using Batch.Paper.Html;

namespace Batch.Paper.Style;

/// <summary>One @page rule: its declarations and margin boxes. `First` holds for `@page :first` only.</summary>
internal sealed record PageRule(bool First, ImmutableArray<Declaration> Declarations, ImmutableDictionary<string, ImmutableArray<Declaration>> MarginBoxes)
{
    private static readonly string[] BoxNames =
    [
        "top-left-corner", "top-left", "top-center", "top-right", "top-right-corner", "bottom-left-corner", "bottom-left", "bottom-center", "bottom-right", "bottom-right-corner",
        "left-top", "left-middle", "left-bottom", "right-top", "right-middle", "right-bottom",
    ];

    public static PageRule Read(string css, CssStatement statement, string selector, int baseOffset, Report report)
    {
        if (selector is not ("" or ":first")) report.Add("style", "@page " + selector, Math.Max(0, baseOffset) + statement.Start, "page selector not supported");
        var declarations = CssScanner.Declarations(css, statement.BodyStart, statement.BodyEnd, baseOffset, "@page").ToImmutableArray();
        foreach (var unknown in declarations.Where(d => d.Name != "size" && d.Name != "margin" && !d.Name.StartsWith("margin-", StringComparison.Ordinal) && !d.Name.StartsWith("--", StringComparison.Ordinal)))
            report.Add("@page", unknown.Name, unknown.Offset, "property not supported");
        var boxes = ImmutableDictionary.CreateBuilder<string, ImmutableArray<Declaration>>();
        foreach (var box in CssScanner.Statements(css, statement.BodyStart, statement.BodyEnd).Where(s => s.HasBody))
        {
            var name = box.Prelude.TrimStart('@').ToLowerInvariant();
            if (!BoxNames.Contains(name)) report.Add("@page", box.Prelude, baseOffset + box.Start, "margin box not supported");
            else boxes[name] = [.. CssScanner.Declarations(css, box.BodyStart, box.BodyEnd, baseOffset, "@" + name)];
            foreach (var unknown in boxes.GetValueOrDefault(name, []).Where(d => d.Name != "content" && !Properties.Knows(d.Name)))
                report.Add("@page", unknown.Name, unknown.Offset, "property not supported");
        }

        return new PageRule(selector == ":first", selector is "" or ":first" ? declarations : [], selector is "" or ":first" ? boxes.ToImmutable() : ImmutableDictionary<string, ImmutableArray<Declaration>>.Empty);
    }
}
