using AngleSharp.Dom;

namespace Batch.Paper.Html;

/// <summary>Gathers what the printer will not honour, each thing once, in the order of the source.</summary>
internal sealed class Report(SourceText source)
{
    private readonly Dictionary<(int Offset, string Tag, string Property, string Text), Unsupported> _found = [];

    public ImmutableArray<Unsupported> Found => [.. _found.OrderBy(f => f.Key.Offset).ThenBy(f => f.Key.Property, StringComparer.Ordinal)
        .ThenBy(f => f.Key.Text, StringComparer.Ordinal).Select(f => f.Value)];

    public void Add(string tag, string property, int offset, string text)
    {
        var (line, column) = source.Place(offset);
        _found.TryAdd((offset, tag, property, text), new Unsupported(tag, property, line, column, text));
    }

    public void Add(IElement? element, string property, string text) => Add(element?.LocalName ?? "", property, Offset(element), text);

    public int Line(IElement? element) => source.Place(Offset(element)).Line;

    /// <summary>Where an element begins in the source. The parser keeps no place for the root of a picture, so that one is looked up after the element before it.</summary>
    public int Offset(IElement? element)
    {
        if (element is null) return 0;
        if (element.SourceReference is { } reference) return Math.Max(0, reference.Position.Index);
        var before = element.PreviousElementSibling;
        while (before?.LastElementChild is { } last) before = last;
        var from = Math.Min(source.Text.Length, Offset(before ?? element.ParentElement) + 1);
        var found = source.Text.IndexOf("<" + element.LocalName, from, StringComparison.OrdinalIgnoreCase);
        return found >= 0 ? found : from - 1;
    }
}
