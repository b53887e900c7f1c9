using Batch.Books.Cells;
using Batch.Books.Units;

namespace Batch.Books.Headers;

/// <summary>The kinds of columns. Each call declares one column: name, property name, meaning.</summary>
internal static class ColumnKinds
{
    /// <summary>Marks a column that every row needs.</summary>
    public const bool Starred = true;

    /// <summary>Text as written.</summary>
    public static Column<string> Text(string name, string field, string meaning, bool required = false, params string[] aliases) =>
        Of(name, field, meaning, required, aliases, null, (cell, _) => TextReading.Any(cell));

    /// <summary>A name compared without case, kept in upper case.</summary>
    public static Column<string> Ident(string name, string field, string meaning, bool required = false, params string[] aliases) =>
        Of(name, field, meaning, required, aliases, null,
            (cell, _) => (cell.Look & NumberLook.Date) != NumberLook.Plain ? BecameDate<string>() : TextReading.Ident(cell));

    /// <summary>A name kept as written, inner blanks single.</summary>
    public static Column<string> Name(string name, string field, string meaning, bool required = false, params string[] aliases) =>
        Of(name, field, meaning, required, aliases, null,
            (cell, _) => (cell.Look & NumberLook.Date) != NumberLook.Plain ? BecameDate<string>() : TextReading.Name(cell));

    /// <summary>Names separated by commas.</summary>
    public static Column<ImmutableArray<string>> List(string name, string field, string meaning, bool required = false, params string[] aliases) =>
        Of(name, field, meaning, required, aliases, null, (cell, _) => TextReading.List(cell));

    /// <summary>A runway designator.</summary>
    public static Column<string> Runway(string name, string field, string meaning, bool required = false, params string[] aliases) =>
        Of(name, field, meaning, required, aliases, null, (cell, _) => TextReading.Runway(cell));

    /// <summary>A whole number between two limits.</summary>
    public static Column<int> Whole(string name, string field, string meaning, int least, int most, bool required = false, params string[] aliases) =>
        Of(name, field, meaning, required, aliases, null, (cell, setting) => QuantityReading.Whole(cell, setting, least, most));

    /// <summary>A plain number above zero.</summary>
    public static Column<double> Positive(string name, string field, string meaning, bool required = false, params string[] aliases) =>
        Of(name, field, meaning, required, aliases, null, (cell, setting) => AboveZero(QuantityReading.Plain(cell, setting)));

    /// <summary>A quantity of any sign, in the unit it is kept in.</summary>
    public static Column<double> Number(Quantity quantity, string name, string field, string meaning, bool required = false, params string[] aliases) =>
        Of(name, field, meaning, required, aliases, quantity, (cell, setting) => QuantityReading.Read(cell, setting, quantity));

    /// <summary>A quantity of zero or more.</summary>
    public static Column<double> NotNegative(Quantity quantity, string name, string field, string meaning, bool required = false, params string[] aliases) =>
        Of(name, field, meaning, required, aliases, quantity, (cell, setting) => ZeroOrMore(QuantityReading.Read(cell, setting, quantity)));

    /// <summary>A quantity above zero.</summary>
    public static Column<double> AboveZero(Quantity quantity, string name, string field, string meaning, bool required = false, params string[] aliases) =>
        Of(name, field, meaning, required, aliases, quantity, (cell, setting) => AboveZero(QuantityReading.Read(cell, setting, quantity)));

    /// <summary>A direction clockwise from true north [deg], 0 to 360.</summary>
    public static Column<double> Direction(string name, string field, string meaning, bool required = false, params string[] aliases) =>
        Of(name, field, meaning, required, aliases, Quantity.Angle, (cell, setting) =>
        {
            var angle = QuantityReading.Read(cell, setting, Quantity.Angle);
            return angle.IsGood && angle.Value is < 0 or > 360 ? Reading<double>.Bad("is out of range", "degrees from 0 to 360") : angle;
        });

    /// <summary>Fuel of zero or more, by weight or volume.</summary>
    public static Column<FuelAmount> Fuel(string name, string field, string meaning, bool required = false, params string[] aliases) =>
        Of(name, field, meaning, required, aliases, Quantity.Fuel, (cell, setting) => ZeroOrMore(QuantityReading.Fuel(cell, setting, Quantity.Fuel)));

    /// <summary>Fuel flow of zero or more, by weight or volume.</summary>
    public static Column<FuelAmount> FuelFlow(string name, string field, string meaning, bool required = false, params string[] aliases) =>
        Of(name, field, meaning, required, aliases, Quantity.FuelFlow, (cell, setting) => ZeroOrMore(QuantityReading.Fuel(cell, setting, Quantity.FuelFlow)));

    /// <summary>A time span of zero or more, in the unit of the quantity, which is a time.</summary>
    public static Column<double> Span(Quantity quantity, string name, string field, string meaning, bool required = false, params string[] aliases) =>
        Of(name, field, meaning, required, aliases, quantity, (cell, setting) => ZeroOrMore(QuantityReading.Span(cell, setting, quantity)));

