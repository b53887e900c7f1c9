using Batch.Sheets.Templates;

namespace Batch.Sheets.Views;

/// <summary>The values of the page that lists what templates can use.</summary>
internal sealed record ValuesModel : SheetModel
{
    [Value("Paper size for @page: A4 or Letter")]
    public required string Paper { get; init; }

    [Value("Version of the program")]
    public required string ToolVersion { get; init; }

    [Value("Templates with their values")]
    public required ImmutableArray<ValueGroupView> Groups { get; init; }

    [Value("Functions, by name")]
    public required ImmutableArray<FunctionView> Functions { get; init; }

    public static ValuesModel Of(RunFacts facts, PaperSize paper, IEnumerable<(string Template, SheetModel Model)> models) => new()
    {
        Paper = paper switch { PaperSize.A4 => "A4", PaperSize.Letter => "Letter" },
        ToolVersion = facts.ToolVersion,
        Groups = [.. models.Select(pair => new ValueGroupView { Template = pair.Template, Values = [.. TemplateValues.Of(pair.Model).Select(ValueView.Of)] })],
        Functions =
            [.. TemplateValues.Functions.Select(function => new FunctionView { Name = function.Name, Parameters = function.Parameters, Text = function.Text })],
    };
}
