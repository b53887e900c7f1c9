using System.Globalization;
using System.Text;
using Scriban;
using Scriban.Syntax;

namespace Batch.Sheets.Templates;

/// <summary>
/// Marks each line of a template's own text with its place, so that the rendered page can be led back to its templates; read out of the page again before
/// anyone sees it.
/// </summary>
internal sealed class LineMarks : ScriptVisitor
{
    // Two code points that are no characters and stand in no text of a book.
    private const char Begin = '\uFDD0';
    private const char End = '\uFDD1';
    private readonly string _file;
    private readonly List<int> _lines = [];

    private LineMarks(string file) => _file = file;

    /// <summary>The template with its lines marked.</summary>
    public static Template Into(Template template, string file)
    {
        if (!template.HasErrors && template.Page is { } page)
            page.Accept(new LineMarks(file));
        return template;
    }

    /// <summary>The lines that hold text of the template's own; none where it cannot be understood.</summary>
    public static ImmutableArray<int> Lines(string file, string text)
    {
        var lines = new LineMarks(file);
        if (Template.Parse(text, file) is { HasErrors: false, Page: { } page })
            page.Accept(lines);
        return [.. lines._lines.Distinct().Order()];
    }

    /// <summary>The page without marks, and where each mark stood in it.</summary>
    public static (string Html, ImmutableArray<(int Offset, string File, int Line)> Places) OutOf(string marked)
    {
        var html = new StringBuilder(marked.Length);
        var places = ImmutableArray.CreateBuilder<(int, string, int)>();
        for (var at = 0; at < marked.Length;)
        {
            var begin = marked.IndexOf(Begin, at);
            var end = begin < 0 ? -1 : marked.IndexOf(End, begin);
            if (end < 0)
            {
                html.Append(marked, at, marked.Length - at);
                break;
            }
            html.Append(marked, at, begin - at);
            var mark = marked.AsSpan(begin + 1, end - begin - 1);
            var colon = mark.LastIndexOf(':');
            places.Add((html.Length, mark[..colon].ToString(), int.Parse(mark[(colon + 1)..], NumberStyles.None, CultureInfo.InvariantCulture)));
            at = end + 1;
        }
        return (html.ToString(), places.ToImmutable());
    }

    public override void Visit(ScriptRawStatement node)
    {
        var text = node.Text;
        if (text.FullText is not { } source)
            return;
        var marked = new StringBuilder();
        var line = 1 + source.AsSpan(0, text.Index).Count('\n');
        foreach (var part in source.Substring(text.Index, text.Length).Split('\n'))
        {
            if (marked.Length > 0)
                marked.Append('\n');
            marked.Append(Begin).Append(_file).Append(':').Append(line.ToString(CultureInfo.InvariantCulture)).Append(End).Append(part);
            if (!string.IsNullOrWhiteSpace(part))
                _lines.Add(line);
            line++;
        }
        node.Text = new ScriptStringSlice(marked.ToString());
    }
}
