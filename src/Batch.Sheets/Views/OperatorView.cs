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

    [Value("Language that the operator asks for, as in the book; en where it says none. A template says itself in which language it is written")]
    public required string Language { get; init; }

    [Value("Unit in which the operator reads weights: lb or kg")]
    public required string WeightUnit { get; init; }

    public static OperatorView Of(Operator known) => new()
    {
        Name = known.Name,
        Contact = known.Contact,
        HomeBase = known.HomeBase,
        Language = known.Language.Length == 0 ? "en" : known.Language,
        WeightUnit = known.WeightUnit.Name,
    };
}
