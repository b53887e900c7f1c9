using System.Globalization;
using Batch.Books.Tests.Support;
using Batch.Flight.Week;

namespace Batch.Books.Tests;

public sealed class ProblemsTests
{
    [Fact]
    public void An_airport_that_is_not_there_breaks_the_leg_and_the_nearest_is_named()
    {
        var week = GoodBooks.Read((_, book) => book.Set("Legs", 1, "From", "XADN"));
        var problem = Only(week, State.Fail, "week.xlsx/Legs/F2");
        Assert.Equal("XADN is not in Airports; did you mean XAND?", problem.Text);
        Assert.Equal(("XADN", "XAND"), (problem.Read, problem.Expected));
        var broken = Assert.Single(week.BrokenLegs);
        Assert.Equal((new LegKey("T101", 1), "X-SKUA", "XADN", "XBEL", new LocalDate(2026, 12, 7), "MOR", "TAN"),
            (broken.Key, broken.Aircraft, broken.From, broken.To, broken.Date.GetValueOrDefault(), broken.Captain, broken.SecondPilot));
        Assert.Contains(problem, broken.Problems);
        Assert.Equal(2, week.Legs.Length);
        Assert.Equal(3, week.Manifest.Length);
    }

    [Theory]
    [InlineData("Trip", null)]
    [InlineData("Leg", null)]
    [InlineData("Leg", "one")]
    [InlineData("Leg", 1.5)]
    [InlineData("Date", null)]
    [InlineData("Date", "3/4/2026")]
    [InlineData("Off blocks", "noon")]
    [InlineData("Off blocks", "2026-12-08T07:30")]
    [InlineData("Aircraft", "X-SKAU")]
    [InlineData("To", "#N/A")]
    [InlineData("Captain", null)]
    public void A_starred_cell_that_cannot_be_read_breaks_that_leg_only(string column, object? value)
    {
        var cell = "";
        var week = GoodBooks.Read((_, book) => cell = "week.xlsx/Legs/" + book.Set("Legs", 2, column, value).Cell("Legs", 2, column));
        var problem = Only(week, State.Fail, cell);
        Assert.Equal(2, week.Legs.Length);
        Assert.Contains(problem, Assert.Single(week.BrokenLegs).Problems);
    }

    [Theory]
    [InlineData("Level", "160")]
    [InlineData("Level", "hgih")]
    [InlineData("Rules", "IFRR")]
    [InlineData("Fuel plan", "fulll")]
    [InlineData("Fuel aboard", "some")]
    [InlineData("Fuel aboard", -5.0)]
    [InlineData("Taxi", "1:75")]
    [InlineData("Departure runway", "10")]
    [InlineData("Arrival runway", "north")]
    [InlineData("Setting", "Nrmal")]
    [InlineData("Captain", "MOT")]
    [InlineData("Second pilot", "XYZ")]
    [InlineData("Alternate", "XCRO")]
    [InlineData("Remarks", "#REF!")]
    public void An_optional_cell_that_cannot_be_read_leaves_the_leg_in_doubt(string column, object value)
    {
        var cell = "";
        var week = GoodBooks.Read((_, book) => cell = "week.xlsx/Legs/" + book.Set("Legs", 1, column, value).Cell("Legs", 1, column));
        var problem = Only(week, State.Fail, cell);
        Assert.Equal(3, week.Legs.Length);
        Assert.Equal([problem], week.Legs[0].Doubts.ToArray());
        Assert.Empty(week.Legs[1].Doubts);
        Assert.Equal(value is double number ? number.ToString(CultureInfo.InvariantCulture) : value, problem.Read);
    }

    [Fact]
    public void A_weight_that_cannot_be_read_puts_the_legs_of_the_passenger_in_doubt_and_names_nobody()
    {
        var week = GoodBooks.Read((_, book) => book.Set("Manifest", 1, "Weight", "heavy").Set("Manifest", 3, "Bags", "two"));
        var problem = Only(week, State.Fail, "week.xlsx/Manifest/E2");
        Assert.DoesNotContain("Quill", problem.Text, StringComparison.Ordinal);
        Assert.Equal([problem], week.Legs[0].Doubts.ToArray());
        Assert.Equal([problem, Only(week, State.Fail, "week.xlsx/Manifest/F4")], week.Legs[1].Doubts.ToArray());
        Assert.Empty(week.Legs[2].Doubts);
        Assert.Equal(3, week.Manifest.Length);
        Assert.Null(week.Manifest[0].Weight);
    }

    [Fact]
    public void A_passenger_row_without_a_name_is_lost_and_its_legs_are_in_doubt()
    {
        var week = GoodBooks.Read((_, book) => book.Set("Manifest", 2, "Name", null));
        Assert.Equal(2, week.Manifest.Length);
        Assert.Equal([Only(week, State.Fail, "week.xlsx/Manifest/C3")], week.Legs[0].Doubts.ToArray());
        Assert.Empty(week.Legs[1].Doubts);
    }

