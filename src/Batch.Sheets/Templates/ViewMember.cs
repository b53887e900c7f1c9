using System.Reflection;

namespace Batch.Sheets.Templates;

/// <summary>One value of a view.</summary>
/// <param name="Name">Name in templates.</param>
/// <param name="Property">The property behind it.</param>
/// <param name="Text">What it is.</param>
internal sealed record ViewMember(string Name, PropertyInfo Property, string Text)
{
    /// <summary>The value; an empty text counts as no value, so that a template can ask for it.</summary>
    public object? Read(object view) => Property.GetValue(view) is var value && value is "" ? null : value;
}
