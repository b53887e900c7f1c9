namespace Batch.Paper.Style;

/// <summary>One `name: value` of a style sheet, with its offset in the document (-1 for the built-in sheet).</summary>
internal sealed record Declaration(string Name, string Value, bool Important, int Offset, string Context);
