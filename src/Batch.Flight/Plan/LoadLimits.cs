using Batch.Flight.Fleet;

namespace Batch.Flight.Plan;

/// <summary>What the weight limits leave for fuel and for payload. A limit that is not known is not looked at.</summary>
public static class LoadLimits
{
    /// <summary>The greatest fuel at off blocks under the tank and every weight limit; nothing where the zero-fuel weight itself is exceeded.</summary>
    /// <param name="type">Type, for its limits.</param>
    /// <param name="zeroFuel">Weight with no fuel [lb].</param>
    /// <param name="taxi">Fuel burned before takeoff [lb].</param>
    /// <param name="trip">Fuel burned from takeoff to landing [lb].</param>
    /// <param name="departureRunway">Greatest takeoff weight that the departure runway allows; null where not known.</param>
    /// <param name="arrivalRunway">Greatest landing weight that the arrival runway allows; null where not known.</param>
    public static FuelLimit MostFuel(AircraftType type, Pounds zeroFuel, Pounds taxi, Pounds trip, Pounds? departureRunway, Pounds? arrivalRunway)
    {
        ArgumentNullException.ThrowIfNull(type);
        if (type.MaximumZeroFuel is { } maximum && zeroFuel > maximum) return new FuelLimit(Pounds.Zero, "zero-fuel weight");
        var (most, boundBy) = Least(FuelLimits(type, zeroFuel, taxi, trip, departureRunway, arrivalRunway));
        return new FuelLimit(most is { } fuel ? Pounds.Max(fuel, Pounds.Zero) : null, boundBy);
    }

    /// <summary>The payload that can be added at this fuel under every weight limit.</summary>
    /// <param name="type">Type, for its limits.</param>
    /// <param name="zeroFuel">Weight with no fuel [lb].</param>
    /// <param name="block">Fuel at off blocks [lb].</param>
    /// <param name="taxi">Fuel burned before takeoff [lb].</param>
    /// <param name="trip">Fuel burned from takeoff to landing [lb].</param>
    /// <param name="departureRunway">Greatest takeoff weight that the departure runway allows; null where not known.</param>
    /// <param name="arrivalRunway">Greatest landing weight that the arrival runway allows; null where not known.</param>
    public static PayloadLimit PayloadSpare(
        AircraftType type, Pounds zeroFuel, Pounds block, Pounds taxi, Pounds trip, Pounds? departureRunway, Pounds? arrivalRunway)
    {
        ArgumentNullException.ThrowIfNull(type);
        var (spare, boundBy) = Least(PayloadLimits(type, zeroFuel, block, taxi, trip, departureRunway, arrivalRunway));
        return new PayloadLimit(spare, boundBy);
    }

    /// <summary>
    /// What each limit leaves for fuel, in the order in which they are looked at; null where a limit is not known. Parameters as of <see cref="MostFuel"/>.
    /// </summary>
    internal static (Pounds? Value, string Name)[] FuelLimits(AircraftType type, Pounds zeroFuel, Pounds taxi, Pounds trip, Pounds? departureRunway,
        Pounds? arrivalRunway) =>
    [
        (type.UsableFuel, "tank"),
        (type.MaximumRamp - zeroFuel, "ramp weight"),
        (type.MaximumTakeoff + taxi - zeroFuel, "takeoff weight"),
        (type.MaximumLanding + taxi + trip - zeroFuel, "landing weight"),
        (departureRunway + taxi - zeroFuel, "departure runway"),
        (arrivalRunway + taxi + trip - zeroFuel, "arrival runway"),
    ];

    /// <summary>What each limit leaves for payload, likewise. Parameters as of <see cref="PayloadSpare"/>.</summary>
    internal static (Pounds? Value, string Name)[] PayloadLimits(
        AircraftType type, Pounds zeroFuel, Pounds block, Pounds taxi, Pounds trip, Pounds? departureRunway, Pounds? arrivalRunway)
    {
        var ramp = zeroFuel + block;
        return
        [
            (type.MaximumZeroFuel - zeroFuel, "zero-fuel weight"),
            (type.MaximumRamp - ramp, "ramp weight"),
            (type.MaximumTakeoff - (ramp - taxi), "takeoff weight"),
            (type.MaximumLanding - (ramp - taxi - trip), "landing weight"),
            (departureRunway - (ramp - taxi), "departure runway"),
            (arrivalRunway - (ramp - taxi - trip), "arrival runway"),
        ];
    }

    // The first of the least; limits that are null are skipped.
    private static (Pounds? Value, string Name) Least(ReadOnlySpan<(Pounds? Value, string Name)> limits)
    {
        (Pounds? Value, string Name) least = (null, "");
        foreach (var limit in limits)
            if (limit.Value is { } value && (least.Value is not { } smallest || value < smallest)) least = limit;
        return least;
    }
}