    [Fact]
    public void Orphan_rows_name_the_nearest_trip_and_what_they_hold_may_be_missing_from_its_legs_or_from_any()
    {
        var week = GoodBooks.Read((_, book) => book.Set("Manifest", 1, "Trip", "T110").Set("Cargo", 1, "Trip", "ZZZZZZ"));
        Assert.Equal("the trip is not one of Legs; did you mean T101?", Only(week, State.Fail, "week.xlsx/Manifest/A2").Text);
        Assert.Equal("the trip is not one of Legs", Only(week, State.Fail, "week.xlsx/Cargo/A2").Text);
        Assert.Equal((2, 0), (week.Manifest.Length, week.Cargo.Length));
        Assert.Equal(
            [["week.xlsx/Manifest/2", "week.xlsx/Cargo/2"], ["week.xlsx/Manifest/2", "week.xlsx/Cargo/2"], ["week.xlsx/Cargo/2"]],
            week.Legs.Select(leg => leg.Doubts.Select(doubt => doubt.Cell).ToArray()));
        Assert.All(week.Legs.SelectMany(leg => leg.Doubts), doubt => Assert.Equal(State.Caution, doubt.State));
    }

    [Fact]
    public void A_row_for_a_leg_that_the_trip_does_not_have_is_complained_of_and_kept_for_the_others()
    {
        var week = GoodBooks.Read((_, book) => book.Set("Manifest", 1, "Legs", "1-4"));
        Assert.Equal("T101 has no leg 3, 4", Only(week, State.Fail, "week.xlsx/Manifest/B2").Text);
        Assert.Equal(3, week.Manifest.Length);
        Assert.Single(week.Legs[0].Doubts);
    }

    [Fact]
    public void The_same_key_twice_gives_up_the_second_row_and_puts_the_first_in_doubt()
    {
        var week = GoodBooks.Read((_, book) => book.Set("Legs", 2, "Leg", 1));
        var problem = Only(week, State.Fail, "week.xlsx/Legs/B3");
        Assert.Contains("week.xlsx/Legs/2", problem.Text, StringComparison.Ordinal);
        Assert.Equal([problem], week.Legs[0].Doubts.Where(doubt => doubt.Cell.Contains("/Legs/", StringComparison.Ordinal)));
        Assert.Contains(problem, Assert.Single(week.BrokenLegs).Problems);
    }

    [Fact]
    public void A_leg_number_that_is_left_out_is_a_caution()
    {
        var week = GoodBooks.Read((_, book) => book.Set("Legs", 2, "Leg", 3).Set("Manifest", 3, "Legs", "3"));
        Assert.Contains("T101/2", Only(week, State.Caution, "week.xlsx/Legs/B3").Text, StringComparison.Ordinal);
        Assert.Equal(3, week.Legs.Length);
    }