    /// <summary>A date.</summary>
    public static Column<LocalDate> Date(string name, string field, string meaning, bool required = false, params string[] aliases) =>
        Of(name, field, meaning, required, aliases, null, (cell, _) => ClockReading.Date(cell));

    /// <summary>A local time of day.</summary>
    public static Column<LocalTime> TimeOfDay(string name, string field, string meaning, bool required = false, params string[] aliases) =>
        Of(name, field, meaning, required, aliases, null, (cell, _) => ClockReading.TimeOfDay(cell));

    /// <summary>A time of day, with or without a date, local unless marked.</summary>
    public static Column<WrittenTime> Clock(string name, string field, string meaning, bool required = false, params string[] aliases) =>
        Of(name, field, meaning, required, aliases, Quantity.Clock, ClockReading.Written);

    /// <summary>A time of day, with or without a date, UTC unless marked.</summary>
    public static Column<WrittenTime> UtcClock(string name, string field, string meaning, bool required = false, params string[] aliases) =>
        Of(name, field, meaning, required, aliases, Quantity.UtcClock, ClockReading.Written);

    /// <summary>The start of something as an instant, UTC unless marked.</summary>
    public static Column<Instant> Start(string name, string field, string meaning, bool required = false, params string[] aliases) =>
        Of(name, field, meaning, required, aliases, Quantity.UtcClock, (cell, setting) => ClockReading.Instant(cell, setting, isEnd: false));

    /// <summary>The end of something as an instant, UTC unless marked.</summary>
    public static Column<Instant> End(string name, string field, string meaning, bool required = false, params string[] aliases) =>
        Of(name, field, meaning, required, aliases, Quantity.UtcClock, (cell, setting) => ClockReading.Instant(cell, setting, isEnd: true));

    /// <summary>A latitude [deg], north positive.</summary>
    public static Column<double> Latitude(string name, string field, string meaning, bool required = false, params string[] aliases) =>
        Of(name, field, meaning, required, aliases, null, (cell, setting) => AngleText.Latitude(cell, setting.DecimalComma));

    /// <summary>A longitude [deg], east positive.</summary>
    public static Column<double> Longitude(string name, string field, string meaning, bool required = false, params string[] aliases) =>
        Of(name, field, meaning, required, aliases, null, (cell, setting) => AngleText.Longitude(cell, setting.DecimalComma));

    /// <summary>Yes or no.</summary>
    public static Column<bool> YesNo(string name, string field, string meaning, bool required = false, params string[] aliases) =>
        new()
        {
            Name = name,
            Field = field,
            Meaning = meaning,
            IsRequired = required,
            Aliases = [.. aliases],
            Words = ["yes", "no"],
            Read = (cell, _) => TextReading.YesNo(cell)
        };

    /// <summary>One word of a list. The first word of each meaning is the one offered.</summary>
    public static Column<T> Word<T>(string name, string field, string meaning, ImmutableArray<(string Word, T Value)> words, bool required = false,
        params string[] aliases) => new()
        {
            Name = name,
            Field = field,
            Meaning = meaning,
            IsRequired = required,
            Aliases = [.. aliases],
            Words = [.. words.DistinctBy(pair => pair.Value).Select(pair => pair.Word)],
            Read = (cell, _) => TextReading.Word(cell, words),
        };

    /// <summary>A column with a reader of its own.</summary>
    public static Column<T> Of<T>(string name, string field, string meaning, bool required, string[] aliases, Quantity? quantity,
        Func<RawCell, CellSetting, Reading<T>> read) =>
        new() { Name = name, Field = field, Meaning = meaning, IsRequired = required, Aliases = [.. aliases], Quantity = quantity, Read = read };

    /// <summary>A column with a reader of its own that also understands words, so that its header is offered without a unit.</summary>
    public static Column<T> Bare<T>(string name, string field, string meaning, string[] aliases, Quantity quantity,
        Func<RawCell, CellSetting, Reading<T>> read) =>
        new() { Name = name, Field = field, Meaning = meaning, Aliases = [.. aliases], Quantity = quantity, IsBare = true, Read = read };

    /// <summary>The complaint about text such as <c>1-3</c> that a spreadsheet has turned into a date.</summary>
    public static Reading<T> BecameDate<T>() =>
        Reading<T>.Bad("was turned into a date by the spreadsheet", "the text as meant; format the cell as text and type it again");

    private static Reading<double> ZeroOrMore(Reading<double> number) =>
        number.IsGood && number.Value < 0 ? Reading<double>.Bad("is negative", "zero or more") : number;

    private static Reading<double> AboveZero(Reading<double> number) =>
        number.IsGood && number.Value <= 0 ? Reading<double>.Bad("is not above zero", "a number above zero") : number;

    private static Reading<FuelAmount> ZeroOrMore(Reading<FuelAmount> fuel) =>
        fuel.IsGood && fuel.Value.Number < 0 ? Reading<FuelAmount>.Bad("is negative", "zero or more") : fuel;
}
