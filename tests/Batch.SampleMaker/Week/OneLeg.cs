namespace Batch.SampleMaker.Week;

/// <summary>One row of the Legs sheet.</summary>
public sealed record OneLeg
{
    public required string Trip { get; init; }

    public required int Number { get; init; }

    public required LocalDate Date { get; init; }

    public required LocalTime Off { get; init; }

    public required string Aircraft { get; init; }

    public required string From { get; init; }

    public required string To { get; init; }

    public string Alternate { get; init; } = "";

    public string SecondAlternate { get; init; } = "";

    public string Route { get; init; } = "";

    public string BackupRoute { get; init; } = "";

    public string Level { get; init; } = "auto";

    public string Setting { get; init; } = "";

    public string Rules { get; init; } = "IFR";

    public string Purpose { get; init; } = "charter";

    public required string Captain { get; init; }

    public string SecondPilot { get; init; } = "";

    public string FuelPlan { get; init; } = "minimum";

    public int? FuelAboardLb { get; init; }

    public int? TaxiMin { get; init; }

    public string DepartureRunway { get; init; } = "";

    public string ArrivalRunway { get; init; } = "";

    public string TakeoffAlternate { get; init; } = "";

    public string FlightPlan { get; init; } = "";

    public Instant? ManifestSent { get; init; }

    public Instant? CrewManifestSent { get; init; }

    public string Remarks { get; init; } = "";
}
