using Batch.Checks;

namespace Batch.Sheets;

/// <summary>One leg in a mail.</summary>
public sealed record LetterLeg
{
    /// <summary>Name of the trip; the place of the row where it could not be read.</summary>
    public required string Trip { get; init; }

    /// <summary>Number of the leg; 0 where it could not be read.</summary>
    public required int Number { get; init; }

    /// <summary>Whether the person flies as captain; else as second pilot.</summary>
    public required bool IsCaptain { get; init; }

    /// <summary>Registration as in the book.</summary>
    public string Aircraft { get; init; } = "";

    /// <summary>Departure as in the book.</summary>
    public required string From { get; init; }

    /// <summary>Destination as in the book.</summary>
    public required string To { get; init; }

    /// <summary>Off blocks; null where not known.</summary>
    public Instant? OffBlocks { get; init; }

    /// <summary>Zone of the departure; UTC where not known.</summary>
    public DateTimeZone FromZone { get; init; } = DateTimeZone.Utc;

    /// <summary>On blocks; null for a leg that was not planned.</summary>
    public Instant? OnBlocks { get; init; }

    /// <summary>Zone of the destination; UTC where not known.</summary>
    public DateTimeZone ToZone { get; init; } = DateTimeZone.Utc;

    /// <summary>State.</summary>
    public required LegState State { get; init; }

    /// <summary>What fails, or why it was not planned, one sentence each.</summary>
    public ImmutableArray<string> Failures { get; init; } = [];

    /// <summary>What asks for a decision, one sentence each.</summary>
    public ImmutableArray<string> Cautions { get; init; } = [];

    /// <summary>Why the leg is sent although it fails, as the person who decided it wrote it; empty where nobody did.</summary>
    public string OverrideReason { get; init; } = "";

    /// <summary>Trip and number, such as <c>T101/1</c>; the trip alone where the number could not be read.</summary>
    public string Key => Number > 0 ? string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{Trip}/{Number}") : Trip;
}
