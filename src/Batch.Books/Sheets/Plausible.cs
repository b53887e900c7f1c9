using Batch.Books.Headers;
using Batch.Books.Units;

namespace Batch.Books.Sheets;

/// <summary>Weights that are likely to be in another unit than the header says. The limits are common practice, no source.</summary>
internal static class Plausible
{
    /// <summary>Cautions of an adult under 90 lb (41 kg) or over 400 lb (181 kg); the person is not named.</summary>
    public static void Adult(Row row, Column column, double weightLb)
    {
        var isMetric = row.Setting(column).Unit is { } unit && !unit.Factor.Equals(Quantity.Weight.Kept.Factor);
        var asked = isMetric ? "; was it given in pounds in a column of kilograms?" : "; is it the weight of one?";
        if (weightLb < 90) row.Complain(State.Caution, column, $"{column.Name} of {new Pounds(weightLb)} is little for an adult; " + (isMetric
            ? "is it a child?"
            : "was it given in kilograms in a column of pounds?"), "a weight in the unit of the header, or with its unit, such as 80 kg");
        else if (weightLb > 400) row.Complain(State.Caution, column, $"{column.Name} of {new Pounds(weightLb)} is much for one person" + asked,
            "a weight in the unit of the header, or with its unit");
    }

    /// <summary>
    /// Cautions of a child under 20 lb (9 kg) or over 250 lb, and of an infant under 5 lb or over 60 lb. A child is two years old or more: few of that age
    /// weigh less than 20 lb.
    /// </summary>
    public static void Young(Row row, Column column, double weightLb, bool infant)
    {
        if (weightLb < LeastOf(infant ? "infant" : "child"))
            row.Complain(State.Caution, column, $"{column.Name} of {new Pounds(weightLb)} is little for " + (infant
                ? "an infant; was it given in another unit?"
                : "a child of two years or more; is it an infant, or was it given in another unit?"), "a weight in the unit of the header, or with its unit");
        if (weightLb > MostOf(infant ? "infant" : "child"))
            row.Complain(State.Caution, column, $"{column.Name} of {new Pounds(weightLb)} is much for {(infant ? "an infant" : "a child")}",
                "a weight in the unit of the header, or with its unit");
    }

    /// <summary>What is doubtful about a standard weight, by the same limits; null where nothing is, and for bags.</summary>
    /// <param name="name">The item, as the subject of the sentence.</param>
    /// <param name="category">Whose weight: adult, man, woman, pilot, child, infant or bag.</param>
    /// <param name="weight">The weight.</param>
    public static string? Standard(string name, string category, Pounds weight)
    {
        var whom = category switch
        {
            "child" => "a child of two years or more",
            "infant" => "an infant",
            _ => "an adult",
        };
        return category == "bag" ? null
            : weight.Value < LeastOf(category) ? $"{name} of {weight} is little for {whom}; was it given in another unit?"
            : weight.Value > MostOf(category) ? $"{name} of {weight} is much for {whom}; was it given in another unit?"
            : null;
    }

    private static double LeastOf(string category) => category switch { "child" => 20, "infant" => 5, _ => 90 };

    private static double MostOf(string category) => category switch { "child" => 250, "infant" => 60, _ => 400 };

    /// <summary>Cautions of fuel beyond the usable fuel of the type.</summary>
    public static void Fuel(Row row, Column column, Pounds fuel, Pounds? usable)
    {
        if (usable is { } most && fuel.Value > most.Value + 0.5)
        {
            row.Complain(State.Caution, column, $"{column.Name} of {fuel} is more than the usable fuel of {most}; was it given in another unit?",
                "at most " + most);
        }
    }
}
