using System.Globalization;
using Batch.Flight.Fleet;

namespace Batch.Flight.Plan;

/// <summary>
/// The corrections of a runway distance. Half of a headwind is credited and one and a half times a tailwind is charged (14 CFR 135.393(a)(2), by analogy;
/// CAT.POL.A.305 and .330); slope counts only the wrong way.
/// </summary>
internal static class RunwayFactors
{
    /// <summary>Part of a headwind that is credited.</summary>
    public const double HeadwindCredit = 0.5;

    /// <summary>Multiple of a tailwind that is charged.</summary>
    public const double TailwindCharge = 1.5;

    /// <summary>The factors of one runway.</summary>
    /// <param name="runwayCase">Takeoff or landing.</param>
    /// <param name="runway">The runway.</param>
    /// <param name="headwindKt">Headwind component [kt], negative for a tailwind.</param>
    /// <param name="isWet">Whether it is wet.</param>
    /// <param name="assumptions">What is left out because the book gives no correction, added to.</param>
    /// <param name="why">What is missing, one sentence; null where the factors stand.</param>
    /// <returns>The factors in the order in which they are applied, each other than 1.</returns>
    public static ImmutableArray<RunwayFactor> Of(
        RunwayCase runwayCase, Runway runway, double headwindKt, bool isWet, ICollection<string> assumptions, out string? why)
    {
        var factors = ImmutableArray.CreateBuilder<RunwayFactor>();
        why = null;
        Wind(runwayCase, headwindKt, factors, assumptions);
        Slope(runwayCase, runway, factors, assumptions);
        switch (runway.Surface)
        {
            case RunwaySurface.Grass when runwayCase.Grass is null:
                why = $"runway {runway.Ident} is grass and the Types sheet gives no {runwayCase.Word} correction for grass";
                break;
            case RunwaySurface.Grass:
                Add(factors, "grass", 1 + (runwayCase.Grass ?? 0));
                break;
            case RunwaySurface.Gravel:
                assumptions.Add($"no gravel correction in the book: runway {runway.Ident} taken as paved");
                break;
            case null:
                assumptions.Add($"surface of runway {runway.Ident} not stated: taken as paved");
                break;
            case RunwaySurface.Paved:
                break;
        }

        if (isWet && runwayCase.Wet is { } wet) Add(factors, "wet", 1 + wet);
        else if (isWet) assumptions.Add($"no wet {runwayCase.Word} correction in the book: the dry distance holds");
        return factors.ToImmutable();
    }

    private static void Wind(RunwayCase runwayCase, double headwindKt, ImmutableArray<RunwayFactor>.Builder factors, ICollection<string> assumptions)
    {
        var tailwindKt = -headwindKt;
        if (headwindKt > 0 && runwayCase.HeadwindPerKnot is { } perKnot)
        {
            var factor = 1 - (HeadwindCredit * headwindKt * perKnot);
            if (factor > 0) Add(factors, $"{Show(headwindKt)} kt headwind, half credited", factor);
            else assumptions.Add($"the headwind correction of the book leaves no distance at {Show(headwindKt)} kt: not credited");
        }
        else if (tailwindKt > 0 && runwayCase.TailwindPerKnot is { } more)
        {
            Add(factors, $"{Show(tailwindKt)} kt tailwind, taken as {Show(TailwindCharge * tailwindKt)} kt", 1 + (TailwindCharge * tailwindKt * more));
        }
        else if (tailwindKt > 0.05)
        {
            assumptions.Add($"no tailwind correction in the book: {Show(tailwindKt)} kt of tailwind left out");
        }
    }

    private static void Slope(RunwayCase runwayCase, Runway runway, ImmutableArray<RunwayFactor>.Builder factors, ICollection<string> assumptions)
    {
        var percent = runwayCase.IsTakeoff ? runway.SlopePercent : -runway.SlopePercent;
        if (percent <= 0) return;
        var name = $"{Show(percent)} % {runwayCase.SlopeWord}";
        if (runwayCase.SlopePerPercent is { } perPercent) Add(factors, name, 1 + (percent * perPercent));
        else assumptions.Add($"no {runwayCase.SlopeWord} correction in the book: {name} left out");
    }

    private static void Add(ImmutableArray<RunwayFactor>.Builder factors, string name, double factor)
    {
        if (factor != 1) factors.Add(new RunwayFactor(name, factor));
    }

    private static string Show(double value) => value.ToString("0.#", CultureInfo.InvariantCulture);
}
