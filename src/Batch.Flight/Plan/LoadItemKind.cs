namespace Batch.Flight.Plan;

/// <summary>What an item of a load sheet is.</summary>
public enum LoadItemKind
{
    /// <summary>A pilot beyond those counted in the empty weight.</summary>
    Pilot,

    /// <summary>A passenger.</summary>
    Passenger,

    /// <summary>Checked bags.</summary>
    Bags,

    /// <summary>Cargo.</summary>
    Cargo,
}
