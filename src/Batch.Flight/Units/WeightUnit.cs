namespace Batch.Flight.Units;

/// <summary>The unit in which an operator reads weights and fuel: pounds or kilograms. The program computes in pounds in either case.</summary>
public sealed record WeightUnit
{
    /// <summary>Pounds, the unit where the book names none.</summary>
    public static readonly WeightUnit Pounds = new("lb", 1);

    /// <summary>Kilograms.</summary>
    public static readonly WeightUnit Kilograms = new("kg", Units.Pounds.KilogramsPerPound);

    private WeightUnit(string name, double perPound) => (Name, PerPound) = (name, perPound);

    /// <summary>Its sign: <c>lb</c> or <c>kg</c>.</summary>
    public string Name { get; }

    /// <summary>How many of it are in a pound, above 0.</summary>
    public double PerPound { get; }

    /// <summary>The unit of a sign; pounds for any sign but <c>kg</c>.</summary>
    /// <param name="name">The sign.</param>
    public static WeightUnit Named(string name) => name == Kilograms.Name ? Kilograms : Pounds;

    /// <summary>A weight as a number of this unit.</summary>
    /// <param name="weight">The weight.</param>
    public double Of(Pounds weight) => weight.Value * PerPound;

    /// <summary>The weight of a number of this unit.</summary>
    /// <param name="number">The number.</param>
    public Pounds Weight(double number) => new(number / PerPound);

    /// <inheritdoc/>
    public override string ToString() => Name;
}
