using Batch.Checks.Rules;
using Batch.Flight.Plan;

namespace Batch.Checks.Loading;

/// <summary>Envelope tests turned into answers.</summary>
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
        return tests.IsEmpty ? [ruling.NotChecked(Missing(leg, state), Cells(leg))] : tests.Select(test => Answer(leg, ruling, test));
    }

    private static Finding Answer(LegUnderCheck leg, Ruling ruling, EnvelopeTest test)
    {
        var arm = Words.Amount(test.Point.Arm.Value, "in");
        var at = $"{test.When} at {Words.Amount(test.Point.Weight)}";
        var forward = test.ForwardLimit;
        var aft = test.AftLimit;
        var inside = test.IsInside || test.ArmMargin.Value >= -Ruling.Noise && test.WeightMargin.Value >= -Ruling.Noise;
        var (limit, text) = (forward, aft) switch
        {
            ({ } f, { } a) when inside => (Nearer(f, a, test.Point.Arm), $"Centre of gravity, {at}: {arm}, between {Words.Amount(f.Value, "in")} and {Words.Amount(a.Value, "in")}."),
            ({ } f, _) when test.Point.Arm < f => (f, $"Centre of gravity, {at}: {arm}, which is {Words.Amount((f - test.Point.Arm).Value, "in")} ahead of the forward limit {Words.Amount(f.Value, "in")}."),
            (_, { } a) when test.Point.Arm > a => (a, $"Centre of gravity, {at}: {arm}, which is {Words.Amount((test.Point.Arm - a).Value, "in")} behind the aft limit {Words.Amount(a.Value, "in")}."),
            _ => ((Inches?)null, inside ? $"Centre of gravity, {at}: {arm}, inside the envelope." : $"Centre of gravity, {at}: {arm}; the envelope does not reach to this weight."),
        };
        var answer = inside ? ruling.Pass(text) : ruling.Trips(text);
        return answer with { Required = limit?.Value, Actual = test.Point.Arm.Value, Margin = test.ArmMargin.Value, Unit = "in", Cells = [.. Cells(leg).Where(cell => cell.Length > 0)] };
    }

    private static Inches Nearer(Inches forward, Inches aft, Inches arm) => (arm - forward).Value <= (aft - arm).Value ? forward : aft;

    private static string[] Cells(LegUnderCheck leg) =>
        [leg.Aircraft.Origin.Cell(nameof(Flight.Fleet.Aircraft.BasicEmptyMoment)), leg.Type.Envelopes.Select(envelope => envelope.Origin.ToString()).FirstOrDefault("")];

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
