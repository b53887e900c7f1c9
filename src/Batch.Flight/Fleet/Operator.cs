using Batch.Flight.Week;

namespace Batch.Flight.Fleet;

/// <summary>The operator's own settings. A null member means that the book gives no value.</summary>
public sealed record Operator
{
    /// <summary>Name of the operator.</summary>
    public string Name { get; init; } = "";

    /// <summary>Ident of the home base.</summary>
    public string HomeBase { get; init; } = "";

    /// <summary>Name of the rule set, such as <c>us-charter</c>; empty where not said.</summary>
    public string RuleSet { get; init; } = "";

    /// <summary>Report time before the first off blocks of a duty.</summary>
    public Duration? Report { get; init; }

    /// <summary>Release time after the last on blocks of a duty.</summary>
    public Duration? Release { get; init; }

    /// <summary>Least time between on blocks and the next off blocks of an aircraft.</summary>
    public Duration? Turnaround { get; init; }

    /// <summary>Usual time from off blocks to takeoff where the leg names none.</summary>
    public Duration? TaxiOut { get; init; }

    /// <summary>Usual time from landing to on blocks.</summary>
    public Duration? TaxiIn { get; init; }

    /// <summary>Operator's contingency fuel [fraction of trip fuel], such as 0.05, where stricter than the rule set's.</summary>
    public double? Contingency { get; init; }

    /// <summary>Operator's least fuel on landing as holding or cruise time; null where none is set.</summary>
    public Duration? LandingFuel { get; init; }

    /// <summary>Amount to which uplift is rounded up; null: not rounded.</summary>
    public Pounds? UpliftRounding { get; init; }

    /// <summary>Whether a value outside a performance table may be taken at the table's edge; printed as an assumption each time.</summary>
    public bool MayUseTableEdge { get; init; }

    /// <summary>Standard weights of the operator by category name (adult, man, woman, child, infant, pilot, bag), where it has its own.</summary>
    public ImmutableSortedDictionary<string, Pounds> StandardWeights { get; init; } =
        ImmutableSortedDictionary<string, Pounds>.Empty.WithComparers(StringComparer.OrdinalIgnoreCase);

    /// <summary>Weather sources that the operator may use; empty where not said.</summary>
    public ImmutableArray<string> WeatherSources { get; init; } = [];

    /// <summary>How flights are followed where the leg does not say: <c>filed</c>, <c>company</c> or <c>none</c>; empty where not said.</summary>
    public string FlightFollowing { get; init; } = "";

    /// <summary>
    /// What passengers' weights are where the Manifest does not say: <c>stated</c>, <c>with allowances</c> or <c>weighed</c>; empty where not said.
    /// </summary>
    public string PassengerWeights { get; init; } = "";

    /// <summary>
    /// How the VOR receivers are kept: <c>approved procedure</c> (14 CFR 91.171(a)(1)) or <c>30 days</c>; empty where not given, which counts as the second.
    /// </summary>
    public string VorCheck { get; init; } = "";

    /// <summary>Topics of the operator's briefing of passengers; empty where not said.</summary>
    public ImmutableArray<string> BriefingTopics { get; init; } = [];

    /// <summary>Contact line for sheets.</summary>
    public string Contact { get; init; } = "";

    /// <summary>Sender address of mail.</summary>
    public string MailFrom { get; init; } = "";

    /// <summary>Language of the sheets (BCP 47).</summary>
    public string Language { get; init; } = "";

    /// <summary>The unit in which weights and fuel are shown to the operator, by the item <c>Weight unit</c>; pounds where it is missing.</summary>
    public WeightUnit WeightUnit { get; init; } = WeightUnit.Pounds;

    /// <summary>Currency of fuel prices.</summary>
    public string Currency { get; init; } = "";

    /// <summary>The operator's own scenarios, for planning the week again under them; empty for none.</summary>
    public ImmutableArray<Scenario> Scenarios { get; init; } = [];

    /// <summary>Every item of the Operator sheet as written, for templates and checks.</summary>
    public ImmutableSortedDictionary<string, string> Items { get; init; } =
        ImmutableSortedDictionary<string, string>.Empty.WithComparers(StringComparer.OrdinalIgnoreCase);

    /// <summary>Cells of the items by item name as written.</summary>
    public ImmutableSortedDictionary<string, string> Cells { get; init; } =
        ImmutableSortedDictionary<string, string>.Empty.WithComparers(StringComparer.OrdinalIgnoreCase);
}
