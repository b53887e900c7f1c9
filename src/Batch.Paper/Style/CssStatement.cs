namespace Batch.Paper.Style;

/// <summary>A piece of a style sheet: text before the brace, and where the body lies (-1 when there is none).</summary>
internal sealed record CssStatement(string Prelude, int Start, int BodyStart, int BodyEnd)
{
    public bool HasBody => BodyStart >= 0;
}
