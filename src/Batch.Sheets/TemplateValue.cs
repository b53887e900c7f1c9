namespace Batch.Sheets;

/// <summary>One value that a template can use.</summary>
/// <param name="Path">Path from the top, such as <c>legs[].plan.fuel.trip</c>.</param>
/// <param name="Type">Type in words, such as <c>fuel</c>, <c>text</c>, <c>list of groups</c>.</param>
/// <param name="Unit">Unit of the bare number; empty where there is none.</param>
/// <param name="Text">What it is.</param>
/// <param name="Example">An example as it is written when no function is used; empty for groups, lists, and where the model has none.</param>
public sealed record TemplateValue(string Path, string Type, string Unit, string Text, string Example);
