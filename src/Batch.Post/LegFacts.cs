namespace Batch.Post;

/// <summary>What a person is told of a leg, as far as it is compared from one issue to the next; figures as printed.</summary>
public sealed record LegFacts
{
    /// <summary>Trip.</summary>
    public required string Trip { get; init; }

    /// <summary>Number of the leg, 1 or more.</summary>
    public required int Leg { get; init; }

    /// <summary>Registration.</summary>
    public required string Aircraft { get; init; }

    /// <summary>Ident of the departure.</summary>
    public required string From { get; init; }

    /// <summary>Ident of the destination.</summary>
    public required string To { get; init; }

    /// <summary>Time zone of the departure (IANA).</summary>
    public required string FromZone { get; init; }

    /// <summary>Time zone of the destination (IANA).</summary>
    public required string ToZone { get; init; }

    /// <summary>Off blocks, whole minutes.</summary>
    public required Instant OffBlocks { get; init; }

    /// <summary>On blocks, whole minutes.</summary>
    public required Instant OnBlocks { get; init; }

    /// <summary>Code of the captain.</summary>
    public required string Captain { get; init; }

    /// <summary>Code of the second pilot; empty for none.</summary>
    public string SecondPilot { get; init; } = "";

    /// <summary>Passengers aboard.</summary>
    public int Passengers { get; init; }

    /// <summary>Fingerprint of who and what flies; no names.</summary>
    public string Load { get; init; } = "";

    /// <summary>Route text; empty for direct.</summary>
    public string Route { get; init; } = "";

    /// <summary>Cruise level as altitude [ft].</summary>
    public int LevelFt { get; init; }

    /// <summary>Alternates in order, separated by commas; empty for none.</summary>
    public string Alternates { get; init; } = "";

    /// <summary>Fuel aboard at off blocks [lb].</summary>
    public int BlockFuelLb { get; init; }

    /// <summary>Zero-fuel weight [lb].</summary>
    public int ZeroFuelLb { get; init; }

    /// <summary>Takeoff weight [lb].</summary>
    public int TakeoffLb { get; init; }

    /// <summary>Landing weight [lb].</summary>
    public int LandingLb { get; init; }

    /// <summary>Departure runway; empty where none was computed.</summary>
    public string DepartureRunway { get; init; } = "";

    /// <summary>Arrival runway; empty where none was computed.</summary>
    public string ArrivalRunway { get; init; } = "";

    /// <summary>State: pass, caution or fail.</summary>
    public string State { get; init; } = "";

    /// <summary>Checks that fail, separated by commas; empty for none.</summary>
    public string Failing { get; init; } = "";

    /// <summary>Why it is flown although it fails; empty for no reason.</summary>
    public string Override { get; init; } = "";

    /// <summary>Remarks.</summary>
    public string Remarks { get; init; } = "";

    /// <summary>Fingerprint of what else the sheet prints: log, runways, balance, findings, notes.</summary>
    public string Details { get; init; } = "";

    /// <summary>Trip and number, such as <c>T101/2</c>.</summary>
    public string Key => Trip + "/" + Leg.ToString(System.Globalization.CultureInfo.InvariantCulture);
}
