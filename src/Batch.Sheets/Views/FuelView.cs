using Batch.Flight.Plan;
using Batch.Sheets.Figures;
using Batch.Sheets.Templates;

namespace Batch.Sheets.Views;

/// <summary>The fuel of a leg. What is required is rounded up, what is there and to spare down; the margin is the difference of the printed numbers.</summary>
internal sealed record FuelView
{
    [Value("Start, run-up and taxi out")]
    public required Quantity Taxi { get; init; }

    [Value("Takeoff to landing")]
    public required Quantity Trip { get; init; }

    [Value("Contingency")]
    public required Quantity Contingency { get; init; }

    [Value("To the farthest filed alternate, or the holding instead where none is filed")]
    public required Quantity Alternate { get; init; }

    [Value("Final reserve")]
    public required Quantity FinalReserve { get; init; }

    [Value("Time of the final reserve")]
    public required Elapsed FinalReserveTime { get; init; }

    [Value("Flow with which the final reserve was computed")]
    public required Quantity FinalReserveFlow { get; init; }

    [Value("Additional fuel")]
    public required Quantity Additional { get; init; }

    [Value("Extra beyond the requirement")]
    public required Quantity Discretionary { get; init; }

    [Value("Fuel that must remain after landing for a later departure without fuel")]
    public required Quantity NeededAfterLanding { get; init; }

    [Value("Least block fuel")]
    public required Quantity Required { get; init; }

    [Value("Fuel aboard before fuelling")]
    public required Quantity Before { get; init; }

    [Value("Whether the fuel aboard before fuelling is known; else it was taken as the empty tank")]
    public required bool IsBeforeKnown { get; init; }

    [Value("Fuel to load here")]
    public required Quantity Uplift { get; init; }

    [Value("Fuel aboard at off blocks")]
    public required Quantity Aboard { get; init; }

    [Value("Fuel at takeoff")]
    public required Quantity Takeoff { get; init; }

    [Value("Fuel on landing")]
    public required Quantity Landing { get; init; }

    [Value("What must be left on landing by the rules")]
    public required Quantity RequiredOnLanding { get; init; }

    [Value("Fuel aboard beyond the requirement; negative when short")]
    public required Quantity Margin { get; init; }

    [Value("What is left when contingency is used too")]
    public required Quantity AfterContingency { get; init; }

    [Value("What is left when the alternate is flown too")]
    public required Quantity AfterAlternate { get; init; }

    [Value("What is left when the final reserve is used too")]
    public required Quantity AfterFinalReserve { get; init; }

    [Value("What is left when the additional fuel is used too: the margin")]
    public required Quantity AfterAdditional { get; init; }

    [Value("Most fuel that could be aboard at off blocks")]
    public required Quantity Most { get; init; }

    [Value("The limit that binds the most fuel")]
    public required string MostBoundBy { get; init; }

    [Value("How long the fuel aboard at takeoff lasts at the cruise flow")]
    public required Elapsed? Endurance { get; init; }

    [Value("Density of the fuel [lb/US gal], a bare number")]
    public required double? Density { get; init; }

    [Value("Name of the fuel")]
    public required string Kind { get; init; }

    [Value("Whether the departure sells this fuel; nothing where the book does not say")]
    public required bool? IsSoldHere { get; init; }

    [Value("Citation of the final reserve")]
    public required string FinalReserveCitation { get; init; }

    [Value("Citation of the contingency")]
    public required string ContingencyCitation { get; init; }

    [Value("Citation of the alternate fuel, or of the holding instead")]
    public required string AlternateCitation { get; init; }

    [Value("Basis of the final reserve: normal cruise, or holding")]
    public required string FinalReserveBasis { get; init; }

    /// <summary>Least block fuel, fuel aboard and margin, printed wherever they stand as they are beside each other.</summary>
    /// <param name="plan">The leg.</param>
    public static (Quantity Required, Quantity Aboard, Quantity Margin) Printed(LegPlan.Planned plan) =>
        Quantity.Trio(Quantity.OfFuel(plan.Fuel.Required, plan.Type.FuelDensity), Quantity.OfFuel(plan.Fuel.Aboard, plan.Type.FuelDensity), isLeast: true);

    public static FuelView Of(LegPlan.Planned plan)
    {
        var fuel = plan.Fuel;
        var density = plan.Type.FuelDensity;
        var rules = plan.Planning.Fuel;
        var flow = plan.Profile.CruiseFlow.Value;
        Quantity Needed(Pounds amount) => Quantity.OfFuel(amount, density, RoundingWay.Up);
        Quantity Planned(Pounds amount) => Quantity.OfFuel(amount, density);
        Quantity Spare(Pounds amount) => Quantity.OfFuel(amount, density, RoundingWay.Down);
        var (required, aboard, margin) = Printed(plan);
        var left = margin with { IsSigned = false };
        return new FuelView
        {
            Taxi = Needed(fuel.Taxi),
            Trip = Needed(fuel.Trip),
            Contingency = Needed(fuel.Contingency),
            Alternate = Needed(fuel.Alternate),
            FinalReserve = Needed(fuel.FinalReserve),
            FinalReserveTime = new Elapsed(fuel.FinalReserveTime),
            FinalReserveFlow = new Quantity(fuel.FinalReserveFlow.Value, QuantityKind.Flow),
            Additional = Needed(fuel.Additional),
            Discretionary = Planned(fuel.Discretionary),
            NeededAfterLanding = Needed(fuel.NeededAfterLanding),
            Required = required,
            Before = Spare(fuel.Before),
            IsBeforeKnown = fuel.IsBeforeKnown,
            Uplift = Needed(fuel.Uplift),
            Aboard = aboard,
            Takeoff = Spare(fuel.Takeoff),
            Landing = Spare(fuel.Landing),
            RequiredOnLanding = Needed(fuel.RequiredOnLanding),
            Margin = margin,
            AfterContingency = Spare(fuel.Landing - fuel.Contingency),
            AfterAlternate = Spare(fuel.Landing - fuel.Contingency - fuel.Alternate),
            AfterFinalReserve = fuel.Additional.Value > 0 ? Spare(fuel.Landing - fuel.Contingency - fuel.Alternate - fuel.FinalReserve) : left,
            AfterAdditional = left,
            Most = Spare(fuel.Most),
            MostBoundBy = fuel.MostBoundBy,
            Endurance = flow > 0 ? new Elapsed(Duration.FromHours(fuel.Takeoff.Value / flow)) : null,
            Density = density,
            Kind = Words.Of(plan.Type.Fuel),
            IsSoldHere = fuel.IsSoldHere,
            FinalReserveCitation = rules.FinalReserveCitation,
            ContingencyCitation = rules.ContingencyCitation,
            AlternateCitation = plan.Alternates.IsEmpty ? rules.WithoutAlternateCitation : rules.AlternateCitation,
            FinalReserveBasis = rules.FinalReserveBasis switch { ReserveBasis.Cruise => "normal cruise", ReserveBasis.Holding => "holding" },
        };
    }
}
