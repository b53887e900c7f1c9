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

    public static int Offset(IElement? element)
    {
        for (; element is not null; element = element.ParentElement)
        {
            if (element.SourceReference is { } reference) return Math.Max(0, reference.Position.Index);
        }

        return 0;
    }
}
