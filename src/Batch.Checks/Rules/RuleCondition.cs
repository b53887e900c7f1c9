using System.Globalization;
using Batch.Flight.Fleet;
using Batch.Flight.Week;

namespace Batch.Checks.Rules;

/// <summary>When a rule holds. Every part that is given must hold; a part left out asks for nothing.</summary>
internal sealed record RuleCondition
{
    /// <summary><c>IFR</c> or <c>VFR</c>.</summary>
    public FlightRules? FlightRules { get; init; }

    /// <summary>Purposes, any of them.</summary>
    public ImmutableArray<LegPurpose> Purpose { get; init; } = [];

    /// <summary>
    /// <c>piston</c>, <c>turboprop</c>, <c>jet</c>, <c>turbine</c> (turboprop or jet) or <c>propeller</c> (piston or turboprop); empty for any.
    /// </summary>
    public string Engine { get; init; } = "";

    /// <summary>Number of engines as a range such as <c>1</c> or <c>2..</c>; empty for any.</summary>
    public string Engines { get; init; } = "";

    /// <summary>Passenger seats as a range such as <c>..9</c> or <c>6..9</c>; empty for any.</summary>
    public string Seats { get; init; } = "";

    /// <summary>Pilots that the type certificate requires, as a range such as <c>2..</c>; empty for any.</summary>
    public string Pilots { get; init; } = "";

    /// <summary>Maximum takeoff weight as a range [kg]; empty for any.</summary>
    public string TakeoffKg { get; init; } = "";

    /// <summary>Categories of the type certificate, any of them.</summary>
    public ImmutableArray<CertificationCategory> Category { get; init; } = [];

    /// <summary>Whether the cabin is pressurised.</summary>
    public bool? Pressurised { get; init; }

    /// <summary>Whether passengers are aboard.</summary>
    public bool? Passengers { get; init; }

    /// <summary>Whether it holds; with an unknown fact, and no other part that fails, the answer is unknown.</summary>
    /// <param name="facts">Facts of the leg.</param>
    public Holds HoldsFor(LegFacts facts) => Parts(facts).Select(part => part.Holds).DefaultIfEmpty(Holds.Yes).Min();

    /// <summary>The condition in words, such as <c>IFR; charter; 10 seats or more</c>; empty where it asks for nothing.</summary>
    public string InWords => string.Join("; ", new[]
    {
        FlightRules?.ToString().ToUpperInvariant() ?? "",
        string.Join(" or ", Purpose.Select(purpose => purpose.ToString().ToLowerInvariant())),
        Engine,
        Range(Engines, "engine", "engines"),
        Range(Seats, "seat", "seats"),
        Range(Pilots, "required pilot", "required pilots"),
        TakeoffKg.Length > 0 ? Range(TakeoffKg, "kg", "kg") + " of takeoff weight" : "",
        Category.IsEmpty ? "" : string.Join(" or ", Category.Select(category => category.ToString().ToLowerInvariant())) + " category",
        Pressurised is { } pressurised ? pressurised ? "pressurised" : "not pressurised" : "",
        Passengers is { } passengers ? passengers ? "with passengers" : "without passengers" : "",
    }.Where(part => part.Length > 0));

    private static string Range(string range, string one, string many) =>
        range.Length == 0 ? ""
        : range.Split("..") is not [var least, var most] ? $"{range} {(range == "1" ? one : many)}"
        : least.Length == 0 ? $"{most} {many} or fewer"
        : most.Length == 0 ? $"{least} {many} or more"
        : $"{least} to {most} {many}";

    /// <summary>The facts that are not known and asked for.</summary>
    /// <param name="facts">Facts of the leg.</param>
    public IEnumerable<string> Missing(LegFacts facts) => Parts(facts).Where(part => part.Holds == Holds.Unknown).Select(part => part.Fact);

    /// <summary>The facts by which it does not hold.</summary>
    /// <param name="facts">Facts of the leg.</param>
    public IEnumerable<string> Against(LegFacts facts) => Parts(facts).Where(part => part.Holds == Holds.No).Select(part => part.Fact);

    private IEnumerable<(string Fact, Holds Holds)> Parts(LegFacts facts)
    {
        if (FlightRules is { } rules)
        {
            yield return ("flight rules", Is(rules == facts.Rules));
        }

        if (!Purpose.IsEmpty)
        {
            yield return ("purpose", Is(Purpose.Contains(facts.Purpose)));
        }

        if (Engine.Length > 0)
        {
            yield return ("engine kind of the type", facts.Engine is { } engine ? Is(IsOfKind(engine)) : Holds.Unknown);
        }

        if (Engines.Length > 0)
        {
            yield return ("number of engines of the type", IsWithin(Engines, facts.Engines));
        }

        if (Seats.Length > 0)
        {
            yield return ("number of seats of the type", IsWithin(Seats, facts.Seats));
        }

        if (Pilots.Length > 0)
        {
            yield return ("number of pilots that the type requires", IsWithin(Pilots, facts.Pilots));
        }

        if (TakeoffKg.Length > 0)
        {
            yield return ("maximum takeoff weight of the type", IsWithin(TakeoffKg, facts.TakeoffKg));
        }

        if (!Category.IsEmpty)
        {
            yield return ("certification category of the type", facts.Category is { } category ? Is(Category.Contains(category)) : Holds.Unknown);
        }

        if (Pressurised is { } pressurised)
        {
            yield return ("cabin pressure of the type", facts.Pressurised is { } known ? Is(known == pressurised) : Holds.Unknown);
        }

        if (Passengers is { } passengers)
        {
            yield return ("passengers aboard", facts.Passengers is { } known ? Is(known == passengers) : Holds.Unknown);
        }
    }

    private bool IsOfKind(EngineKind engine) => Engine switch
    {
        "piston" => engine == EngineKind.Piston,
        "turboprop" => engine == EngineKind.Turboprop,
        "jet" => engine == EngineKind.Jet,
        "turbine" => engine is EngineKind.Turboprop or EngineKind.Jet,
        "propeller" => engine is EngineKind.Piston or EngineKind.Turboprop,
        _ => throw new FormatException($"A rule file names the engine kind '{Engine}', which is not known"),
    };

    private static Holds IsWithin(string range, double? value)
    {
        if (value is not { } known)
        {
            return Holds.Unknown;
        }

        var dots = range.IndexOf("..", StringComparison.Ordinal);
        if (dots < 0)
        {
            return Is(known == double.Parse(range, CultureInfo.InvariantCulture));
        }

        var least = dots == 0 ? double.NegativeInfinity : double.Parse(range[..dots], CultureInfo.InvariantCulture);
        var greatest = dots + 2 == range.Length ? double.PositiveInfinity : double.Parse(range[(dots + 2)..], CultureInfo.InvariantCulture);
        return Is(known >= least && known <= greatest);
    }

    private static Holds Is(bool holds) => holds ? Holds.Yes : Holds.No;
}
