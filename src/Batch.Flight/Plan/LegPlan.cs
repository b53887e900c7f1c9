using Batch.Flight.Fleet;
using Batch.Flight.Route;
using Batch.Flight.Week;

namespace Batch.Flight.Plan;

/// <summary>A leg after planning: planned with all its figures, or not planned with the reason.</summary>
public abstract record LegPlan
{
    private LegPlan()
    {
    }

    /// <summary>Trip and leg number.</summary>
    public abstract LegKey Key { get; }

    /// <summary>A leg that could be planned. It may still fail its checks.</summary>
    public sealed record Planned : LegPlan
    {
        /// <inheritdoc/>
        public override LegKey Key => Leg.Key;

        /// <summary>The leg as read.</summary>
        public required Leg Leg { get; init; }

        /// <summary>The aircraft.</summary>
        public required Aircraft Aircraft { get; init; }

        /// <summary>Its type.</summary>
        public required AircraftType Type { get; init; }

        /// <summary>Departure.</summary>
        public required Airport From { get; init; }

        /// <summary>Destination.</summary>
        public required Airport To { get; init; }

        /// <summary>Captain; null where the code is not in the Crew sheet.</summary>
        public CrewMember? Captain { get; init; }

        /// <summary>Second pilot; null where there is none or the code is not in the Crew sheet.</summary>
        public CrewMember? SecondPilot { get; init; }

        /// <summary>Flight rules taken.</summary>
        public required FlightRules Rules { get; init; }

        /// <summary>Purpose taken.</summary>
        public required LegPurpose Purpose { get; init; }

        /// <summary>The rules it was planned by.</summary>
        public required PlanningRules Planning { get; init; }

        /// <summary>Times.</summary>
        public required LegTimes Times { get; init; }

        /// <summary>Route.</summary>
        public required FlownRoute Route { get; init; }

        /// <summary>Profile.</summary>
        public required FlightProfile Profile { get; init; }

        /// <summary>Navigation log, departure first.</summary>
        public required ImmutableArray<LogLine> Log { get; init; }

        /// <summary>Fuel.</summary>
        public required FuelLadder Fuel { get; init; }

        /// <summary>Load.</summary>
        public required LoadSheet Load { get; init; }

        /// <summary>Payload that can still be added under all weight limits at the planned fuel; negative when over; null where no limit is known.</summary>
        public required Pounds? PayloadSpare { get; init; }

        /// <summary>The limit that binds <see cref="PayloadSpare"/>.</summary>
        public required string PayloadSpareBoundBy { get; init; }

        /// <summary>Takeoff.</summary>
        public required RunwayResult Departure { get; init; }

        /// <summary>Landing.</summary>
        public required RunwayResult Arrival { get; init; }

        /// <summary>Alternates in the order filed.</summary>
        public required ImmutableArray<AlternatePlan> Alternates { get; init; }

        /// <summary>Level options and backup route, by level, highest first; contains the plan itself.</summary>
        public required ImmutableArray<LevelOption> Options { get; init; }

        /// <summary>Sun.</summary>
        public required Daylight Daylight { get; init; }

        /// <summary>What was assumed, as sentences; name no person.</summary>
        public required ImmutableArray<string> Assumptions { get; init; }

        /// <summary>What was decided and is worth knowing, as sentences.</summary>
        public ImmutableArray<string> Notes { get; init; } = [];
    }

    /// <summary>A leg that could not be planned.</summary>
    public sealed record Unplanned : LegPlan
    {
        /// <inheritdoc/>
        public override LegKey Key => Leg?.Key ?? Broken?.Key ?? default;

        /// <summary>The leg as read; null where its row could not be read.</summary>
        public Leg? Leg { get; init; }

        /// <summary>The row that could not be read; null where it could.</summary>
        public BrokenLeg? Broken { get; init; }

        /// <summary>Why, one sentence.</summary>
        public required string Why { get; init; }

        /// <summary>Where it happens: a place on the route; empty where it has none.</summary>
        public string Where { get; init; } = "";

        /// <summary>Why and where, as sentences.</summary>
        public string Sentence => Where.Length == 0 ? Why : $"{Why} Where: {Where}.";

        /// <summary>Cells that hold what is wrong.</summary>
        public ImmutableArray<string> Cells { get; init; } = [];

        /// <summary>What would do, such as near spellings; empty where nothing is known.</summary>
        public string Expected { get; init; } = "";

        /// <summary>Whether all that the flight needs was read, but the flight cannot be made: too heavy for a table, no usable level, too much wind.</summary>
        public bool IsNotFlyable { get; init; }

        /// <summary>Whether the reason is a fault of the program, not of the input.</summary>
        public bool IsFault { get; init; }
    }
}
