using Batch.Flight.Fleet;
using Batch.Sheets.Templates;

namespace Batch.Sheets.Views;

/// <summary>The operator, as printed.</summary>
internal sealed record OperatorView
{
    [Value("Name of the operator")]
    public required string Name { get; init; }

    [Value("Contact line")]
    public required string Contact { get; init; }

    [Value("Ident of the home base")]
    public required string HomeBase { get; init; }

    [Value("Language of the sheets (BCP 47), en where the book says none")]
    public required string Language { get; init; }

    public static OperatorView Of(Operator known) => new()
    {
        Name = known.Name,
        Contact = known.Contact,
        HomeBase = known.HomeBase,
        Language = known.Language.Length == 0 ? "en" : known.Language,
    };
}
