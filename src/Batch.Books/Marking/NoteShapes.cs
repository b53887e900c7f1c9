using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace Batch.Books.Marking;

/// <summary>The frames of the comments of one sheet. The old drawing language they are kept in is not always well-formed, so it is changed as text.</summary>
internal sealed partial class NoteShapes
{
    private static readonly ImmutableArray<string> Spaces =
        ["xmlns:v=\"urn:schemas-microsoft-com:vml\"", "xmlns:o=\"urn:schemas-microsoft-com:office:office\"",
            "xmlns:x=\"urn:schemas-microsoft-com:office:excel\""];

    private readonly Encoding _encoding;
    private readonly StringBuilder _added = new();
    private string _text;
    private int _last;

    /// <summary>Begins an empty drawing.</summary>
    /// <param name="number">Number of the drawing in its workbook, from 1; its shapes are numbered from 1024 times that, as spreadsheet programs do.</param>
    public NoteShapes(int number)
    {
        _encoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
        _text = string.Create(CultureInfo.InvariantCulture,
            $"""<xml xmlns:v="urn:schemas-microsoft-com:vml" xmlns:o="urn:schemas-microsoft-com:office:office" xmlns:x="urn:schemas-microsoft-com:office:excel"><o:shapelayout v:ext="edit"><o:idmap v:ext="edit" data="{number}"/></o:shapelayout></xml>""");
        First = 1024 * number;
    }

    /// <summary>Opens a drawing.</summary>
    /// <param name="bytes">The part.</param>
    public NoteShapes(byte[] bytes)
    {
        _encoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: bytes is [0xEF, 0xBB, 0xBF, ..]);
        _text = bytes is [0xEF, 0xBB, 0xBF, ..] ? Encoding.UTF8.GetString(bytes, 3, bytes.Length - 3) : Encoding.UTF8.GetString(bytes);
        First = 1024 * Math.Max(1, Number(BlockNumber().Match(_text)));
    }

    private int First { get; }

    /// <summary>Whether a frame can be put in.</summary>
    public bool IsUnderstood => _text.LastIndexOf("</xml>", StringComparison.Ordinal) > 0;

    // The names a frame needs, where the drawing does not declare them for all of it.
    private string Names
    {
        get
        {
            var start = Math.Max(0, _text.IndexOf("<xml", StringComparison.Ordinal));
            var root = _text[start..Math.Max(start, _text.IndexOf('>', start))];
            return string.Concat(Spaces.Where(space => !root.Contains(space, StringComparison.Ordinal)).Select(space => " " + space));
        }
    }

    /// <summary>Takes the frames of some cells' comments away.</summary>
    /// <param name="cells">The cells.</param>
    public void Remove(IReadOnlySet<(int Row, int Column)> cells)
    {
        if (cells.Count == 0) return;
        _text = Shape()
            .Replace(_text, shape => cells.Contains((Number(RowOf().Match(shape.Value)) + 1, Number(ColumnOf().Match(shape.Value)) + 1)) ? "" : shape.Value);
    }

    /// <summary>Letters that stand in a line of a frame.</summary>
    public const int LettersALine = 52;

    /// <summary>Adds the frame of a cell's comment, as large as its text.</summary>
    /// <param name="row">Row, 1 or more.</param>
    /// <param name="column">Column, A = 1.</param>
    /// <param name="text">The comment.</param>
    /// <param name="lastColumn">The column that the frame reaches.</param>
    public void Add(int row, int column, string text, int lastColumn)
    {
        const int PointsALine = 13;
        const int PointsARow = 15;
        var lines = text.Split('\n').Sum(line => 1 + (line.Length / LettersALine)) + 1;
        if (_last == 0) _last = Math.Max(First, ShapeNumber().Matches(_text).Select(Number).DefaultIfEmpty(0).Max());
        var number = ++_last;
        var names = Names;
        var type = _added.Length > 0 || _text.Contains("id=\"_x0000_t202\"", StringComparison.Ordinal) ? "" :
            $"""<v:shapetype{names} id="_x0000_t202" coordsize="21600,21600" o:spt="202" path="m,l,21600r21600,l21600,xe"><v:stroke joinstyle="miter"/><v:path gradientshapeok="t" o:connecttype="rect"/></v:shapetype>""";
        var shape = string.Create(
            CultureInfo.InvariantCulture,
            $"""<v:shape{names} id="_x0000_s{number}" type="#_x0000_t202" style="position:absolute;margin-left:80pt;margin-top:2pt;width:270pt;height:{(lines * PointsALine) + 8}pt;z-index:{number};visibility:hidden" fillcolor="#fff8e1" o:insetmode="auto"><v:fill color2="#fff8e1"/><v:shadow on="t" color="black" obscured="t"/><v:path o:connecttype="none"/><v:textbox style="mso-direction-alt:auto"><div style="text-align:left"></div></v:textbox><x:ClientData ObjectType="Note"><x:MoveWithCells/><x:SizeWithCells/><x:Anchor>{column}, 15, {Math.Max(0, row - 2)}, 10, {lastColumn}, 5, {Math.Max(0, row - 2) + (lines * PointsALine / PointsARow) + 2}, 4</x:Anchor><x:AutoFill>False</x:AutoFill><x:Row>{row - 1}</x:Row><x:Column>{column - 1}</x:Column></x:ClientData></v:shape>""");
        _added.Append(type).Append(shape);
    }

    /// <summary>The part.</summary>
    public byte[] Bytes()
    {
        var text = _added.Length == 0 ? _text : _text.Insert(_text.LastIndexOf("</xml>", StringComparison.Ordinal), _added.ToString());
        return [.. _encoding.GetPreamble(), .. _encoding.GetBytes(text)];
    }

    private static int Number(Match match) =>
        int.TryParse(match.Groups["n"].Value, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : -1;

    [GeneratedRegex(@"<v:shape\s.*?</v:shape>", RegexOptions.Singleline | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 5000)]
    private static partial Regex Shape();

    [GeneratedRegex(@"<[A-Za-z]+:Row>\s*(?<n>[0-9]+)\s*</", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 20_000)]
    private static partial Regex RowOf();

    [GeneratedRegex(@"<[A-Za-z]+:Column>\s*(?<n>[0-9]+)\s*</", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 20_000)]
    private static partial Regex ColumnOf();

    [GeneratedRegex("<o:idmap[^>]*data=\"(?<n>[0-9]{1,5})", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 20_000)]
    private static partial Regex BlockNumber();

    [GeneratedRegex("_x0000_s(?<n>[0-9]{1,9})", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 20_000)]
    private static partial Regex ShapeNumber();
}
