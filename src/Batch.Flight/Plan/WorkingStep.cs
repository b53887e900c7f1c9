namespace Batch.Flight.Plan;

/// <summary>One step of the working of a leg: a value with its formula and what went into it.</summary>
public sealed record WorkingStep
{
    /// <summary>Part of the leg: time, route, profile, log, fuel, weight, runway, limit, option, daylight.</summary>
    public required string Part { get; init; }

    /// <summary>Name of the value, such as <c>final reserve</c>.</summary>
    public required string Name { get; init; }

    /// <summary>Formula in the names of the inputs, such as <c>flow × time</c>.</summary>
    public required string Formula { get; init; }

    /// <summary>What went in.</summary>
    public ImmutableArray<WorkingInput> Inputs { get; init; } = [];

    /// <summary>The value.</summary>
    public required double Value { get; init; }

    /// <summary>Its unit.</summary>
    public required string Unit { get; init; }

    /// <summary>Rule, standard or table it rests on; empty where it is arithmetic.</summary>
    public string Source { get; init; } = "";
}
