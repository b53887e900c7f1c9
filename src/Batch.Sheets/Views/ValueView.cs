using Batch.Sheets.Templates;

namespace Batch.Sheets.Views;

/// <summary>One value on the page that lists them.</summary>
internal sealed record ValueView
{
    [Value("Path from the top; [] marks a list")]
    public required string Path { get; init; }

    [Value("Type in words")]
    public required string Type { get; init; }

    [Value("Unit of the bare number")]
    public required string Unit { get; init; }

    [Value("What it is")]
    public required string Text { get; init; }

    [Value("An example")]
    public required string Example { get; init; }

    public static ValueView Of(TemplateValue value) => new()
    {
        Path = value.Path,
        Type = value.Type,
        Unit = value.Unit,
        Text = value.Text,
        Example = value.Example,
    };
}
