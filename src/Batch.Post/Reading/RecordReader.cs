using System.Text.Json;
using NodaTime.Text;

namespace Batch.Post.Reading;

/// <summary>Reads <c>run.json</c>.</summary>
internal static class RecordReader
{
    public static WeekRecord Read(JsonElement run)
    {
        ImmutableArray<LegRecord> legs = [.. run.GetProperty("legs").EnumerateArray().Select(Leg)];
        var persons = run.GetProperty("crew").EnumerateArray().Select(Person).ToDictionary(person => person.Code, StringComparer.OrdinalIgnoreCase);
        foreach (var code in legs.SelectMany(leg => new[] { leg.Captain, leg.SecondPilot }).Where(code => code.Length > 0))
            persons.TryAdd(code, new PersonRecord { Code = code });
        return new WeekRecord
        {
            MadeAt = At(run, "madeAt") ?? throw new KeyNotFoundException("madeAt"),
            Operator = run.Text("operator"),
            OperatorMail = run.Text("operatorMail"),
            Weights = Weights(run),
            IsWhole = run.GetProperty("wholeWeek").GetBoolean(),
            Legs = legs,
            Persons = [.. persons.Values.OrderBy(person => person.Code, StringComparer.OrdinalIgnoreCase)],
        };
    }

    /// <summary>A text; empty where it is missing or null.</summary>
    internal static string Text(this JsonElement from, string name) =>
        from.TryGetProperty(name, out var value) && value.ValueKind == JsonValueKind.String ? value.GetString() ?? "" : "";

    /// <summary>An instant in whole minutes, as printed; null where it is missing or null.</summary>
    internal static Instant? Minute(JsonElement from, string name) =>
        At(from, name) is { } at ? Instant.FromUnixTimeSeconds((at.ToUnixTimeSeconds() + 30) / 60 * 60) : null;

    private static Instant? At(JsonElement from, string name) =>
        InstantPattern.ExtendedIso.Parse(from.Text(name)) is { Success: true } read ? read.Value : null;

    // Records of earlier versions say nothing of it: they are in pounds.
    private static PrintedWeight Weights(JsonElement run) => run.Text("weightUnit") is { Length: > 0 } unit
        ? new PrintedWeight(unit, run.GetProperty("weightUnitsPerPound").GetDouble())
        : PrintedWeight.Pounds;

    private static LegRecord Leg(JsonElement leg)
    {
        var isPlanned = leg.Text("state") != "unplanned";
        return new LegRecord
        {
            Trip = leg.Text("trip"),
            Number = leg.GetProperty("leg").GetInt32(),
            Row = leg.TryGetProperty("row", out var row) ? row.GetInt32() : 0,
            Captain = leg.Text("captain"),
            SecondPilot = leg.Text("secondPilot"),
            FromName = leg.Text("fromName"),
            OffBlocks = Minute(leg, "offBlocksUtc"),
            Facts = isPlanned ? FactsReader.Read(leg) : null,
            Trouble = isPlanned ? string.Join(" ", FactsReader.Failures(leg).Select(finding => Own(finding, "text"))) : Sentence(Own(leg, "why")),
        };
    }

    // In the operator's unit of weight.
    private static string Own(JsonElement from, string name) => from.Text(name + "Kg") is { Length: > 0 } own ? own : from.Text(name);

    // A reason that is a complaint about a cell has no full stop.
    private static string Sentence(string why) => why.Length == 0 || why[^1] is '.' or '?' or '!' ? why : why + ".";

    private static PersonRecord Person(JsonElement person)
    {
        var reports = ImmutableDictionary.CreateBuilder<string, Instant>(StringComparer.OrdinalIgnoreCase);
        foreach (var duty in person.GetProperty("duties").EnumerateArray())
        {
            if (Minute(duty, "reportUtc") is not { } report) continue;
            if (duty.GetProperty("legs").EnumerateArray().FirstOrDefault() is { ValueKind: JsonValueKind.String } first)
                reports[first.GetString() ?? ""] = report;
        }

        return new PersonRecord { Code = person.Text("code"), Name = person.Text("name"), Mail = person.Text("mail"), Reports = reports.ToImmutable() };
    }
}
