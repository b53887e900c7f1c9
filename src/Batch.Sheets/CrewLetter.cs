using Batch.Checks;

namespace Batch.Sheets;

/// <summary>
/// What the mail to one person says beside its attachments. Private: it names the person. Made by <see cref="CrewLetters"/>; the sender adds revision, changes,
/// overrides and attachments.
/// </summary>
public sealed record CrewLetter
{
    /// <summary>Name of the operator.</summary>
    public required string Operator { get; init; }

    /// <summary>Contact line of the operator; empty where the book gives none.</summary>
    public string Contact { get; init; } = "";

    /// <summary>Language of the mail (BCP 47); empty for English.</summary>
    public string Language { get; init; } = "";

    /// <summary>Unit in which the sentences name weights.</summary>
    public WeightUnit WeightUnit { get; init; } = WeightUnit.Pounds;

    /// <summary>Code of the person.</summary>
    public required string Code { get; init; }

    /// <summary>Name of the person; empty where the code is not in the Crew sheet.</summary>
    public string Name { get; init; } = "";

    /// <summary>Mail address of the person; empty where the Crew sheet gives none.</summary>
    public string Mail { get; init; } = "";

    /// <summary>When the run was made and by which version.</summary>
    public required RunFacts Facts { get; init; }

    /// <summary>Name of the rule set with its date.</summary>
    public string RuleSet { get; init; } = "";

    /// <summary>The books that were read.</summary>
    public ImmutableArray<Flight.Week.InputBook> Books { get; init; } = [];

    /// <summary>The person's legs in order of time, those without a known time last; empty where none is left.</summary>
    public ImmutableArray<LetterLeg> Legs { get; init; } = [];

    /// <summary>Number of this issue to this person, 1 for the first.</summary>
    public int Revision { get; init; } = 1;

    /// <summary>The last issue that the person surely has; null where there is none. The number of this one where it is sent once more.</summary>
    public int? Since { get; init; }

    /// <summary>Later issues that may have reached the person, because the server's answer was never heard.</summary>
    public ImmutableArray<int> Unsure { get; init; } = [];

    /// <summary>What changed since the issue before, one sentence each, such as <c>T101/1: passengers 3 to 4.</c>; empty for the first issue.</summary>
    public ImmutableArray<string> Changes { get; init; } = [];

    /// <summary>
    /// The person's trips that are held back, one sentence each, such as <c>T108: Leg 2 fails FUEL-03.</c>; their legs are not among <see cref="Legs"/>.
    /// </summary>
    public ImmutableArray<string> Held { get; init; } = [];

    /// <summary>Names of the files attached, as the person sees them.</summary>
    public ImmutableArray<string> Attachments { get; init; } = [];

    /// <summary>The worst state of the legs; pass without legs.</summary>
    public LegState State => Legs.Select(leg => leg.State).DefaultIfEmpty(LegState.Pass).Max();
}
