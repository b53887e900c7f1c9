using System.Collections.Concurrent;
using AngleSharp;
using AngleSharp.Css.Dom;
using AngleSharp.Css.Parser;
using AngleSharp.Dom;
using Batch.Paper.Html;

namespace Batch.Paper.Style;

/// <summary>All rules that hold on paper, indexed by the last simple selector, and the page rules.</summary>
internal sealed class StyleSheet
{
    private const int MostKnown = 5000;
    private static readonly string[] Refused = ["::before", "::after", ":before", ":after", "::marker", "::first-line", "::first-letter", ":hover", ":focus", ":visited", ":active"];

    /// <summary>Selectors read before: the sheets of a batch share theirs. They do not change once read; the number is bounded.</summary>
    private static readonly ConcurrentDictionary<string, ISelector?> Known = new(StringComparer.Ordinal);
    private readonly Dictionary<string, List<StyleRule>> _index = [];
    private readonly Dictionary<IElement, int> _paths = [];
    private readonly Dictionary<(int Parent, string Name, string? Id, string? Classes), int> _steps = [];
    private readonly Dictionary<int, (List<StyleRule> Matching, List<StyleRule> ToAsk)> _byPath = [];
    private readonly Dictionary<string, List<StyleRule>> _sets = [];
    private ICssSelectorParser? _selectors;
    private readonly Report _report;
    private readonly (double Width, double Height) _page;
    private int _order;

    /// <param name="report">Takes what is not honoured.</param>
    /// <param name="page">Width and height of the page's content, px, for media queries.</param>
    public StyleSheet(Report report, (double Width, double Height) page)
    {
        (_report, _page) = (report, page);
        Add(UserAgentSheet.Text, -1, userAgent: true);
    }

    public List<PageRule> Pages { get; } = [];

    public void Add(string css, int baseOffset, bool userAgent)
    {
        css = CssScanner.WithoutComments(css);
        AddBlock(css, 0, css.Length, baseOffset, userAgent);
    }

    /// <summary>The page rules of a text that stand outside any condition: they are wanted before conditions on the page's size can be judged.</summary>
    public static IEnumerable<PageRule> PageRules(string css, Report report)
    {
        css = CssScanner.WithoutComments(css);
        return CssScanner.Statements(css, 0, css.Length).Where(s => s.HasBody && s.Prelude.StartsWith("@page", StringComparison.OrdinalIgnoreCase))
            .Select(s => PageRule.Read(css, s, s.Prelude[5..].Trim(), 0, report));
    }

    /// <summary>Rules that match an element, weakest first: one list for all elements that the same rules match. Not to be changed.</summary>
    public List<StyleRule> Matching(IElement element)
    {
        var path = Path(element);
        if (!_byPath.TryGetValue(path, out var known))
        {
            var candidates = Candidates(element).ToList();
            _byPath[path] = known = (Set(candidates.FindAll(r => r.ByPath && r.Selector.Match(element, null))), candidates.FindAll(r => !r.ByPath));
        }

        var more = known.ToAsk.FindAll(r => r.Selector.Match(element, null));
        return more.Count == 0 ? known.Matching : Set([.. more, .. known.Matching]);
    }

    private List<StyleRule> Set(List<StyleRule> rules)
    {
        rules.Sort(Weaker);
        var key = string.Join(',', rules.Select(r => r.Order));
        return _sets.TryGetValue(key, out var known) ? known : _sets[key] = rules;
    }

    private static int Weaker(StyleRule a, StyleRule b) => a.UserAgent != b.UserAgent ? (a.UserAgent ? -1 : 1)
        : a.Specificity.CompareTo(b.Specificity) is not 0 and var by ? by : a.Order.CompareTo(b.Order);

    private IEnumerable<StyleRule> Candidates(IElement element)
    {
        IEnumerable<string> keys = ["*", element.LocalName, .. element.Id is { Length: > 0 } id ? ["#" + id] : Array.Empty<string>(), .. element.ClassList.Select(c => "." + c)];
        return keys.SelectMany(key => _index.TryGetValue(key, out var rules) ? rules : []);
    }

