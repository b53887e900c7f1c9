using Batch.Books.Headers;
using Batch.Books.Links;
using Batch.Books.Units;
using Batch.Flight.Fleet;

namespace Batch.Books.Sheets;

/// <summary>The Envelope sheet: the vertices of each envelope in order.</summary>
internal static class EnvelopeSheet
{
    /// <summary>The declared columns.</summary>
    public static readonly SheetPlan Plan = new("Envelope", "operator", "Envelopes of weight and centre of gravity: the vertices in order around the polygon.");

    private static readonly Column<string> Type = Plan.Add(ColumnKinds.Text("Type", "Type", "Type as in Types.", ColumnKinds.Starred));
    private static readonly Column<EnvelopeCase> Case = Plan.Add(ColumnKinds.Word(
        "Case", nameof(Envelope.Case), "The condition it holds for.",
        [("takeoff", EnvelopeCase.Takeoff), ("landing", EnvelopeCase.Landing), ("zero fuel", EnvelopeCase.ZeroFuel)], ColumnKinds.Starred));
    private static readonly Column<double> Weight =
        Plan.Add(ColumnKinds.AboveZero(Quantity.Weight, "Weight", nameof(EnvelopePoint.Weight), "Weight at this vertex.", ColumnKinds.Starred));
    private static readonly Column<double> Arm = Plan.Add(
        ColumnKinds.Number(Quantity.Arm, "Arm", nameof(EnvelopePoint.Arm), "Centre of gravity at this vertex, aft of the datum.", ColumnKinds.Starred));

    /// <summary>
    /// The envelopes of each type. A vertex that could not be read costs its envelope: one without it would allow or forbid what the book does not.
    /// </summary>
    public static ILookup<string, Envelope> Read(Shelf shelf, Register<AircraftType> types)
    {
        var groups = new Dictionary<(string Type, EnvelopeCase Case), List<(Row Row, EnvelopePoint Point)>>();
        var broken = new HashSet<(string, EnvelopeCase)>();
        foreach (var row in shelf.Rows(Plan))
        {
            var type = row.NeededText(Type);
            var known = types.Resolve(row, Type, type);
            var key = (type.ToUpperInvariant(), row.Needed(Case));
            var caseIsKnown = !row.IsLost;
            var point = new EnvelopePoint(new Pounds(row.Needed(Weight)), new Inches(row.Needed(Arm)));
            types.Doubt(type, row.Fails);
            if (known is null) continue;
            if (!row.IsLost)
            {
                if (!groups.TryGetValue(key, out var points)) groups.Add(key, points = []);
                points.Add((row, point));
            }
            else if (caseIsKnown)
            {
                broken.Add(key);
            }
        }

        var envelopes = new List<(string Type, Envelope Envelope)>();
        foreach (var ((type, envelopeCase), points) in groups.Where(group => !broken.Contains(group.Key)))
        {
            if (points.Count > 1 && points[0].Point == points[^1].Point) points.RemoveAt(points.Count - 1);
            var origin = points[0].Row;
            if (Fault([.. points.Select(pair => pair.Point)]) is { } fault)
            {
                types.Doubt(type, [origin.ComplainOfRow(State.Fail, $"the {Words(envelopeCase)} envelope of {origin.Raw(Type).Text} that begins here {fault}",
                    "at least three vertices in order around the polygon")]);
                continue;
            }

            envelopes.Add((type, new Envelope { Case = envelopeCase, Vertices = [.. points.Select(pair => pair.Point)], Origin = origin.Origin }));
        }

        return envelopes.ToLookup(pair => pair.Type, pair => pair.Envelope, StringComparer.OrdinalIgnoreCase);
    }

    private static string Words(EnvelopeCase envelopeCase) => envelopeCase switch
    {
        EnvelopeCase.Takeoff => "takeoff",
        EnvelopeCase.Landing => "landing",
        EnvelopeCase.ZeroFuel => "zero-fuel",
    };

    private static string? Fault(EnvelopePoint[] points)
    {
        if (points.Length < 3) return "has fewer than three vertices";
        for (var i = 0; i < points.Length; i++)
        {
            for (var j = i + 1; j < points.Length; j++)
            {
                var neighbours = j == i + 1 || (i == 0 && j == points.Length - 1);
                if (!neighbours && Cross(points[i], points[(i + 1) % points.Length], points[j], points[(j + 1) % points.Length])) return "crosses itself";
            }
        }

        return null;
    }

    private static bool Cross(EnvelopePoint a, EnvelopePoint b, EnvelopePoint c, EnvelopePoint d) =>
        Side(a, b, c) * Side(a, b, d) < 0 && Side(c, d, a) * Side(c, d, b) < 0;

    private static int Side(EnvelopePoint a, EnvelopePoint b, EnvelopePoint p) =>
        Math.Sign(((b.Arm.Value - a.Arm.Value) * (p.Weight.Value - a.Weight.Value)) - ((b.Weight.Value - a.Weight.Value) * (p.Arm.Value - a.Arm.Value)));
}
