namespace Batch.Sheets;

/// <summary>One function that a template can use.</summary>
/// <param name="Name">Name.</param>
/// <param name="Text">What it does.</param>
/// <param name="Parameters">Parameters after the value, such as <c>decimals</c>; empty for none.</param>
public sealed record TemplateFunction(string Name, string Text, string Parameters);
