using Batch.Books.Tests.Support;
using Batch.Flight.Week;

namespace Batch.Books.Tests.Sheets;

/// <summary>Week books as they are typed on the first day, with the words that charter desks use.</summary>
public sealed class FirstWeekTests
{
    [Theory]
    [InlineData("Legs", "Trip", "Trip No.")]
    [InlineData("Legs", "Off blocks", "ETD")]
    [InlineData("Legs", "Aircraft", "A/C")]
    [InlineData("Legs", "From", "Dep")]
    [InlineData("Legs", "To", "Dest")]
    [InlineData("Legs", "To", "Arr")]
    [InlineData("Legs", "Alternate", "Altn")]
    [InlineData("Legs", "Captain", "Capt")]
    [InlineData("Legs", "Second pilot", "F/O")]
    [InlineData("Manifest", "Name", "Pax")]
    [InlineData("Manifest", "Category", "Sex")]
    public void The_usual_short_name_of_a_column_is_its_name(string sheet, string column, string header)
    {
        var week = GoodBooks.Read((_, book) => book[sheet][0][Array.IndexOf(book[sheet][0], column)] = header);
        Assert.DoesNotContain(week.Problems, problem => problem.State != State.Note || problem.Text.Contains(header + " (", StringComparison.Ordinal));
        Assert.Equal(3, week.Legs.Length);
    }

    [Theory]
    [InlineData("Manifest", "Sex", "M")]
    [InlineData("Manifest", "Pax", 2)]
    [InlineData("Legs", "Dep", "09:00")]
    [InlineData("Legs", "Arr", "10:00")]
    public void Beside_the_column_itself_a_short_name_is_a_column_of_ones_own(string sheet, string header, object cell)
    {
        var plain = GoodBooks.Read();
        var week = GoodBooks.Read((_, book) =>
        {
            var rows = book[sheet];
            for (var row = 0; row < rows.Count; row++) rows[row] = [row == 0 ? header : cell, .. rows[row]];
        });
        Assert.Empty(week.Problems.Where(problem => problem.State != State.Note));
        Assert.Equal(plain.Manifest.Select(line => (line.Name, line.Category)), week.Manifest.Select(line => (line.Name, line.Category)));
        Assert.Equal(plain.Legs.Select(leg => (leg.From, leg.To, leg.OffBlocks)), week.Legs.Select(leg => (leg.From, leg.To, leg.OffBlocks)));
    }

    [Fact]
    public void A_column_called_FL_holds_flight_levels()
    {
        var week = GoodBooks.Read((_, book) =>
        {
            book["Legs"][0][Array.IndexOf(book["Legs"][0], "Level")] = "FL";
            book["Legs"][1][11] = 210;
            book["Legs"][2][11] = 6500;
            book["Legs"][3][11] = 60;
        });
        Assert.Equal([21000.0, null, 6000], week.Legs.Select(leg => leg.Level?.Value));
        var problem = ProblemsTests.Only(week, State.Fail, "week.xlsx/Legs/L3");
        Assert.Equal(("Level is too high to be a flight level; is it in feet?", "6500 ft"), (problem.Text, problem.Expected));
    }

    [Theory]
    [InlineData("m", PersonCategory.Man)]
    [InlineData("F", PersonCategory.Woman)]
    [InlineData("ADT", PersonCategory.Adult)]
    [InlineData("CHD", PersonCategory.Child)]
    [InlineData("inf", PersonCategory.Infant)]
    public void The_usual_letters_of_a_category_are_read(string written, PersonCategory category)
    {
        var week = GoodBooks.Read((_, book) => book.Set("Manifest", 2, "Category", written));
        Assert.Equal(category, week.Manifest[1].Category);
    }

    [Fact]
    public void Flight_rules_are_read_by_the_letter_of_the_flight_plan()
    {
        var week = GoodBooks.Read((_, book) =>
        {
            book.Set("Legs", 2, "Rules", "I");
            book.Set("Legs", 3, "Rules", "v");
        });
        Assert.Equal([FlightRules.Ifr, FlightRules.Ifr, FlightRules.Vfr], week.Legs.Select(leg => leg.Rules));
    }

    [Fact]
    public void What_a_column_of_words_takes_is_said_as_a_choice()
    {
        var week = GoodBooks.Read((_, book) => book.Set("Legs", 3, "Purpose", "x"));
        var problem = ProblemsTests.Only(week, State.Fail, "week.xlsx/Legs/O4");
        Assert.Equal(("Purpose is not one of the words known here", "charter, ferry or training"), (problem.Text, problem.Expected));
    }

    [Theory]
    [InlineData("Captain", null, "Captain is empty, but every row needs it", "code of the captain")]
    [InlineData("Off blocks", "#REF!", "Off blocks holds the error value #REF!", "off blocks, local to the departure airport unless marked Z")]
    public void What_is_expected_is_said_inside_the_sentence(string column, string? written, string text, string expected)
    {
        var place = "";
        var week = GoodBooks.Read((_, book) =>
        {
            book.Set("Legs", 1, column, written);
            place = "week.xlsx/Legs/" + book.Cell("Legs", 1, column);
        });
        var problem = ProblemsTests.Only(week, State.Fail, place);
        Assert.Equal((text, expected), (problem.Text, problem.Expected));
    }

