using System.CommandLine;
using System.Globalization;
using Batch.Cli.Pipeline;
using Batch.Flight.Plan;
using Batch.Sheets;

namespace Batch.Cli.Commands;

/// <summary><c>tripbatch explain</c>: the working of a leg, formula by formula, with the cells.</summary>
internal static class ExplainCommand
{
    /// <summary>Makes the command.</summary>
    /// <param name="terminal">Where it writes.</param>
    /// <param name="interrupt">Stops it.</param>
    public static Command Build(Terminal terminal, CancellationToken interrupt)
    {
        var books = SharedArguments.Books();
        var leg = new Option<string>("--leg") { Description = "Trip and leg number, such as T101/2.", HelpName = "TRIP/LEG", Required = true };
        var value = new Option<string?>("--value")
        {
            Description = "Only the values whose name holds this text, such as \"final reserve\".",
            HelpName = "NAME",
        };
        var json = new Option<bool>("--json") { Description = "Write the working as JSON, numbers unrounded." };
        var command = new Command(
            "explain",
            """
            Shows the working of one leg: every value with its formula, its inputs and the cells they came from.

            Examples:
              tripbatch explain input-samples --leg T101/1
              tripbatch explain input-samples --leg T101/1 --value "fuel required"
              tripbatch explain input-samples --leg T101/1 --json
            """)
        { books, leg, value, json };
        command.SetAction(parsed =>
        {
            var read = ProgressLines.During(terminal,
                progress => WeekReading.Read(parsed.GetRequiredValue(books), 1, findsRemedies: false, progress, interrupt));
            return Explain(terminal.Output, read, parsed.GetRequiredValue(leg), parsed.GetValue(value) ?? "", parsed.GetValue(json));
        });
        return command;
    }

    private static int Explain(TextWriter output, WeekResult read, string name, string filter, bool asJson)
    {
        var legs = read.Week.Legs;
        var found = legs.FirstOrDefault(leg => string.Equals(leg.Plan.Key.ToString(), name, StringComparison.OrdinalIgnoreCase));
        if (found is null)
        {
            throw new InputException($"There is no leg {name}.{Meant.Question(name, legs.Select(leg => leg.Plan.Key.ToString()))}");
        }

        if (found.Plan is LegPlan.Unplanned unplanned)
        {
            if (asJson)
            {
                output.WriteLine(ExplainJson.Of(unplanned));
                return ExitStatus.SomeFail;
            }

            output.WriteLine($"{name} is not planned: {WeekInUnit.Sentence(unplanned.Sentence, read.Week.Plan.Input.Operator.WeightUnit)}");
            foreach (var cell in unplanned.Cells) output.WriteLine($"    cell {cell}");
            return ExitStatus.SomeFail;
        }

        if (found.Plan is not LegPlan.Planned planned) throw new System.Diagnostics.UnreachableException();
        var steps = LegWorking.Of(planned).Where(step => step.Name.Contains(filter, StringComparison.OrdinalIgnoreCase)
            || step.Part.Equals(filter, StringComparison.OrdinalIgnoreCase)).ToImmutableArray();
        if (steps.IsEmpty)
        {
            throw new InputException($"{name} has no value named {filter}.{Meant.Question(filter, LegWorking.Of(planned).Select(step => step.Name).Distinct(StringComparer.Ordinal))}");
        }

        if (asJson)
        {
            output.WriteLine(ExplainJson.Of(planned, steps));
            return ExitStatus.Of(read.Week with { Legs = [found] }, read.Faults);
        }

        var unit = read.Week.Plan.Input.Operator.WeightUnit;
        if (unit == WeightUnit.Kilograms)
            output.WriteLine($"The working is in pounds, the unit of the program, with kilograms beside: 1 lb = {unit.PerPound.ToString(CultureInfo.InvariantCulture)} kg (international yard and pound agreement 1959).");
        foreach (var step in steps) Write(output, step, unit);
        if (filter.Length == 0)
        {
            output.WriteLine("assumptions");
            foreach (var assumption in planned.Assumptions) output.WriteLine("    " + WeekInUnit.Sentence(assumption, unit));
        }

        return ExitStatus.Of(read.Week with { Legs = [found] }, read.Faults);
    }

    private static void Write(TextWriter output, WorkingStep step, WeightUnit unit)
    {
        output.WriteLine($"{step.Part}: {step.Name} = {Number(step.Value, step.Unit, unit)}");
        output.WriteLine($"    = {step.Formula}{(step.Source.Length > 0 ? $"   [{step.Source}]" : "")}");
        foreach (var input in step.Inputs)
            output.WriteLine($"      {input.Name} = {Number(input.Value, input.Unit, unit)}{(input.Cell.Length > 0 ? $"   ({input.Cell})" : "")}".TrimEnd());
    }

    /// <summary>
    /// A number with its unit: a moment as the time of day, a position to a tenth of a metre, as the books give it; a weight with the operator's unit beside.
    /// </summary>
    private static string Number(double value, string unit, WeightUnit shown) => unit switch
    {
        "min after 00:00 UTC" => TimeSpan.FromMinutes(value).ToString(@"hh\:mm\:ss", CultureInfo.InvariantCulture) + " UTC",
        "deg N" or "deg E" => value.ToString("0.000000", CultureInfo.InvariantCulture) + " " + unit,
        "lb" or "lb/h" when shown != WeightUnit.Pounds =>
            $"{Plain(value, unit)} ({Plain(shown.Of(new Pounds(value)), unit.Replace("lb", shown.Name, StringComparison.Ordinal))})",
        _ => Plain(value, unit),
    };

    private static string Plain(double value, string unit) => value.ToString("#,0.###", CultureInfo.InvariantCulture) + (unit.Length > 0 ? " " + unit : "");
}
