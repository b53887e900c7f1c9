using System.Globalization;
using Batch.SampleMaker.Books;

namespace Batch.SampleMaker.Week;

/// <summary>The sheets of passengers and cargo.</summary>
public static class ManifestSheets
{
    public static SheetTable Manifest(IEnumerable<OneTrip> trips) => SheetTable.Of(
        "Manifest",
        [new("Trip", 8), new("Legs", 7), new("Name", 26), new("Category", 10), new("Weight [lb]", 9, CellFormat.Whole), new("Bags [lb]", 9, CellFormat.Whole),
            new("Bag count", 8, CellFormat.Whole), new("Seat", 10), new("Notes", 34)],
        People(trips).Select((person, number) => Row(person.Trip, person.Party, person.Word, number)));

    public static SheetTable Cargo(IEnumerable<OneTrip> trips) => SheetTable.Of(
        "Cargo",
        [new("Trip", 8), new("Legs", 7), new("What", 24), new("Weight [lb]", 9, CellFormat.Whole), new("Station", 14), new("Notes", 34)],
        trips.SelectMany(trip => trip.Freight.Select(item => new object?[] { trip.Name, item.Legs, item.What, item.WeightLb, item.Station, item.Notes })));

    private static IEnumerable<(string Trip, Party Party, string Word)> People(IEnumerable<OneTrip> trips) =>
        from trip in trips
        from party in trip.Parties
        from word in party.People.Split(' ')
        select (trip.Name, party, word);

    private static object?[] Row(string trip, Party party, string word, int number)
    {
        var parts = word.Split('@');
        var category = Category(parts[0][0]);
        var stated = parts[0].Length > 1 ? int.Parse(parts[0].AsSpan(1), CultureInfo.InvariantCulture) : Weight(category, number);
        var bags = category == "infant" ? 0 : party.BagsLb ?? (12 + (number * 7 % 23));
        return
        [
            trip, party.Legs, PeopleNames.Of(number), category, stated, bags, bags == 0 ? 0 : bags > 25 ? 2 : 1,
            parts.Length > 1 ? parts[1].Replace('_', ' ') : number % 17 == 5 ? "Row 1" : "",
            Note(category, number),
        ];
    }

    private static string Category(char letter) => letter switch
    {
        'M' => "man",
        'W' => "woman",
        'A' => "adult",
        'C' => "child",
        'I' => "infant",
        _ => throw new InvalidOperationException($"No category {letter}."),
    };

    private static int? Weight(string category, int number) => (category, number % 41 == 4) switch
    {
        (_, true) => null,
        ("man", _) => 168 + (number * 11 % 52),
        ("woman", _) => 118 + (number * 7 % 54),
        ("adult", _) => 142 + (number * 5 % 61),
        ("child", _) => 44 + (number * 9 % 47),
        _ => 17 + (number % 10),
    };

    private static string Note(string category, int number) => category switch
    {
        "infant" => "On lap",
        "child" when number % 5 == 0 => "Travels with a parent",
        _ when number % 29 == 11 => "Walking stick, board first",
        _ => "",
    };
}
