namespace Batch.Sheets;

/// <summary>A page rendered to find what is wrong in its templates: every part knows its place in them, and a wrong name does not stop the rest.</summary>
public sealed class TracedPage
{
    private readonly ImmutableArray<int> _lineStarts;
    private readonly ImmutableArray<(int Offset, string File, int Line)> _places;

    internal TracedPage(string html, ImmutableArray<(int Offset, string File, int Line)> places, ImmutableArray<TemplateProblem> problems)
    {
        Html = html;
        Problems = problems;
        _places = places;
        _lineStarts = [0, .. Enumerable.Range(0, html.Length).Where(k => html[k] == '\n').Select(k => k + 1)];
    }

    /// <summary>The page as far as it could be rendered; empty where nothing could.</summary>
    public string Html { get; }

    /// <summary>What is wrong in the templates, each once, in the order found.</summary>
    public ImmutableArray<TemplateProblem> Problems { get; }

    /// <summary>The lines of the templates that wrote something, by file.</summary>
    public IEnumerable<(string File, int Line)> Reached => _places.Select(place => (place.File, place.Line)).Distinct();

    /// <summary>The line of a template that wrote a place of the page; null where none is known.</summary>
    /// <param name="line">Line of <see cref="Html"/>, 1 for the first.</param>
    /// <param name="column">Column, 1 for the first.</param>
    public (string File, int Line)? PlaceOf(int line, int column)
    {
        if (line < 1 || line > _lineStarts.Length)
            return null;
        var offset = _lineStarts[line - 1] + column - 1;
        var at = _places.Length;
        while (at > 0 && _places[at - 1].Offset > offset)
            at--;
        return at == 0 ? null : (_places[at - 1].File, _places[at - 1].Line);
    }
}
