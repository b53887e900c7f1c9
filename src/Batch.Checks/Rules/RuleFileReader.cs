using System.Text.Json;
using Batch.Flight.Fleet;
using Batch.Flight.Plan;
using Batch.Flight.Week;

namespace Batch.Checks.Rules;

/// <summary>
/// Reads rule files. A word that the reader does not know stops the reading; the files are part of the program. Each member is read by its name, without
/// reflection: every run reads a rule file first, and a compiled program knows its members without looking.
/// </summary>
internal static class RuleFileReader
{
    /// <summary>Reads a rule file.</summary>
    /// <param name="json">The stream, UTF-8.</param>
    /// <exception cref="JsonException">It is not a rule file.</exception>
    public static RuleFile Read(Stream json)
    {
        using var document = JsonDocument.Parse(json);
        var file = Members(document.RootElement, "the file", "name", "date", "about", "marks", "flightLevelsFrom", "flightLevelsCite", "rules");
        return new RuleFile
        {
            Name = Needed(file, "name"),
            Date = Needed(file, "date"),
            About = Needed(file, "about"),
            Marks = Member(file, "marks").EnumerateObject().ToImmutableSortedDictionary(mark => mark.Name, mark => Text(mark.Value, mark.Name)),
            FlightLevelsFrom = Number(file, "flightLevelsFrom"),
            FlightLevelsCite = Optional(file, "flightLevelsCite"),
            Rules = [.. Member(file, "rules").EnumerateArray().Select(Entry)],
        };
    }

    private static RuleFile.Entry Entry(JsonElement json)
    {
        var rule = Members(json, "a rule", "check", "part", "atLeast", "atMost", "own", "unit", "basis", "when", "state", "cite", "mark", "says");
        return new RuleFile.Entry
        {
            Check = Needed(rule, "check"),
            Part = Optional(rule, "part"),
            AtLeast = Number(rule, "atLeast"),
            AtMost = Number(rule, "atMost"),
            Own = Optional(rule, "own"),
            Unit = Optional(rule, "unit"),
            Basis = rule.TryGetProperty("basis", out var basis) ? Choice<ReserveBasis>(basis, "basis") : null,
            When = rule.TryGetProperty("when", out var when) ? Condition(when) : new(),
            State = Choice<State>(Member(rule, "state"), "state"),
            Cite = Needed(rule, "cite"),
            Mark = Needed(rule, "mark"),
            Says = Needed(rule, "says"),
        };
    }

    private static RuleCondition Condition(JsonElement json)
    {
        var when = Members(json, "a condition", "flightRules", "purpose", "engine", "engines", "seats", "pilots", "takeoffKg", "category", "pressurised",
            "passengers");
        return new RuleCondition
        {
            FlightRules = when.TryGetProperty("flightRules", out var rules) ? Choice<FlightRules>(rules, "flightRules") : null,
            Purpose = Choices<LegPurpose>(when, "purpose"),
            Engine = Optional(when, "engine"),
            Engines = Optional(when, "engines"),
            Seats = Optional(when, "seats"),
            Pilots = Optional(when, "pilots"),
            TakeoffKg = Optional(when, "takeoffKg"),
            Category = Choices<CertificationCategory>(when, "category"),
            Pressurised = Truth(when, "pressurised"),
            Passengers = Truth(when, "passengers"),
        };
    }

    private static JsonElement Members(JsonElement json, string of, params ReadOnlySpan<string> known)
    {
        if (json.ValueKind != JsonValueKind.Object) throw new JsonException($"{of} is not an object with members");
        foreach (var member in json.EnumerateObject())
        {
            if (!known.Contains(member.Name)) throw new JsonException($"{of} has the member '{member.Name}', which is not known");
        }

        return json;
    }

    private static JsonElement Member(JsonElement json, string name) =>
        json.TryGetProperty(name, out var member) ? member : throw new JsonException($"The member '{name}' is missing in {json.GetRawText()}");

    private static string Needed(JsonElement json, string name) => Text(Member(json, name), name);

    private static string Optional(JsonElement json, string name) => json.TryGetProperty(name, out var member) ? Text(member, name) : "";

    private static double? Number(JsonElement json, string name) =>
        !json.TryGetProperty(name, out var member) ? null
        : member.ValueKind == JsonValueKind.Number ? member.GetDouble() : throw new JsonException($"'{name}' is {member.GetRawText()}, not a number");

    private static bool? Truth(JsonElement json, string name) =>
        !json.TryGetProperty(name, out var member) ? null
        : member.ValueKind is JsonValueKind.True
            or JsonValueKind.False ? member.GetBoolean() : throw new JsonException($"'{name}' is {member.GetRawText()}, not true or false");

    private static ImmutableArray<T> Choices<T>(JsonElement json, string name)
        where T : struct, Enum =>
        json.TryGetProperty(name, out var member) ? [.. member.EnumerateArray().Select(one => Choice<T>(one, name))] : [];

    private static T Choice<T>(JsonElement json, string name)
        where T : struct, Enum
    {
        var written = Text(json, name);
        foreach (var value in Enum.GetValues<T>())
        {
            if (JsonNamingPolicy.CamelCase.ConvertName(value.ToString()) == written) return value;
        }

        throw new JsonException($"'{name}' is '{written}', which is not one of its words");
    }

    private static string Text(JsonElement json, string name) =>
        json.ValueKind == JsonValueKind.String && json.GetString() is { } text ? text : throw new JsonException($"'{name}' is {json.GetRawText()}, not a text");
}
