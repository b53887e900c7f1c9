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

    /// <summary>Cautions of a child over 250 lb or an infant over 60 lb.</summary>
    public static void Young(Row row, Column column, double weightLb, bool infant)
    {
        if (weightLb > (infant ? 60 : 250))
            row.Complain(State.Caution, column, $"{column.Name} of {new Pounds(weightLb)} is much for {(infant ? "an infant" : "a child")}",
                "a weight in the unit of the header, or with its unit");
    }

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
