namespace Batch.Flight.Fleet;

/// <summary>One aircraft of the fleet. A null member means that the book gives no value.</summary>
public sealed record Aircraft
{
    /// <summary>Registration mark.</summary>
    public required string Registration { get; init; }

    /// <summary>Name of its type in the Types sheet.</summary>
    public required string Type { get; init; }

    /// <summary>Basic empty weight.</summary>
    public required Pounds BasicEmptyWeight { get; init; }

    /// <summary>Moment of the basic empty weight; null where neither arm nor moment is given.</summary>
    public PoundInches? BasicEmptyMoment { get; init; }

    /// <summary>Pilots already counted in the basic empty weight: 0, 1 or 2.</summary>
    public int PilotsIncluded { get; init; }

    /// <summary>Date of the last weighing.</summary>
    public LocalDate? WeighedOn { get; init; }

    /// <summary>How much more this aircraft burns than the tables say [fraction], such as 0.02; negative when it burns less.</summary>
    public double BurnBias { get; init; }

    /// <summary>Ceiling of this aircraft where lower than the type's [ft].</summary>
    public Feet? Ceiling { get; init; }

    /// <summary>Ident of the airport where it is kept.</summary>
    public string Home { get; init; } = "";

    /// <summary>Airframe hours [h].</summary>
    public double? Hours { get; init; }

    /// <summary>Airframe landings.</summary>
    public int? Landings { get; init; }

    /// <summary>Airframe hours at which the next inspection is due [h].</summary>
    public double? NextInspectionAt { get; init; }

    /// <summary>Annual inspection due.</summary>
    public LocalDate? AnnualDue { get; init; }

    /// <summary>Altimeter and static system test due.</summary>
    public LocalDate? AltimeterStaticDue { get; init; }

    /// <summary>Transponder test due.</summary>
    public LocalDate? TransponderDue { get; init; }

    /// <summary>Emergency locator transmitter inspection due.</summary>
    public LocalDate? ElectronicLocatorDue { get; init; }

    /// <summary>Day of the last operational check of the VOR receivers; null where not said.</summary>
    public LocalDate? VorCheckedOn { get; init; }

    /// <summary>Weighing due.</summary>
    public LocalDate? WeighingDue { get; init; }

    /// <summary>Whether it has an autopilot approved for flight by one pilot.</summary>
    public bool? AutopilotForOnePilot { get; init; }

    /// <summary>Overwater kit aboard: none, vests, rafts; empty where not said.</summary>
    public string OverwaterKit { get; init; } = "";

    /// <summary>How long the oxygen aboard lasts for all occupants.</summary>
    public Duration? Oxygen { get; init; }

    /// <summary>Whether every pilot's place has an approved quick-donning oxygen mask; null where not said.</summary>
    public bool? QuickDonningMasks { get; init; }

    /// <summary>Whether it is approved and equipped for flight in icing.</summary>
    public bool? IcingProtection { get; init; }

    /// <summary>Whether it is equipped for flight under IFR; null where not said.</summary>
    public bool? InstrumentEquipment { get; init; }

    /// <summary>Whether it is equipped for flight at night; null where not said.</summary>
    public bool? NightEquipment { get; init; }

    /// <summary>
    /// Whether it has a second source of electric power and of energy for the gyros, as a single-engine aircraft with passengers under IFR wants; null where
    /// not said.
    /// </summary>
    public bool? SecondPowerSource { get; init; }

    /// <summary>Whether an engine trend monitoring programme is kept; null where not said.</summary>
    public bool? TrendMonitoring { get; init; }

    /// <summary>Class of the terrain awareness and warning system: <c>A</c>, <c>B</c> or <c>none</c>; empty where not said.</summary>
    public string TerrainWarning { get; init; } = "";

    /// <summary>Open deferred items, free text.</summary>
    public string DeferredItems { get; init; } = "";

    /// <summary>Status as the book says, such as <c>in service</c>.</summary>
    public string Status { get; init; } = "";

    /// <summary>Where it was read.</summary>
    public Origin Origin { get; init; } = Origin.None;
}
