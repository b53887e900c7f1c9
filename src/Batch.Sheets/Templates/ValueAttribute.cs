namespace Batch.Sheets.Templates;

/// <summary>
/// Marks a property as a value that templates can use. What it says is the documentation of the value; its name in templates is the property's in snake case.
/// </summary>
/// <param name="text">What it is.</param>
[AttributeUsage(AttributeTargets.Property)]
internal sealed class ValueAttribute(string text) : Attribute
{
    public string Text { get; } = text;
}
