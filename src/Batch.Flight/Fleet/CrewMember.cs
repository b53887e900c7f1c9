namespace Batch.Flight.Fleet;

/// <summary>A pilot of the operator. A null member means that the book gives no value.</summary>
public sealed record CrewMember
{
    /// <summary>Short code by which the legs refer to the pilot.</summary>
    public required string Code { get; init; }

    /// <summary>Full name.</summary>
    public required string Name { get; init; }

    /// <summary>Mail address.</summary>
    public string Mail { get; init; } = "";

    /// <summary>Weight with flight bag.</summary>
    public Pounds? Weight { get; init; }

    /// <summary>Ident of the home base.</summary>
    public string Base { get; init; } = "";

    /// <summary>Types the pilot is qualified on; empty where not said.</summary>
    public ImmutableArray<string> Types { get; init; } = [];

    /// <summary>Whether the pilot may act as captain; null where not said.</summary>
    public bool? MayCommand { get; init; }

    /// <summary>Whether the pilot may act as second pilot; null where not said.</summary>
    public bool? MayAssist { get; init; }

    /// <summary>Last day of the medical certificate.</summary>
    public LocalDate? MedicalUntil { get; init; }

    /// <summary>Last day of the competency check.</summary>
    public LocalDate? CompetencyUntil { get; init; }

    /// <summary>Last day of the instrument proficiency check.</summary>
    public LocalDate? InstrumentUntil { get; init; }

    /// <summary>Last day of the line check.</summary>
    public LocalDate? LineCheckUntil { get; init; }

    /// <summary>Total flight hours [h].</summary>
    public double? Hours { get; init; }

    /// <summary>Flight hours in type [h].</summary>
    public double? HoursInType { get; init; }

    /// <summary>Best pilot certificate: <c>airline transport</c>, <c>commercial</c> or <c>private</c>; empty where not said.</summary>
    public string Certificate { get; init; } = "";

    /// <summary>Whether the pilot holds an instrument rating, or a certificate that has its privileges; null where not said.</summary>
    public bool? InstrumentRating { get; init; }

    /// <summary>Cross-country flight hours [h].</summary>
    public double? CrossCountryHours { get; init; }

    /// <summary>Night flight hours [h].</summary>
    public double? NightHours { get; init; }

    /// <summary>Instrument hours, actual and simulated [h].</summary>
    public double? InstrumentHours { get; init; }

    /// <summary>Instrument approaches within the preceding six calendar months.</summary>
    public int? RecentApproaches { get; init; }

    /// <summary>Date of the third last landing.</summary>
    public LocalDate? ThirdLastLanding { get; init; }

    /// <summary>Date of the third last landing at night.</summary>
    public LocalDate? ThirdLastNightLanding { get; init; }

    /// <summary>Where it was read.</summary>
    public Origin Origin { get; init; } = Origin.None;
}