    /// <summary>Number of the names, ids and classes from the root to an element.</summary>
    private int Path(IElement? element)
    {
        if (element is null) return -1;
        if (_paths.TryGetValue(element, out var known)) return known;
        var step = (Path(element.ParentElement), element.LocalName, element.Id, element.ClassName);
        if (!_steps.TryGetValue(step, out var path)) _steps[step] = path = _steps.Count;
        return _paths[element] = path;
    }

    private void AddBlock(string css, int from, int to, int baseOffset, bool userAgent)
    {
        foreach (var statement in CssScanner.Statements(css, from, to))
        {
            var offset = Math.Max(0, baseOffset) + statement.Start;
            if (statement.Prelude.StartsWith('@')) AddAtRule(css, statement, baseOffset, offset);
            else if (statement.HasBody) AddRule(css, statement, baseOffset, userAgent);
            else if (statement.Prelude.Length > 0) _report.Add("style", "", offset, "not a rule: " + statement.Prelude);
        }
    }

    private void AddAtRule(string css, CssStatement statement, int baseOffset, int offset)
    {
        var name = statement.Prelude.Split(' ', '(', '{', ':')[0].ToLowerInvariant();
        var rest = statement.Prelude[name.Length..].Trim();
        switch (name)
        {
            case "@media" when statement.HasBody:
                if (MediaQuery.Matches(rest, _page, out var unknown)) AddBlock(css, statement.BodyStart, statement.BodyEnd, baseOffset, userAgent: false);
                if (unknown is not null) _report.Add("style", "@media", offset, "condition not judged: " + unknown);
                break;
            case "@page" when statement.HasBody:
                Pages.Add(PageRule.Read(css, statement, rest, baseOffset, _report));
                break;
            case "@charset":
                break;
            default:
                _report.Add("style", name, offset, "rule not supported");
                break;
        }
    }

    private ISelector? Selector(string text)
    {
        if (Known.TryGetValue(text, out var known)) return known;
        _selectors ??= BrowsingContext.New(Configuration.Default).GetService<ICssSelectorParser>() ?? throw new InvalidOperationException("No selector parser.");
        var selector = _selectors.ParseSelector(text);
        if (Known.Count < MostKnown) Known[text] = selector;
        return selector;
    }

    private void AddRule(string css, CssStatement statement, int baseOffset, bool userAgent)
    {
        var declarations = CssScanner.Declarations(css, statement.BodyStart, statement.BodyEnd, baseOffset, statement.Prelude).ToImmutableArray();
        foreach (var selectorText in CssScanner.Split(statement.Prelude, ','))
        {
            var offset = Math.Max(0, baseOffset) + statement.Start;
            var selector = Refused.Any(r => selectorText.Contains(r, StringComparison.OrdinalIgnoreCase)) ? null : Selector(selectorText);
            if (selector is null)
            {
                _report.Add("style", selectorText, offset, "selector not supported");
                continue;
            }

            var rule = new StyleRule(selector, selector.Specificity, userAgent, _order++, declarations) { ByPath = selectorText.IndexOfAny([':', '[', '+', '~']) < 0 };
            var key = Key(selectorText);
            if (!_index.TryGetValue(key, out var rules)) _index[key] = rules = [];
            rules.Add(rule);
        }

        foreach (var declaration in declarations.Where(d => !Properties.Knows(d.Name)))
            _report.Add("style", declaration.Name, Math.Max(0, declaration.Offset), "property not supported");
        foreach (var nested in CssScanner.Statements(css, statement.BodyStart, statement.BodyEnd).Where(s => s.HasBody))
            _report.Add("style", nested.Prelude, Math.Max(0, baseOffset) + nested.Start, "nested rules are not supported");
    }

    /// <summary>Id, class or element name of the last compound: every match must carry it.</summary>
    private static string Key(string selector)
    {
        var last = CssScanner.Split(selector.Replace('>', ' ').Replace('+', ' ').Replace('~', ' '), ' ')[^1];
        var plain = last.Split(':', '[')[0];
        var hash = plain.IndexOf('#', StringComparison.Ordinal);
        var dot = plain.IndexOf('.', StringComparison.Ordinal);
        if (hash >= 0) return "#" + plain[(hash + 1)..].Split('.')[0];
        if (dot >= 0) return "." + plain[(dot + 1)..].Split('.')[0];
        return plain.Length == 0 ? "*" : plain.ToLowerInvariant() is var name && selector.Any(char.IsUpper) ? plain : name;
    }
}
