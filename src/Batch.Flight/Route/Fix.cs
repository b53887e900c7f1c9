using Batch.Flight.Earth;

namespace Batch.Flight.Route;

/// <summary>A named point of the Fixes sheet. The same ident may stand at two places.</summary>
public sealed record Fix
{
    /// <summary>Ident, upper case.</summary>
    public required string Ident { get; init; }

    /// <summary>Position on WGS84.</summary>
    public required GeoPoint Position { get; init; }

    /// <summary>Kind: VOR, NDB, waypoint; empty where not said.</summary>
    public string Kind { get; init; } = "";

    /// <summary>Name.</summary>
    public string Name { get; init; } = "";

    /// <summary>Frequency as written.</summary>
    public string Frequency { get; init; } = "";

    /// <summary>Station declination or own variation [deg], positive east; null: from the magnetic model.</summary>
    public double? VariationDeg { get; init; }

    /// <summary>Where it was read.</summary>
    public Origin Origin { get; init; } = Origin.None;
}
