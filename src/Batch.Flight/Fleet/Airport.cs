using Batch.Flight.Earth;

namespace Batch.Flight.Fleet;

/// <summary>An airport of the operator book. A null member means that the book gives no value.</summary>
public sealed record Airport
{
    /// <summary>Location indicator, upper case.</summary>
    public required string Ident { get; init; }

    /// <summary>Name.</summary>
    public string Name { get; init; } = "";

    /// <summary>Reference point on WGS84.</summary>
    public required GeoPoint Position { get; init; }

    /// <summary>Elevation above mean sea level [ft].</summary>
    public required Feet Elevation { get; init; }

    /// <summary>Time zone (IANA).</summary>
    public required DateTimeZone Zone { get; init; }

    /// <summary>Fuels sold; null where the book does not say, empty for none.</summary>
    public ImmutableArray<FuelKind>? FuelsSold { get; init; }

    /// <summary>Fuel price in the operator's currency per US gallon.</summary>
    public double? FuelPrice { get; init; }

    /// <summary>Local time of opening; null with <see cref="Closes"/> null means always open or not said.</summary>
    public LocalTime? Opens { get; init; }

    /// <summary>Local time of closing.</summary>
    public LocalTime? Closes { get; init; }

    /// <summary>Local start of the quiet hours, in which movements are not allowed.</summary>
    public LocalTime? QuietFrom { get; init; }

    /// <summary>Local end of the quiet hours.</summary>
    public LocalTime? QuietTo { get; init; }

    /// <summary>Lighting as the book says: none, on request, yes; empty where not said.</summary>
    public string Lighting { get; init; } = "";

    /// <summary>Clearance delivery frequency.</summary>
    public string ClearanceFrequency { get; init; } = "";

    /// <summary>Tower or common traffic frequency.</summary>
    public string TowerFrequency { get; init; } = "";

    /// <summary>Handling agent.</summary>
    public string Handler { get; init; } = "";

    /// <summary>Mail address of the handling agent.</summary>
    public string HandlerMail { get; init; } = "";

    /// <summary>Customs service as the book says.</summary>
    public string Customs { get; init; } = "";

    /// <summary>Country, as a name or code of the operator's choice; a leg between different ones crosses a border. Empty where not said.</summary>
    public string Country { get; init; } = "";

    /// <summary>Class of the airspace at the ground, <c>B</c>, <c>C</c>, <c>D</c>, <c>E</c> or <c>G</c>; empty where not said.</summary>
    public string Airspace { get; init; } = "";

    /// <summary>Least visibility for a takeoff under IFR [m]; null where not said.</summary>
    public double? TakeoffVisibilityM { get; init; }

    /// <summary>Kind of the best published instrument approach; empty where not said, <c>none</c> where there is none.</summary>
    public string ApproachKind { get; init; } = "";

    /// <summary>Minimum of that approach above the airport [ft].</summary>
    public Feet? ApproachMinimum { get; init; }

    /// <summary>Minimum visibility of that approach [m].</summary>
    public double? ApproachVisibilityM { get; init; }

    /// <summary>Runway directions in book order; one entry a direction.</summary>
    public ImmutableArray<Runway> Runways { get; init; } = [];

    /// <summary>Where it was read.</summary>
    public Origin Origin { get; init; } = Origin.None;
}