    [Theory]
    [InlineData("0730L")]
    [InlineData("07:30 LT")]
    [InlineData("7:30 am local")]
    public void A_time_marked_local_is_local(string written)
    {
        var week = GoodBooks.Read((_, book) => book.Set("Legs", 1, "Off blocks", written));
        Assert.Equal(new LocalTime(7, 30), week.Legs[0].OffBlocksLocal.TimeOfDay);
        Assert.DoesNotContain(week.Problems, problem => problem.State != State.Note);
    }

    [Fact]
    public void A_time_marked_local_in_a_column_of_UTC_is_refused()
    {
        var week = GoodBooks.Read((operatorBook, book) =>
        {
            operatorBook.Set("Logged", 1, "Duty on", "1100L");
            book.Set("Winds", 1, "From", "2026-12-07 06:00 L");
        });
        Assert.Equal(["operator.xlsx/Logged/D2", "week.xlsx/Winds/B2"],
            week.Problems.Where(problem => problem.State == State.Fail).Select(problem => problem.Cell));
    }

    [Fact]
    public void Winds_until_a_day_without_a_time_cost_one_caution_a_column()
    {
        var week = GoodBooks.Read((_, book) =>
        {
            book.Set("Winds", 1, "To", new DateTime(2026, 12, 9));
            book.Set("Winds", 2, "To", new DateTime(2026, 12, 9));
        });
        Assert.Equal("To has no time of day; the end of that day is taken; likewise C3",
            Assert.Single(week.Problems, problem => problem.State == State.Caution).Text);
    }

    [Theory]
    [InlineData("Fuel plan", "Fuel aboard [L]", true)]
    [InlineData("Fuel plan", "Fuel aboard [kg]", true)]
    [InlineData("Fuel plan", "Fuel aboard [lb]", false)]
    [InlineData("Fuel plan", "Fuel aboard", false)]
    [InlineData("Fuel plan [lb]", "Fuel aboard [L]", false)]
    public void An_extra_without_a_unit_is_asked_about_where_the_column_beside_is_in_another(string header, string beside, bool isAsked)
    {
        var week = GoodBooks.Read((_, book) =>
        {
            book["Legs"][0][17] = header;
            book["Legs"][0][18] = beside;
            book["Legs"][1][18] = 100;
            book["Legs"][3][18] = 100;
        });
        var asked = week.Problems.Where(problem => problem.Cell == "week.xlsx/Legs/R2").Select(problem => (problem.State, problem.Text)).ToArray();
        Assert.Equal(isAsked ? [(State.Caution, $"Fuel plan has no unit here and is read in lb, but Fuel aboard is in {beside[13..^1]}")] : [], asked);
        Assert.Equal(new Pounds(200), Assert.IsType<FuelPlan.Minimum>(week.Legs[0].FuelPlan).Extra);
    }

    [Theory]
    [InlineData("Bags", true)]
    [InlineData("Bags [lb]", false)]
    [InlineData("Bags (lb)", false)]
    public void Weights_with_and_without_a_unit_are_asked_about_once_unless_the_header_names_it(string header, bool isAsked)
    {
        var week = GoodBooks.Read((_, book) =>
        {
            book.Set("Manifest", 1, "Bags", "12 kg");
            book.Set("Manifest", 2, "Bags", 14);
            book.Set("Manifest", 3, "Bags", 9);
            book["Manifest"][0][Array.IndexOf(book["Manifest"][0], "Bags [lb]")] = header;
        });
        if (isAsked)
            Assert.Equal("Bags has no unit here and is read in lb, but other cells of the column say kg; likewise F4",
                ProblemsTests.Only(week, State.Caution, "week.xlsx/Manifest/F3").Text);
        else
            Assert.DoesNotContain(week.Problems, problem => problem.State != State.Note);
        Assert.Equal([26.455, 14, 9], week.Manifest.Select(line => Math.Round(line.Bags.GetValueOrDefault().Value, 3)));
    }

    [Fact]
    public void Invisible_characters_neither_hide_an_ident_nor_turn_a_text_around()
    {
        var week = GoodBooks.Read((_, book) =>
        {
            book.Set("Legs", 1, "From", "X\u200BAND");
            book.Set("Legs", 1, "Remarks", "early\u202E lb 0021 \u2066at last");
            book.Set("Manifest", 1, "Name", "Ansel\u202EQuill");
        });
        Assert.Equal(("XAND", "early lb 0021 at last", "AnselQuill"), (week.Legs[0].From, week.Legs[0].Remarks, week.Manifest[0].Name));
    }

    [Fact]
    public void Control_characters_of_a_csv_file_do_not_reach_a_terminal()
    {
        using var folder = new TempFolder();
        var book = GoodBooks.Week().Set("Legs", 3, "Captain", "\u001B[2JMOR");
        var week = BookReader.Read([GoodBooks.Operator().SaveXlsx(folder.File("operator.xlsx")), book.SaveCsv(folder.File("week"))]);
        Assert.DoesNotContain(week.Problems, problem => (problem.Text + problem.Read).Any(char.IsControl));
    }

    [Fact]
    public void A_cell_merged_over_trips_and_weights_is_no_weight()
    {
        using var folder = new TempFolder();
        var week = GoodBooks.Week().SaveXlsx(folder.File("week.xlsx"), book => book.Worksheet("Manifest").Range("A2:E3").Merge());
        var read = BookReader.Read([GoodBooks.Operator().SaveXlsx(folder.File("operator.xlsx")), week]);
        Assert.DoesNotContain(read.Problems, problem => problem.Text.Contains("of each, or of all together", StringComparison.Ordinal));
        Assert.Contains(read.Problems, problem => problem.Text.StartsWith("Name is empty", StringComparison.Ordinal));
    }
}
