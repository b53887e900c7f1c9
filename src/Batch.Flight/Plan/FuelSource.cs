namespace Batch.Flight.Plan;

/// <summary>What fuel a leg starts from.</summary>
/// <param name="Before">Fuel aboard before fuelling [lb].</param>
/// <param name="IsBeforeKnown">Whether that is known: read, or left by the leg before.</param>
/// <param name="IsSoldHere">Whether the departure sells the fuel; null where the book does not say.</param>
/// <param name="NeededAfterLanding">Fuel that must still be there after landing, for later departures that sell none [lb].</param>
/// <param name="IsTrial">Whether this is a trial that asks how much the leg would want if fuel were sold.</param>
internal sealed record FuelSource(Pounds Before, bool IsBeforeKnown, bool? IsSoldHere, Pounds NeededAfterLanding, bool IsTrial)
{
    /// <summary>Fuel to be left on landing for later legs because it is cheaper here [lb]; zero where nothing is carried.</summary>
    public Pounds CarriedAfterLanding { get; init; }

    /// <summary>Whether fuel can be loaded.</summary>
    public bool CanLoad => IsTrial || IsSoldHere != false;
}