    [Theory]
    [InlineData("Aircraft", "Registration", 2, "X-SKUA")]
    [InlineData("Airports", "Ident", 2, "xand")]
    [InlineData("Types", "Type", 2, "SKUA 9")]
    [InlineData("Crew", "Code", 2, "MOR")]
    [InlineData("Runways", "Runway", 2, "9")]
    [InlineData("Stations", "Station", 2, "cockpit")]
    public void A_name_that_stands_twice_is_complained_of_at_the_second(string sheet, string column, int row, string value)
    {
        var cell = "";
        var week = GoodBooks.Read((book, _) => cell = "operator.xlsx/" + sheet + "/" + book.Set(sheet, row, column, value).Cell(sheet, row, column));
        Assert.Contains("stands twice", week.Problems.First(problem => problem.Cell == cell).Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_reference_to_a_row_that_could_not_be_read_says_so()
    {
        var week = GoodBooks.Read((book, _) => book.Set("Airports", 2, "Latitude", "far north"));
        Assert.Equal(State.Fail, Only(week, State.Fail, "operator.xlsx/Airports/C3").State);
        Assert.Equal(3, week.BrokenLegs.Length);
        Assert.Contains(week.BrokenLegs[0].Problems,
            problem => problem.Text == "XBEL stands in Airports, but its row could not be read: see operator.xlsx/Airports/3");
    }

    [Theory]
    [InlineData("Types", 1, "Takeoff", "much", 2)]
    [InlineData("Aircraft", 1, "Annual due", "soon", 2)]
    [InlineData("Airports", 3, "Fuel", "steam", 2)]
    [InlineData("Crew", 2, "Medical until", "3/4/2026", 1)]
    [InlineData("Stations", 2, "Arm", "aft", 2)]
    [InlineData("Runways", 1, "TODA", "long", 2)]
    [InlineData("Climb", 2, "Time", "slow", 2)]
    [InlineData("Envelope", 2, "Weight", -1, 2)]
    [InlineData("FuelArms", 2, "Fuel", null, 2)]
    public void What_a_leg_depends_on_puts_it_in_doubt_where_it_cannot_be_read(string sheet, int row, string column, object? value, int legs)
    {
        var cell = "";
        var week = GoodBooks.Read((book, _) => cell = "operator.xlsx/" + sheet + "/" + book.Set(sheet, row, column, value).Cell(sheet, row, column));
        var problem = Only(week, State.Fail, cell);
        Assert.Equal(3, week.Legs.Length);
        Assert.Equal(legs, week.Legs.Count(leg => leg.Doubts.Contains(problem)));
    }

    [Fact]
    public void Envelopes_that_cross_themselves_or_have_too_few_vertices_are_not_used()
    {
        var week = GoodBooks.Read((book, _) =>
        {
            book.Set("Envelope", 2, "Arm", 232).Set("Envelope", 3, "Arm", 216);
            book["Envelope"].RemoveAt(7);
        });
        Assert.Contains("crosses itself", Only(week, State.Fail, "operator.xlsx/Envelope/2").Text, StringComparison.Ordinal);
        Assert.Contains("fewer than three", Only(week, State.Fail, "operator.xlsx/Envelope/6").Text, StringComparison.Ordinal);
        Assert.Empty(week.Types["Skua 9"].Envelopes);
        Assert.Single(week.Types["Plover"].Envelopes);
        Assert.Equal([2, 2, 0], week.Legs.Select(leg => leg.Doubts.Length));
    }

    [Fact]
    public void A_table_with_a_fault_is_not_used()
    {
        var week = GoodBooks.Read((book, _) => book.Set("Cruise", 2, "Altitude", 10000));
        Assert.NotEqual("", Only(week, State.Fail, "operator.xlsx/Cruise/3").Text);
        Assert.Equal(["Long range"], week.Types["Skua 9"].Tables.Cruise.Keys);
        Assert.Contains(week.Legs[1].Doubts, doubt => doubt.Cell == "operator.xlsx/Cruise/3");
    }

    [Theory]
    [InlineData("Time zone", "America/New_Yorc", "America/New_York")]
    [InlineData("Latitude", 95.0, "")]
    [InlineData("Longitude", "200E", "")]
    [InlineData("Elevation", "low", "")]
    public void An_airport_cell_that_makes_no_sense_is_complained_of(string column, object value, string expected)
    {
        var cell = "";
        var week = GoodBooks.Read((book, _) => cell = "operator.xlsx/Airports/" + book.Set("Airports", 3, column, value).Cell("Airports", 3, column));
        Assert.Contains(expected, Only(week, State.Fail, cell).Expected, StringComparison.Ordinal);
        Assert.DoesNotContain("XCOR", week.Airports.Keys);
    }

    [Theory]
    [InlineData("week", "Manifest", 1, "Weight", 86.0)]
    [InlineData("week", "Manifest", 1, "Weight", 420.0)]
    [InlineData("week", "Manifest", 3, "Weight", 260.0)]
    [InlineData("week", "Manifest", 1, "Bags", 400.0)]
    [InlineData("week", "Legs", 1, "Fuel aboard", 5000.0)]
    [InlineData("week", "Legs", 2, "Fuel plan", "600 USG")]
    [InlineData("operator", "Crew", 1, "Weight", 80.0)]
    [InlineData("operator", "Aircraft", 1, "Basic empty weight", 9800.0)]
    [InlineData("operator", "Aircraft", 1, "Basic empty weight", 2600.0)]
    [InlineData("operator", "Types", 1, "Density", 0.8)]
    [InlineData("operator", "Runways", 1, "TORA", 300.0)]
    [InlineData("operator", "Runways", 1, "True bearing", 120.0)]
    [InlineData("operator", "Aircraft", 1, "Home", "XNDA")]
    public void An_unlikely_value_is_a_caution_at_its_cell(string bookName, string sheet, int row, string column, object value)
    {
        var cell = "";
        var week = GoodBooks.Read((operatorBook, weekBook) =>
        {
            var book = bookName == "week" ? weekBook : operatorBook;
            cell = bookName + ".xlsx/" + sheet + "/" + book.Set(sheet, row, column, value).Cell(sheet, row, column);
        });
        Assert.Contains(week.Problems, problem => problem.State == State.Caution && problem.Cell == cell);
        Assert.DoesNotContain(week.Problems, problem => problem.State == State.Fail);
    }

    [Fact]
    public void A_captain_written_by_name_is_pointed_to_the_code_without_the_name_in_the_text()
    {
        var week = GoodBooks.Read((_, book) => book.Set("Legs", 1, "Captain", "Ida Morrow"));
        var problem = Only(week, State.Fail, "week.xlsx/Legs/P2");
        Assert.Equal("Captain is not a code of Crew; did you mean MOR?", problem.Text);
    }

    [Fact]
    public void No_text_of_a_complaint_names_a_person()
    {
        var week = GoodBooks.Read((operatorBook, book) =>
        {
            operatorBook.Set("Crew", 1, "Weight", 20).Set("Crew", 2, "Medical until", "soon").Set("Crew", 1, "Types", "Skua 8")
                .Set("Logged", 1, "Crew", "Ida Morrow");
            for (var row = 1; row <= 3; row++) book.Set("Manifest", row, "Weight", row == 1 ? "x" : 5).Set("Manifest", row, "Category", "pensioner")
                .Set("Manifest", row, "Legs", "9").Set("Manifest", row, "Bags", 1000);
            book.Set("Legs", 1, "Captain", "Per Tanner").Set("Legs", 2, "Second pilot", "Morrow");
        });
        Assert.True(week.Problems.Length > 15);
        var names = new[] { "Ida", "Morrow", "MORROW", "Per ", "Tanner", "TANNER", "Ansel", "Quill", "Bea", "Thorn", "Cy ", "Marsh" };
        Assert.All(week.Problems, problem => Assert.DoesNotContain(names, name => problem.Text.Contains(name, StringComparison.Ordinal)));
    }

    [Fact]
    public void Complaints_come_in_book_sheet_row_and_column_order_all_in_one_pass()
    {
        var week = GoodBooks.Read((operatorBook, book) =>
        {
            operatorBook.Set("Crew", 1, "Mail", "#N/A").Set("Types", 2, "Seats", "many").Set("Types", 1, "Seats", "few").Set("Types", 1, "Engine", "steam");
            book.Set("Notices", 1, "Effect", "gone").Set("Legs", 3, "To", "XCRO").Set("Legs", 1, "Level", "low").Set("Legs", 1, "From", "XNAD");
        });
        Assert.Equal(
            ["operator.xlsx/Types/B2", "operator.xlsx/Types/G2", "operator.xlsx/Types/G3", "operator.xlsx/Crew/C2", "week.xlsx/Legs/F2", "week.xlsx/Legs/L2",
                "week.xlsx/Legs/G4", "week.xlsx/Notices/D2"],
            week.Problems.Where(problem => problem.State == State.Fail).Select(problem => problem.Cell));
    }

    [Theory]
    [InlineData("operator", "Operator", 3, "Value", "us-chartr", 3)]
    [InlineData("operator", "Operator", 9, "Value", "some", 3)]
    [InlineData("operator", "Checks", 1, "State", "failing", 3)]
    [InlineData("week", "Notices", 1, "Effect", "runway closd", 3)]
    [InlineData("week", "Notices", 1, "To", "later", 3)]
    public void A_limit_or_a_closure_that_cannot_be_read_puts_the_legs_it_may_touch_in_doubt(
        string bookName, string sheet, int row, string column, object value, int legs)
    {
        var cell = "";
        var week = GoodBooks.Read((operatorBook, weekBook) =>
        {
            var book = bookName == "week" ? weekBook : operatorBook;
            cell = bookName + ".xlsx/" + sheet + "/" + book.Set(sheet, row, column, value).Cell(sheet, row, column);
        });
        var problem = Only(week, State.Fail, cell);
        Assert.Equal(legs, week.Legs.Count(leg => leg.Doubts.Contains(problem)));
    }

    [Fact]
    public void A_notice_about_another_place_touches_no_leg()
    {
        var week = GoodBooks.Read((_, book) => book.Set("Notices", 1, "Subject", "XCOR").Set("Notices", 1, "Effect", "gone"));
        Assert.Equal([1, 0, 1], week.Legs.Select(leg => leg.Doubts.Length));
    }

    [Fact]
    public void Two_winds_at_one_ident_say_which_place_was_taken()
    {
        var week = GoodBooks.Read((_, book) => book.Set("Winds", 2, "Place", "TIDES"));
        Assert.Contains("several places", Only(week, State.Caution, "week.xlsx/Winds/A3").Text, StringComparison.Ordinal);
        Assert.Equal(42.1, week.Winds[1].Place.GetValueOrDefault().LatitudeDeg);
    }

    internal static Problem Only(OperatorWeek week, State state, string cell)
    {
        var found = week.Problems.Where(problem => problem.State == state && problem.Cell == cell).ToArray();
        Assert.True(found.Length == 1, $"{found.Length.ToString(CultureInfo.InvariantCulture)} at {cell}; all: {string.Join(" | ", week.Problems.Select(problem => $"{problem.State} {problem.Cell} {problem.Text}"))}");
        return found[0];
    }
}
