using Batch.Books.Cells;
using Batch.Books.Units;
using Batch.Flight.Week;

namespace Batch.Books.Sheets;

/// <summary>A fuel plan as written: its kind, and an amount that becomes weight once the type is known.</summary>
/// <param name="Kind">What is asked for.</param>
/// <param name="Amount">The extra of a minimum, or the amount.</param>
internal readonly record struct WrittenFuelPlan(WrittenFuelPlan.Ask Kind, FuelAmount Amount)
{
    /// <summary>What is understood, for messages.</summary>
    public const string Expected = "minimum, minimum+200, full, carry, or an amount such as 1200 lb or 150 USG";

    /// <summary>What is asked for.</summary>
    internal enum Ask
    {
        /// <summary>What the rules require, plus an extra.</summary>
        Minimum,

        /// <summary>Full tanks.</summary>
        Full,

        /// <summary>Fuel for later legs.</summary>
        Carry,

        /// <summary>An amount.</summary>
        Amount,
    }

    /// <summary>Reads a fuel plan.</summary>
    public static Reading<WrittenFuelPlan> Read(RawCell cell, CellSetting setting)
    {
        if (cell.Kind == CellKind.Text)
        {
            var plus = cell.Text.IndexOf('+', StringComparison.Ordinal);
            var word = (plus < 0 ? cell.Text : cell.Text[..plus]).Trim().ToUpperInvariant();
            switch (word)
            {
                case "MINIMUM" or "MIN" when plus < 0:
                    return Good(Ask.Minimum, default);
                case "FULL" when plus < 0:
                    return Good(Ask.Full, default);
                case "CARRY" when plus < 0:
                    return Good(Ask.Carry, default);
                case "MINIMUM" or "MIN":
                    return WithAmount(RawCell.OfText(cell.Text[(plus + 1)..]), setting, Ask.Minimum);
                default:
                    if (word.Length > 0 && char.IsAsciiLetter(word[0]))
                    {
                        var near = NearWords.Nearest(word, ["minimum", "full", "carry"], 1);
                        return Reading<WrittenFuelPlan>.Bad("is not a fuel plan" + (near.Length > 0 ? $"; did you mean {near[0]}?" : ""), Expected);
                    }

                    break;
            }
        }

        return WithAmount(cell, setting, Ask.Amount);
    }

    /// <summary>The plan by weight; null where an amount is by volume and there is no density.</summary>
    public FuelPlan? ByWeight(double? densityLbPerGallon)
    {
        if (Amount.Pounds(densityLbPerGallon) is not { } pounds) return null;
        return Kind switch
        {
            Ask.Minimum => new FuelPlan.Minimum(new Pounds(pounds)),
            Ask.Full => new FuelPlan.Full(),
            Ask.Carry => new FuelPlan.Carry(),
            Ask.Amount => new FuelPlan.Amount(new Pounds(pounds)),
        };
    }

    private static Reading<WrittenFuelPlan> Good(Ask kind, FuelAmount amount) => Reading<WrittenFuelPlan>.Good(new WrittenFuelPlan(kind, amount));

    private static Reading<WrittenFuelPlan> WithAmount(RawCell cell, CellSetting setting, Ask kind)
    {
        if (cell.IsBlank) return Reading<WrittenFuelPlan>.Bad("has nothing behind its plus sign", Expected);
        var amount = QuantityReading.Fuel(cell, setting, Quantity.Fuel);
        if (!amount.IsGood) return Reading<WrittenFuelPlan>.Bad(amount.Complaint, Expected);
        return amount.Value.Number < 0 ? Reading<WrittenFuelPlan>.Bad("is negative", Expected) : amount.Then(fuel => new WrittenFuelPlan(kind, fuel));
    }
}
