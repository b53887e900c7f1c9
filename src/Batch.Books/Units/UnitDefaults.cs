namespace Batch.Books.Units;

/// <summary>The default units an Operator sheet sets for headers without one.</summary>
/// <param name="Words">Unit word by role.</param>
internal sealed record UnitDefaults(ImmutableDictionary<UnitRole, string> Words)
{
    /// <summary>No default is set.</summary>
    public static UnitDefaults None { get; } = new(ImmutableDictionary<UnitRole, string>.Empty);

    /// <summary>The unit of a number of a quantity that names none itself: the book's default, else the quantity's own.</summary>
    public UnitWord Of(Quantity quantity)
    {
        if (quantity.Role == UnitRole.None) return quantity.Kept;
        var role = quantity.Role == UnitRole.FuelFlow ? UnitRole.Fuel : quantity.Role;
        if (!Words.TryGetValue(role, out var word)) return quantity.Kept;
        return quantity.Find(quantity.Role == UnitRole.FuelFlow ? word + "/h" : word) ?? quantity.Kept;
    }

    /// <summary>These, with those of another filling the gaps.</summary>
    public UnitDefaults Or(UnitDefaults other) => new(other.Words.SetItems(Words));
}
