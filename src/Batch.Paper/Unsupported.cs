namespace Batch.Paper;

/// <summary>Something in the document the printer does not honour.</summary>
/// <param name="Tag">Element, or `style` for a rule of a style sheet, or `@page`.</param>
/// <param name="Property">CSS property, selector or attribute; empty when it is the element itself.</param>
/// <param name="Line">Line in the HTML, from 1.</param>
/// <param name="Column">Column in the line, from 1.</param>
/// <param name="Text">What is not honoured, in words.</param>
public sealed record Unsupported(string Tag, string Property, int Line, int Column, string Text);
