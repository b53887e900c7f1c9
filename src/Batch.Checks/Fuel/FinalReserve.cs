using Batch.Checks.Rules;
using Batch.Flight.Earth;
using Batch.Flight.Plan;
using Batch.Flight.Week;

namespace Batch.Checks.Fuel;

/// <summary>
/// Fuel aboard against what the reserve rule asks for: taxi, trip, alternate, final reserve and additional fuel; contingency is a matter of its own.
/// </summary>
internal static class FinalReserve
{
    /// <summary>Name of the amount in the rule files.</summary>
    public const string Amount = "final reserve";

    /// <summary>The answer.</summary>
    /// <param name="leg">The leg.</param>
    /// <param name="ruling">The ruling of a reserve check.</param>
    /// <param name="withAlternate">Whether the fuel to a filed alternate is asked for.</param>
    public static Finding Look(LegUnderCheck leg, Ruling ruling, bool withAlternate)
    {
        var fuel = leg.Plan.Fuel;
        var amount = ruling.Amount(Amount);
        var time = Duration.FromMinutes(amount.Value);
        var reserve = time > fuel.FinalReserveTime ? fuel.FinalReserveFlow * time : fuel.FinalReserve;
        var alternate = withAlternate && !leg.Plan.Alternates.IsEmpty ? fuel.Alternate : Pounds.Zero;
        var required = fuel.Taxi + fuel.Trip + alternate + reserve + fuel.Additional;
        var parts = new List<string> { "taxi " + Words.Amount(fuel.Taxi), "trip " + Words.Amount(fuel.Trip) };
        if (alternate > Pounds.Zero)
        {
            parts.Add($"alternate {leg.Plan.Alternates.First(option => option.IsFarthest).Airport} {Words.Amount(alternate)}");
        }

        parts.Add($"final reserve {Words.Amount(reserve)} for {Words.Time(Duration.Max(time, fuel.FinalReserveTime))} at {Words.Amount(fuel.FinalReserveFlow.Value, "lb/h")}");
        if (fuel.Additional > Pounds.Zero)
        {
            parts.Add("additional " + Words.Amount(fuel.Additional));
        }

        return ruling.AtLeast("Fuel aboard", fuel.Aboard.Value, required.Value, "lb", "required: " + string.Join(" + ",
            parts) + (AddUp(fuel.Taxi, fuel.Trip, alternate, reserve, fuel.Additional) ? "" : " (each rounded)"), amount, Cells(leg));
    }

    /// <summary>Whether the parts, as printed, make the sum as printed, which is rounded up.</summary>
    /// <param name="parts">The parts.</param>
    public static bool AddUp(params ReadOnlySpan<Pounds> parts)
    {
        var (printed, sum) = (0.0, 0.0);
        foreach (var part in parts)
        {
            printed += Math.Round(part.Value, MidpointRounding.AwayFromZero);
            sum += part.Value;
        }

        return printed == Math.Ceiling(sum - 1e-7);
    }

    /// <summary>
    /// Whether the night reserve holds: takeoff, landing, or landing plus the day's reserve in the night. The rule does not say which moment counts; the
    /// strictest is taken.
    /// </summary>
    /// <param name="plan">The leg.</param>
    public static bool IsByNight(LegPlan.Planned plan) =>
        plan.Daylight.IsNightTakeoff || plan.Daylight.IsNightLanding || Sun.IsNight(plan.Times.Landing + plan.Planning.Fuel.FinalReserveDay, plan.To.Position);

    /// <summary>Cells on which the fuel of a leg depends.</summary>
    /// <param name="leg">The leg.</param>
    public static string[] Cells(LegUnderCheck leg) => [leg.Cell(nameof(Leg.FuelPlan)), leg.Cell(nameof(Leg.FuelAboard))];
}
