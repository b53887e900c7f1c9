using System.Globalization;

namespace Batch.Flight.Plan;

/// <summary>Working of the level options: each is flown by itself with the planned fuel aboard.</summary>
internal static class OptionWorking
{
    /// <summary>The steps.</summary>
    /// <param name="plan">The leg.</param>
    public static IEnumerable<WorkingStep> Of(LegPlan.Planned plan)
    {
        foreach (var option in plan.Options)
        {
            var name = string.Create(CultureInfo.InvariantCulture,
                $"option {option.Level.Value:0} ft{(option.IsBackupRoute ? " on the backup route" : "")}{(option.IsPlan ? ", the plan" : "")}");
            yield return Step($"{name}, trip fuel", "climb + cruise + descent + approach, flown at this level with the planned fuel", option.Trip.Value, "lb",
                new WorkingInput("level", option.Level.Value, "ft"),
                new WorkingInput("takeoff weight", plan.Profile.TakeoffWeight.Value, "lb"),
                new WorkingInput("mean headwind in cruise", option.CruiseHeadwind.Value, "kt"),
                new WorkingInput("time", option.Time.TotalMinutes, "min"));
            yield return Step($"{name}, fuel on landing", "fuel at takeoff − trip fuel", option.Landing.Value, "lb",
                new WorkingInput("fuel at takeoff", plan.Fuel.Takeoff.Value, "lb"), new WorkingInput("trip fuel", option.Trip.Value, "lb"));
            yield return Step($"{name}, margin", "fuel on landing − fuel required on landing", option.Margin.Value, "lb",
                new WorkingInput("fuel on landing", option.Landing.Value, "lb"),
                new WorkingInput("fuel required on landing", plan.Fuel.RequiredOnLanding.Value, "lb"));
        }
    }

    private static WorkingStep Step(string name, string formula, double value, string unit, params ImmutableArray<WorkingInput> inputs) =>
        new() { Part = "option", Name = name, Formula = formula, Value = value, Unit = unit, Inputs = inputs };
}
