using Batch.Paper.Html;
using Batch.Paper.Style;

namespace Batch.Paper.Pages;

/// <summary>Paper size and margins from the @page rules, px. The first page may have its own margins.</summary>
internal sealed class PageSetup
{
    /// <summary>Margin when the document names none, px: 0.4 inch, what browsers print with.</summary>
    private const double DefaultMargin = 38.4;

    private static readonly Dictionary<string, (double Width, double Height)> Sizes = new(StringComparer.OrdinalIgnoreCase)
    {
        ["a3"] = (297, 420),
        ["a4"] = (210, 297),
        ["a5"] = (148, 210),
        ["a6"] = (105, 148),
        ["letter"] = (215.9, 279.4),
        ["legal"] = (215.9, 355.6),
        ["ledger"] = (279.4, 431.8),
    };

    private readonly Sides<double> _first;
    private readonly Sides<double> _other;

    public PageSetup(IReadOnlyList<PageRule> rules, string? sizeOverride, Report report)
    {
        (Width, Height) = InPixels(Sizes["a4"]);
        Rules = rules;
        foreach (var size in rules.Where(r => !r.First).SelectMany(r => r.Declarations).Where(d => d.Name == "size"))
        {
            if (!TrySize(size.Value)) report.Add("@page", "size", size.Offset, "value not supported: " + size.Value);
        }

        foreach (var size in rules.Where(r => r.First).SelectMany(r => r.Declarations).Where(d => d.Name == "size")) report.Add("@page", "size", size.Offset, "the first page has the size of the others");
        if (sizeOverride is not null && !TrySize(sizeOverride + (Width > Height ? " landscape" : ""))) throw new ArgumentException("unknown page size " + sizeOverride, nameof(sizeOverride));
        var all = new Sides<double>(DefaultMargin, DefaultMargin, DefaultMargin, DefaultMargin);
        _other = Margins(rules.Where(r => !r.First), all, report);
        _first = Margins(rules.Where(r => r.First), _other, report);
        if (Math.Abs(_first.Left + _first.Right - _other.Left - _other.Right) > 0.01)
        {
            var at = rules.Where(r => r.First).SelectMany(r => r.Declarations).Select(d => d.Offset).DefaultIfEmpty().First();
            report.Add("@page", "margin", at, "the first page's column is as wide as the others'");
        }

        if (ContentWidth < 10 || ContentHeight(0) < 10 || ContentHeight(1) < 10) throw new PaperException("html", 1, "the margins of @page leave no room on the page");
    }

    public IReadOnlyList<PageRule> Rules { get; }

    public double Width { get; private set; }

    public double Height { get; private set; }

    /// <summary>Browsers lay pages out on whole pixels: the content begins at the rounded margin and its size is rounded up.</summary>
    public double ContentWidth => Math.Ceiling(Width - _other.Left - _other.Right - 0.001);

    /// <summary>Where the content begins on a page, px from its top left.</summary>
    public (double X, double Y) Origin(int page) => (Math.Round(MarginsOf(page).Left), Math.Round(MarginsOf(page).Top));

    public Sides<double> MarginsOf(int page) => page == 0 ? _first : _other;

    public double ContentHeight(int page) => Math.Ceiling(Height - MarginsOf(page).Top - MarginsOf(page).Bottom - 0.001);

    private static (double, double) InPixels((double Width, double Height) mm) => (mm.Width * 96 / 25.4, mm.Height * 96 / 25.4);

    private bool TrySize(string value)
    {
        bool? landscape = null;
        (double Width, double Height)? size = null;
        var lengths = new List<double>();
        foreach (var part in CssScanner.Split(value.ToLowerInvariant(), ' '))
        {
            if (part is "landscape" or "portrait") landscape = part == "landscape";
            else if (Sizes.TryGetValue(part, out var named)) size = InPixels(named);
            else if (Length.Parse(part, 16, 16) is { IsAuto: false, Percent: 0, Px: > 0 } length) lengths.Add(length.Px);
            else if (part != "auto") return false;
        }

        if (lengths.Count is 1 or 2) size = (lengths[0], lengths[^1]);
        (Width, Height) = size ?? (Width, Height);
        if (landscape is { } wide && lengths.Count == 0 && wide != Width > Height) (Width, Height) = (Height, Width);
        return lengths.Count <= 2;
    }

    private Sides<double> Margins(IEnumerable<PageRule> rules, Sides<double> margins, Report report)
    {
        foreach (var declaration in rules.SelectMany(r => r.Declarations).Where(d => d.Name == "margin" || d.Name.StartsWith("margin-", StringComparison.Ordinal)))
        {
            var expanded = declaration.Name == "margin" ? Shorthands.Expand("margin", declaration.Value) : [(declaration.Name, declaration.Value)];
            foreach (var (name, value) in expanded ?? [("", "")])
            {
                var side = Array.IndexOf(["margin-top", "margin-right", "margin-bottom", "margin-left"], name);
                if (side >= 0 && Length.Parse(value, 16, 16) is { IsAuto: false } length) margins = margins.With(side, length.Against(side % 2 == 0 ? Height : Width));
                else report.Add("@page", declaration.Name, declaration.Offset, "value not supported: " + declaration.Value);
            }
        }

        return margins;
    }
}
