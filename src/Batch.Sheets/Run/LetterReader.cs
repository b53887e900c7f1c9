using System.Text.Json;
using Batch.Checks;
using Batch.Flight.Week;
using NodaTime.Text;

namespace Batch.Sheets.Run;

/// <summary>Reads from <c>run.json</c> what the mails say.</summary>
internal static class LetterReader
{
    public static ImmutableArray<CrewLetter> Read(JsonElement run)
    {
        var people = new SortedDictionary<string, CrewLetter>(StringComparer.OrdinalIgnoreCase);
        CrewLetter Letter(string code) => new()
        {
            Operator = Text(run, "operator"),
            Contact = Text(run, "operatorContact"),
            Language = Text(run, "language"),
            WeightUnit = WeightUnit.Named(Text(run, "weightUnit")),
            Code = code,
            Facts = new RunFacts { MadeAt = InstantPattern.General.Parse(Text(run, "madeAt")).Value, ToolVersion = Text(run, "toolVersion") },
            RuleSet = Text(run, "ruleSet"),
            Books = [.. run.GetProperty("inputs").EnumerateArray().Select(book => new InputBook(Text(book, "book"), Text(book, "sha256")))],
        };
        foreach (var person in run.GetProperty("crew").EnumerateArray())
        {
            var code = Text(person, "code");
            people[code] = Letter(code) with { Name = Text(person, "name"), Mail = Text(person, "mail") };
        }

        foreach (var leg in run.GetProperty("legs").EnumerateArray())
        {
            foreach (var (code, isCaptain) in Seats(leg))
            {
                var letter = people.GetValueOrDefault(code) ?? Letter(code);
                people[code] = letter with { Legs = letter.Legs.Add(Leg(leg, isCaptain)) };
            }
        }

        return [.. people.Values.Select(letter => letter with { Legs = [.. letter.Legs.OrderBy(leg => leg.OffBlocks ?? Instant.MaxValue)] })];
    }

    private static IEnumerable<(string Code, bool IsCaptain)> Seats(JsonElement leg)
    {
        var (captain, second) = (Text(leg, "captain"), Text(leg, "secondPilot"));
        if (captain.Length > 0) yield return (captain, true);
        if (second.Length > 0 && !string.Equals(captain, second, StringComparison.OrdinalIgnoreCase)) yield return (second, false);
    }

    private static LetterLeg Leg(JsonElement leg, bool isCaptain)
    {
        var state = Text(leg, "state");
        return new LetterLeg
        {
            Trip = Text(leg, "trip"),
            Number = leg.GetProperty("leg").GetInt32(),
            IsCaptain = isCaptain,
            Aircraft = Text(leg, "aircraft"),
            From = Text(leg, "from"),
            To = Text(leg, "to"),
            OffBlocks = At(leg, "offBlocksUtc"),
            FromZone = Zone(leg, "fromZone"),
            OnBlocks = At(leg, "onBlocksUtc"),
            ToZone = Zone(leg, "toZone"),
            State = Enum.GetValues<LegState>().First(known => StateWord.Of(known) == state),
            Failures = state == StateWord.Of(LegState.Unplanned) ? [Sentence(leg, "why")] : Findings(leg, State.Fail),
            Cautions = Findings(leg, State.Caution),
            OverrideReason = Text(leg, "override"),
        };
    }

    private static ImmutableArray<string> Findings(JsonElement leg, State state) =>
        [.. leg.GetProperty("findings").EnumerateArray().Where(finding => Text(finding, "state") == StateWord.Of(state))
            .Select(finding => Sentence(finding, "text"))];

    /// <summary>A sentence in the operator's unit of weight.</summary>
    private static string Sentence(JsonElement from, string name) => Text(from, name + "Kg") is { Length: > 0 } own ? own : Text(from, name);

    /// <summary>A text; empty where it is missing or null.</summary>
    public static string Text(JsonElement from, string name) => from.TryGetProperty(name, out var value) ? value.GetString() ?? "" : "";

    private static Instant? At(JsonElement from, string name) => InstantPattern.General.Parse(Text(from, name)) is { Success: true } read ? read.Value : null;

    private static DateTimeZone Zone(JsonElement from, string name) => DateTimeZoneProviders.Tzdb.GetZoneOrNull(Text(from, name)) ?? DateTimeZone.Utc;
}
