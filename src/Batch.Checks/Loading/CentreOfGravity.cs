using Batch.Checks.Rules;
using Batch.Flight.Fleet;
using Batch.Flight.Plan;

namespace Batch.Checks.Loading;

/// <summary>Envelope tests turned into answers: one failure for all states that lie outside, the worst first.</summary>
internal static class CentreOfGravity
{
    /// <summary>The answers for the tests of a load sheet that are asked for.</summary>
    /// <param name="leg">The leg.</param>
    /// <param name="ruling">The ruling.</param>
    /// <param name="isAskedFor">Which tests.</param>
    /// <param name="state">The states meant, for the sentence when none was tested.</param>
    public static IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling, Func<EnvelopeTest, bool> isAskedFor, string state)
    {
        var tests = leg.Plan.Load.Tests.Where(isAskedFor).ToImmutableArray();
        if (tests.IsEmpty)
        {
            return [ruling.NotChecked(Missing(leg, state), Cells(leg))];
        }

        var tooHeavy = tests.Where(test => !IsInside(test) && test.ForwardLimit is null && IsTooHeavy(leg, test)).ToImmutableArray();
        var outside = tests.Where(test => !IsInside(test)).Except(tooHeavy).OrderBy(test => test.ArmMargin.Value).ToImmutableArray();
        var answers = tests.Where(IsInside).Select(test => Answer(leg, ruling, test))
            .Concat(tooHeavy.Select(
                test => ruling.NotChecked($"the weight ({test.When}, {Weight(leg, test)}) is over its maximum, and the envelope ends there", Cells(leg))));
        if (outside.IsEmpty)
        {
            return answers;
        }

        var others = outside.Length == 1
            ? ""
            : $" Outside as well: {Words.List(outside[1..].Select(test => $"{test.When} {Words.Amount(test.Point.Arm.Value, "in")}"))}.";
        return answers.Prepend(Answer(leg, ruling, outside[0], others));
    }

    private static bool IsInside(EnvelopeTest test) => test.IsInside || test.ArmMargin.Value >= -Ruling.Noise && test.WeightMargin.Value >= -Ruling.Noise;

    /// <summary>Whether a weight limit of its own is already passed: one cause is one failure.</summary>
    private static bool IsTooHeavy(LegUnderCheck leg, EnvelopeTest test) => Most(leg, test) is { } most && test.Point.Weight > most;

    private static Pounds? Most(LegUnderCheck leg, EnvelopeTest test) => (test.When, test.Case) switch
    {
        ("landing", _) => leg.Type.MaximumLanding,
        (_, EnvelopeCase.ZeroFuel) => leg.Type.MaximumZeroFuel,
        _ => leg.Type.MaximumTakeoff,
    };

    /// <summary>The weight of a test, written as it is beside its limit.</summary>
    private static string Weight(LegUnderCheck leg, EnvelopeTest test) =>
        Words.Amount(Most(leg, test) is { } most ? new Pounds(PrintedTrio.Of(most.Value, test.Point.Weight.Value, isLeast: false,
            isKept: test.Point.Weight.Value <= most.Value + Ruling.Noise).Actual) : test.Point.Weight);

    private static Finding Answer(LegUnderCheck leg, Ruling ruling, EnvelopeTest test, string others = "")
    {
        var near = (test.ForwardLimit, test.AftLimit) switch
        {
            ({ } f, { } a) => Nearer(f, a, test.Point.Arm),
            ({ } f, _) => f,
            (_, var a) => a,
        };
        var printed = near is { } edge
            ? PrintedTrio.Of(edge.Value, test.Point.Arm.Value, edge == test.ForwardLimit, IsInside(test), PrintedTrio.StepsPer("in"))
            : (PrintedTrio?)null;
        var arm = Words.Amount(printed?.Actual ?? test.Point.Arm.Value, "in");
        var bound = Words.Amount(printed?.Limit ?? 0, "in");
        var beyond = Words.Amount(-(printed?.Margin ?? 0), "in");
        var at = $"{(test.When == "during the flight" ? "" : "at ")}{test.When} ({Weight(leg, test)})";
        var forward = test.ForwardLimit;
        var aft = test.AftLimit;
        var inside = IsInside(test);
        var (limit, text) = (forward, aft) switch
        {
            ({ } f, { } a) when inside => (Nearer(f, a, test.Point.Arm),
                $"Centre of gravity {at}: {arm}, between {(near == f ? bound : Words.Amount(f.Value, "in"))} and {(near == f ? Words.Amount(a.Value, "in") : bound)}."),
            ({ } f, _) when test.Point.Arm < f => (f, $"Centre of gravity {at}: {arm}, {beyond} ahead of the forward limit ({bound})."),
            (_, { } a) when test.Point.Arm > a => (a, $"Centre of gravity {at}: {arm}, {beyond} behind the aft limit ({bound})."),
            _ =>
                ((Inches?)null, inside
                    ? $"Centre of gravity {at}: {arm}, inside the envelope."
                    : $"Centre of gravity {at}: {arm}; the envelope does not reach to this weight."),
        };
        var answer = inside ? ruling.Pass(text) : ruling.Trips(text + others);
        return answer with
        {
            Required = limit?.Value,
            Actual = test.Point.Arm.Value,
            Margin = test.ArmMargin.Value,
            Span = (aft - forward)?.Value,
            Unit = "in",
            Cells = [.. Cells(leg).Where(cell => cell.Length > 0)]
        };
    }

    private static Inches Nearer(Inches forward, Inches aft, Inches arm) => (arm - forward).Value <= (aft - arm).Value ? forward : aft;

    private static string[] Cells(LegUnderCheck leg) =>
        [leg.Aircraft.Origin.Cell(nameof(Flight.Fleet.Aircraft.BasicEmptyMoment)), leg.Type.Envelopes.Select(envelope => envelope.Origin.ToString())
            .FirstOrDefault("")];

    private static string Missing(LegUnderCheck leg, string state)
    {
        var missing = new List<string>();
        if (leg.Aircraft.BasicEmptyMoment is null)
        {
            missing.Add($"the empty-weight arm of {leg.Aircraft.Registration}");
        }

        if (leg.Type.Stations.IsEmpty)
        {
            missing.Add($"the Stations of {leg.Type.Name}");
        }

        if (leg.Type.FuelMoments.IsEmpty)
        {
            missing.Add($"the FuelArms of {leg.Type.Name}");
        }

        if (leg.Type.Envelopes.IsEmpty)
        {
            missing.Add($"the Envelope of {leg.Type.Name}");
        }

        return missing.Count == 0
            ? $"the plan holds no centre of gravity for {state}"
            : $"the centre of gravity for {state} needs {Words.List(missing)}, which the book does not give";
    }
}
