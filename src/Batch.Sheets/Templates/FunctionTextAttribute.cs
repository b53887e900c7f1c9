namespace Batch.Sheets.Templates;

/// <summary>What a function of the templates does; its documentation.</summary>
/// <param name="text">One sentence without a full stop.</param>
[AttributeUsage(AttributeTargets.Method)]
internal sealed class FunctionTextAttribute(string text) : Attribute
{
    public string Text { get; } = text;
}
