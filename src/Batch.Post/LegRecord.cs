namespace Batch.Post;

/// <summary>A leg of a run.</summary>
public sealed record LegRecord
{
    /// <summary>Trip; the place of the row where it could not be read.</summary>
    public required string Trip { get; init; }

    /// <summary>Number; 0 where it could not be read.</summary>
    public required int Number { get; init; }

    /// <summary>Row of the Legs sheet where the number could not be read; 0 elsewhere and where it is not known.</summary>
    public int Row { get; init; }

    /// <summary>Code of the captain; may be empty.</summary>
    public string Captain { get; init; } = "";

    /// <summary>Code of the second pilot; empty for none.</summary>
    public string SecondPilot { get; init; } = "";

    /// <summary>Name of the departure airport; empty where not known.</summary>
    public string FromName { get; init; } = "";

    /// <summary>Off blocks; null where it could not be read.</summary>
    public Instant? OffBlocks { get; init; }

    /// <summary>The facts; null where the leg was not planned.</summary>
    public LegFacts? Facts { get; init; }

    /// <summary>Why it was not planned, or what fails, in one sentence; empty for a leg that does not fail.</summary>
    public string Trouble { get; init; } = "";

    /// <summary>Such as <c>T101/2</c>, or <c>T101, row 5</c> where the number could not be read.</summary>
    public string Key =>
        Number > 0 ? Trip + "/" + Text(Number)
        : Row > 0 && !HasNoTrip ? Trip + ", row " + Text(Row)
        : Trip;

    /// <summary>Whether the leg is kept from the crew: not planned, or it fails and nobody gave a reason.</summary>
    public bool IsHeld => Facts is null || (Facts.State == "fail" && Facts.Override.Length == 0);

    /// <summary>Whether trip and number could not be read, so that it may be any leg.</summary>
    public bool IsNameless => Facts is null && (Number < 1 || HasNoTrip);

    private bool HasNoTrip => Trip.StartsWith("row ", StringComparison.Ordinal);

    /// <summary>Whether a person flies it.</summary>
    /// <param name="person">Code.</param>
    public bool IsFlownBy(string person) =>
        string.Equals(Captain, person, StringComparison.OrdinalIgnoreCase) || string.Equals(SecondPilot, person, StringComparison.OrdinalIgnoreCase);

    private static string Text(int number) => number.ToString(System.Globalization.CultureInfo.InvariantCulture);
}
