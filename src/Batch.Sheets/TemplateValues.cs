using Batch.Sheets.Templates;

namespace Batch.Sheets;

/// <summary>
/// Lists everything a template can use: values with type, unit and an example, and functions. Made from the view types themselves, so it cannot fall behind.
/// </summary>
public static class TemplateValues
{
    /// <summary>The values of a model, by their path from the top, in the order of the types; a list is marked with <c>[]</c>.</summary>
    /// <param name="model">A model with as much in it as can be, from which the examples are taken.</param>
    public static ImmutableArray<TemplateValue> Of(SheetModel model) => ValueCatalogue.Of(model);

    /// <summary>The functions, by name.</summary>
    public static ImmutableArray<TemplateFunction> Functions => FunctionCatalogue.All;
}
