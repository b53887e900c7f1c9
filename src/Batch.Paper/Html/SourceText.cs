namespace Batch.Paper.Html;

/// <summary>The document's text with its line starts, so an offset can be named as line and column (both from 1).</summary>
internal sealed class SourceText
{
    private readonly List<int> _lineStarts = [0];

    public SourceText(string html)
    {
        Text = html.Replace("\r\n", "\n", StringComparison.Ordinal).Replace('\r', '\n');
        for (var i = 0; i < Text.Length; i++)
        {
            if (Text[i] == '\n') _lineStarts.Add(i + 1);
        }
    }

    public string Text { get; }

    public (int Line, int Column) Place(int offset)
    {
        var found = _lineStarts.BinarySearch(offset);
        var line = found >= 0 ? found : ~found - 1;
        return (line + 1, offset - _lineStarts[line] + 1);
    }
}
