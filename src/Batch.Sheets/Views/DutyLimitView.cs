using Batch.Checks;
using Batch.Sheets.Figures;
using Batch.Sheets.Templates;

namespace Batch.Sheets.Views;

/// <summary>
/// How much of one limit on flight time, duty or rest is used where it is tightest. What is used is rounded against the person, so is what is left.
/// </summary>
internal sealed record DutyLimitView
{
    [Value("The figure in words, such as flight time in 24 hours")]
    public required string Name { get; init; }

    [Value("The leg at whose end it is tightest, such as T101/2")]
    public required string Leg { get; init; }

    [Value("What is flown, on duty or rested, in unit")]
    public required Quantity? Used { get; init; }

    [Value("The limit, in unit; nothing where the rules name none")]
    public required Quantity? Limit { get; init; }

    [Value("What is left to the limit, in unit; negative beyond it; nothing without a limit")]
    public required Quantity? Left { get; init; }

    [Value("Whether the limit is the least that is wanted, as for rest; else the most that is allowed")]
    public required bool IsLeast { get; init; }

    [Value("Whether the limit is broken")]
    public required bool IsBroken { get; init; }

    [Value("Unit: h, or rests")]
    public required string Unit { get; init; }

    [Value("Why the figure is not wholly known; nothing where it is")]
    public required string Unknown { get; init; }

    [Value("Document and paragraph")]
    public required string Citation { get; init; }

    [Value("Whether the basis of the limit is still to be confirmed")]
    public required bool IsBasisUnconfirmed { get; init; }

    public static DutyLimitView Of(DutyLimit limit)
    {
        var used = new Quantity(limit.Used, QuantityKind.Plain, limit.IsLeast ? RoundingWay.Down : RoundingWay.Up) { PlainUnit = limit.Unit };
        var held = Quantity.OfPlain(limit.Limit, limit.Unit) is { } allowed
            ? Quantity.Trio(allowed, used, limit.IsLeast)
            : ((Quantity Limit, Quantity Actual, Quantity Margin)?)null;
        return new DutyLimitView
        {
            Name = limit.Name,
            Leg = limit.At.ToString(),
            Used = held?.Actual ?? used,
            Limit = held?.Limit,
            Left = held is { } three ? three.Margin with { IsSigned = false } : null,
            IsLeast = limit.IsLeast,
            IsBroken = limit.Left < 0,
            Unit = limit.Unit,
            Unknown = limit.Unknown,
            Citation = limit.Citation,
            IsBasisUnconfirmed = limit.IsBasisUnconfirmed,
        };
    }
}
