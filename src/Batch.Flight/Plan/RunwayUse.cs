using Batch.Flight.Fleet;

namespace Batch.Flight.Plan;

/// <summary>A takeoff or a landing on one runway, with its distances and its room.</summary>
public sealed record RunwayUse
{
    /// <summary>The runway.</summary>
    public required Runway Runway { get; init; }

    /// <summary>Whether the dispatcher named it; else it was the best into the wind.</summary>
    public required bool IsNamed { get; init; }

    /// <summary>Flap setting of the table used; empty where the book names none.</summary>
    public string Flap { get; init; } = "";

    /// <summary>Weight of the takeoff or landing.</summary>
    public required Pounds Weight { get; init; }

    /// <summary>Pressure altitude [ft].</summary>
    public required Feet PressureAltitude { get; init; }

    /// <summary>Temperature.</summary>
    public required Celsius Temperature { get; init; }

    /// <summary>Whether no temperature is known there, so that the standard atmosphere was taken.</summary>
    public bool IsTemperatureAssumed { get; init; }

    /// <summary>Whether no wind is known there, so that calm was taken.</summary>
    public bool IsWindAssumed { get; init; }

    /// <summary>Whether the wind is known from aloft alone, so that a headwind is not credited.</summary>
    public bool IsWindFromAloft { get; init; }

    /// <summary>Direction that the wind comes from, true; of no meaning in calm air.</summary>
    public required TrueDegrees WindFrom { get; init; }

    /// <summary>Wind speed.</summary>
    public required Knots WindSpeed { get; init; }

    /// <summary>Headwind component, negative for a tailwind, as forecast.</summary>
    public required Knots Headwind { get; init; }

    /// <summary>Crosswind component, from the right positive.</summary>
    public required Knots Crosswind { get; init; }

    /// <summary>Whether the runway is taken as wet.</summary>
    public bool IsWet { get; init; }

    /// <summary>Distance over the obstacle by the table [ft].</summary>
    public required Feet TableDistance { get; init; }

    /// <summary>Ground roll by the table [ft].</summary>
    public required Feet TableRoll { get; init; }

    /// <summary>The corrections applied one after another, as factors with names, such as <c>grass 1.2</c>.</summary>
    public required ImmutableArray<RunwayFactor> Factors { get; init; }

    /// <summary>Distance over the obstacle with all corrections, without the rule's factor [ft].</summary>
    public required Feet CorrectedDistance { get; init; }

    /// <summary>Distance required: corrected distance times the rule's factor [ft].</summary>
    public required Feet Required { get; init; }

    /// <summary>Distance available: takeoff distance available, or landing distance available [ft].</summary>
    public required Feet Available { get; init; }

    /// <summary>Ground roll with all corrections, without the rule's factor [ft].</summary>
    public Feet CorrectedRoll { get; init; }

    /// <summary>Takeoff run available, into which the ground roll must fit as well; null for a landing.</summary>
    public Feet? RunAvailable { get; init; }

    /// <summary>Accelerate-stop distance by the table [ft]; null for a landing and where the table has none.</summary>
    public Feet? TableStop { get; init; }

    /// <summary>Accelerate-stop distance with all corrections of the takeoff [ft]; null where there is none.</summary>
    public Feet? CorrectedStop { get; init; }

    /// <summary>Accelerate-stop distance available, into which it must fit; null where it is not computed.</summary>
    public Feet? StopAvailable { get; init; }

    /// <summary>What is available beyond what is required, the least of distance, takeoff run and accelerate-stop distance [ft]; negative when short.</summary>
    public Feet Margin
    {
        get
        {
            var margin = Available - Required;
            if (RunAvailable is { } run) margin = Feet.Min(margin, run - CorrectedRoll);
            return StopAvailable is { } stop && CorrectedStop is { } needed ? Feet.Min(margin, stop - needed) : margin;
        }
    }

    /// <summary>Whether the distance, the takeoff run and, where tabled, the accelerate-stop distance fit.</summary>
    public bool Fits => Margin.Value >= 0;

    /// <summary>
    /// Greatest weight for which the required distances fit; null where none in the table does, or where the table does not depend on weight.
    /// </summary>
    public Pounds? GreatestWeight { get; init; }

    /// <summary>
    /// Whether <see cref="GreatestWeight"/> is the last weight of the table: the runway would bear more than the table tells, and limits nothing.
    /// </summary>
    public bool IsGreatestWeightTableEnd { get; init; }

    /// <summary>
    /// The weight limit that this runway sets [lb]: nothing at all (0 lb) where no weight of the table fits; null where it sets none within the table.
    /// </summary>
    public Pounds? WeightLimit => GreatestWeight is { } greatest ? IsGreatestWeightTableEnd ? null : greatest : Fits ? null : Pounds.Zero;

    /// <summary>Highest temperature at which this weight fits; null where none in the table does.</summary>
    public Celsius? HighestTemperature { get; init; }

    /// <summary>Named speeds at this weight [kt], calibrated, in table order.</summary>
    public ImmutableArray<NamedSpeed> Speeds { get; init; } = [];

    /// <summary>Values taken at a table's edge or assumed, as sentences.</summary>
    public ImmutableArray<string> Assumptions { get; init; } = [];
}
