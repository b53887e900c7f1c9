using System.Collections;
using System.Reflection;
using Batch.Flight.Plan;
using Batch.Flight.Week;
using Batch.Sheets.Figures;
using Batch.Sheets.Templates;
using Batch.Sheets.Views;
using Batch.Testing;

namespace Batch.Sheets.Tests;

/// <summary>Every figure that a trip sheet can print of a planned leg has a step of working, or stands in one as an input.</summary>
public sealed class ExplainedTests
{
    // Differences that the reader does himself, next to both numbers.
    private static readonly string[] PlainDifferences = ["PlanView.Options.OptionView.TimeMore"];

    // Limits for gross errors of typing, stated on the card; they follow from the figure beside them.
    private static readonly string[] Tolerances =
        ["PlanView.Card.CardView.Answers.AnswerView.Tolerance", "PlanView.Card.CardView.Answers.AnswerView.ToleranceTime"];

    public static TheoryData<string, string> Legs => new() { { "XDUN", "4130N03800W 4200N03700W" }, { "", "" } };

    [Theory]
    [MemberData(nameof(Legs))]
    public void Every_figure_is_explained(string alternate, string route)
    {
        var leg = Some.Leg(1, "XAND", "XBEL", Some.Noon, aboardLb: 300, alternate: alternate) with { Route = route, BackupRoute = "4000N03800W" };
        var week = Some.Week([leg], [Some.Passenger(PersonCategory.Adult, 180), Some.Passenger(PersonCategory.Child, 60)], Some.Reports(250, 30));
        week = week with
        {
            Types = week.Types.SetItem("Skua 9", Some.WeekType with
            {
                Tables = Some.RunwayType.Tables with
                {
                    Climb = Some.WeekType.Tables.Climb,
                    Cruise = Some.WeekType.Tables.Cruise,
                    CruiseSettings = Some.WeekType.Tables.CruiseSettings,
                    Descent = Some.WeekType.Tables.Descent,
                    Holding = Some.WeekType.Tables.Holding
                },
                Corrections = Some.RunwayType.Corrections
            }),
            Airports = week.Airports.SetItems(week.Airports.Values.Select(
                airport => KeyValuePair.Create(airport.Ident, airport with { Runways = [Some.Runway("09", 90, 6000), Some.Runway("27", 270, 6000)] }))),
        };
        var plan = Assert.IsType<LegPlan.Planned>(Some.Planned(week).Legs[0]);
        var steps = LegWorking.Of(plan);
        double[] known = [.. steps.Select(step => step.Value).Concat(steps.SelectMany(step => step.Inputs).Select(input => input.Value)).Select(Math.Abs)
            .Order()];

        var figures = new List<(string Where, double Value)>();
        Collect(PlanView.Of(plan, week), "PlanView", figures);
        Assert.True(figures.Count > 200, "The walk finds the figures.");
        Assert.Empty(figures.Where(figure => !PlainDifferences.Contains(figure.Where) && !Tolerances.Contains(figure.Where) && !IsKnown(figure.Value))
            .Select(figure => FormattableString.Invariant($"{figure.Where} {figure.Value:0.###}")).Distinct());

        bool IsKnown(double value)
        {
            var at = Array.BinarySearch(known, Math.Abs(value) - 1e-6);
            return known[Math.Min(at < 0 ? ~at : at, known.Length - 1)] <= Math.Abs(value) + 1e-6 || Math.Abs(value) < 1e-9;
        }
    }

    private static void Collect(object? value, string where, List<(string Where, double Value)> figures)
    {
        switch (value)
        {
            case null or string or bool or Picture:
                return;
            case Quantity quantity:
                figures.Add((where, quantity.Value));
                return;
            case Elapsed elapsed:
                figures.Add((where, elapsed.Time.TotalMinutes));
                return;
            case ClockTime clock:
                figures.Add((where, clock.At.InUtc().TimeOfDay.NanosecondOfDay / 60e9));
                return;
            case IEnumerable items:
                foreach (var item in items) Collect(item, where, figures);
                return;
        }

        if (value.GetType().Namespace?.StartsWith("Batch.Sheets", StringComparison.Ordinal) != true || value.GetType().IsEnum) return;
        foreach (var property in value.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance).Where(p => p.GetIndexParameters().Length == 0))
        {
            var owner = where.EndsWith(value.GetType().Name, StringComparison.Ordinal) ? where : where + "." + value.GetType().Name;
            Collect(property.GetValue(value), owner + "." + property.Name, figures);
        }
    }
}
