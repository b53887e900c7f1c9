using Batch.Books.Cells;
using Batch.Books.Headers;
using Batch.Books.Units;
using Batch.Flight.Week;

namespace Batch.Books.Sheets;

/// <summary>
/// The operator's own scenarios: items named <c>Scenario NAME</c> with amounts as their value, such as <c>12 °C, 25 kt, 10 %, 45 min</c>; the unit of an amount
/// tells what it is added to.
/// </summary>
internal static class ScenarioItems
{
    /// <summary>An item of this kind, as the starter book has it.</summary>
    public const string Example = "Scenario busy-weekend";

    private const string Word = "Scenario";
    private const string Expected = "amounts with their units and commas between: °C warmer (-50 to 50), kt more headwind (to 150), % heavier persons (-50 to 100), min later (to 24 h), such as 12 °C, 25 kt, 10 %, 45 min";

    /// <summary>The name of a scenario: lower case, hyphens for blanks. Null for another item; empty where the item names none.</summary>
    /// <param name="item">The item as written.</param>
    public static string? NameOf(string item)
    {
        var text = item.Trim();
        if (!text.StartsWith(Word, StringComparison.OrdinalIgnoreCase)) return null;
        var rest = text[Word.Length..];
        return rest.Length > 0 && char.IsLetter(rest[0])
            ? null
            : string.Join('-', rest.Split([' ', '-', ':', '_', '\u00A0'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
                .ToLowerInvariant();
    }

    /// <summary>The scenario of a row; null where it cannot be read, which is complained of.</summary>
    /// <param name="row">The row.</param>
    /// <param name="name">The name of the scenario.</param>
    /// <param name="item">Column of the item.</param>
    /// <param name="value">Column of the value.</param>
    /// <param name="before">The scenarios of the rows before.</param>
    public static Scenario? Read(Row row, string name, Column<string> item, Column<string> value, IEnumerable<Scenario> before)
    {
        if (name.Length == 0 || name is "all" || before.Any(one => one.Name == name))
        {
            row.Complain(
                State.Caution, item, name.Length == 0
                    ? "a scenario needs a name"
                    : name == "all" ? "a scenario cannot be called all" : $"the scenario {name} stands twice; this one is not used",
                    "such as Scenario hot-and-heavy");
            return null;
        }

        var amounts = new Dictionary<Quantity, double>();
        foreach (var part in Parts(row.Raw(value)))
        {
            if (Amount(part, row.Sheet.DecimalComma) is { } amount && amounts.TryAdd(amount.Of, amount.Number)) continue;
            row.Complain(State.Caution, value,
                $"the scenario {name} has '{part.Text}', which is not an amount that can be added, or stands twice; the scenario is left out", Expected);
            return null;
        }

        if (amounts.Values.Any(number => number != 0))
        {
            return Scenario.Made(
                name,
                amounts.GetValueOrDefault(Quantity.TemperatureDifference),
                new Knots(amounts.GetValueOrDefault(Quantity.Speed)),
                amounts.GetValueOrDefault(Quantity.Percent),
                Spans.OfMinutes(amounts.GetValueOrDefault(Quantity.Minutes)));
        }

        row.Complain(State.Caution, value, $"the scenario {name} adds nothing; it is left out", Expected);
        return null;
    }

    // A comma between digits belongs to a number.
    private static List<RawCell> Parts(RawCell cell)
    {
        if (cell.Kind != CellKind.Text) return cell.IsBlank ? [] : [cell];
        var (parts, start, text) = (new List<RawCell>(), 0, cell.Text);
        for (var at = 0; at <= text.Length; at++)
        {
            var isEnd = at == text.Length || text[at] is ';'
                or '\n' || (text[at] == ',' && !(at > 0 && char.IsAsciiDigit(text[at - 1]) && at + 1 < text.Length && char.IsAsciiDigit(text[at + 1])));
            if (!isEnd) continue;
            if (text[start..at].Trim() is { Length: > 0 } part) parts.Add(RawCell.OfText(part));
            start = at + 1;
        }

        return parts;
    }

    private static (Quantity Of, double Number)? Amount(RawCell part, bool decimalComma)
    {
        foreach (var (quantity, least, most) in new[] { (Quantity.TemperatureDifference, -50.0, 50), (Quantity.Speed, 0, 150), (Quantity.Percent, -50, 100),
            (Quantity.Minutes, 0, 24 * 60) })
        {
            // A number alone could be anything.
            var isNamed = part.Kind == CellKind.Text
                ? quantity.Find(NumberText.Split(part.Text).Unit) is not null
                : quantity == Quantity.Percent && (part.Look & NumberLook.Percent) != NumberLook.Plain;
            if (!isNamed) continue;
            var reading = QuantityReading.Read(part, new CellSetting(null, decimalComma), quantity);
            return reading.IsGood && reading.Value >= least && reading.Value <= most ? (quantity, reading.Value) : null;
        }

        return null;
    }
}
