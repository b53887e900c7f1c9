using Batch.Books.Tests.Support;

namespace Batch.Books.Tests.Sheets;

/// <summary>
/// Week books as dispatchers leave them: rows below the table, cells forgotten, headers of their own. What is not sure is said, once, and reaches the legs it
/// may touch.
/// </summary>
public sealed class RealEditsTests
{
    [Theory]
    [InlineData("Total", null)]
    [InlineData("Total", 3)]
    [InlineData("Call the ramp before eight", null)]
    [InlineData(null, 3)]
    public void A_row_of_totals_or_remarks_below_the_legs_is_no_leg_and_costs_one_caution(string? trip, int? number)
    {
        var week = GoodBooks.Read(
            (_, book) => book.Add("Legs", trip, number, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, 2400));
        var problem = ProblemsTests.Only(week, State.Caution, "week.xlsx/Legs/5");
        Assert.Equal("the row holds no date, airports, aircraft or captain, so it is taken for a total or a remark, not for a leg", problem.Text);
        Assert.Single(week.Problems, other => other.State != State.Note);
        Assert.Equal((3, 0), (week.Legs.Length, week.BrokenLegs.Length));
    }

    [Fact]
    public void A_leg_that_lacks_nearly_everything_is_still_a_leg()
    {
        var week = GoodBooks.Read((_, book) => book.Add("Legs", "T103", 1, new DateTime(2026, 12, 9)));
        Assert.Equal("T103/1", Assert.Single(week.BrokenLegs).Key.ToString());
    }

    [Fact]
    public void A_leg_whose_number_cannot_be_read_is_named_by_its_row_and_two_of_them_are_two()
    {
        var week = GoodBooks.Read((_, book) =>
        {
            book.Set("Legs", 1, "Leg", "one");
            book.Set("Legs", 2, "Leg", null);
        });
        Assert.Equal(["T101, row 2", "T101, row 3"], week.BrokenLegs.Select(leg => leg.Key.ToString()));
        Assert.NotEqual(week.BrokenLegs[0].Key, week.BrokenLegs[1].Key);
    }

    [Fact]
    public void A_leg_without_trip_and_number_is_named_by_its_row_alone()
    {
        var week = GoodBooks.Read((_, book) =>
        {
            book.Set("Legs", 3, "Trip", null);
            book.Set("Legs", 3, "Leg", null);
        });
        Assert.Equal("row 4", Assert.Single(week.BrokenLegs).Key.ToString());
    }

    [Fact]
    public void A_week_without_a_leg_is_said_where_legs_were_looked_for()
    {
        var week = GoodBooks.Read((_, book) =>
        {
            book["Legs"].RemoveRange(1, 3);
            book["Manifest"].RemoveRange(1, 3);
            book["Cargo"].RemoveRange(1, 1);
        });
        var problem = ProblemsTests.Only(week, State.Fail, "week.xlsx/Legs");
        Assert.Equal(("no legs were found here, so nothing is planned", "one leg a row, below the headers"), (problem.Text, problem.Expected));
    }

    [Theory]
    [InlineData("Wt [lb]", "Weight")]
    [InlineData("Wght [lb]", "Weight")]
    [InlineData("Cat", "Category")]
    public void A_short_header_is_asked_about_and_the_legs_of_its_passengers_are_in_doubt(string header, string meant)
    {
        var week = GoodBooks.Read((_, book) =>
        {
            book["Manifest"][3][3] = "woman";
            book["Manifest"][3][4] = 140;
            book["Manifest"][0][meant == "Weight" ? 4 : 3] = header;
        });
        var problem = Assert.Single(week.Problems, problem => problem.State == State.Caution);
        Assert.Equal(($"{header} is not a column of Manifest and was not read; did you mean {meant}?", meant), (problem.Text, problem.Expected));
        Assert.Equal("week.xlsx/Manifest/" + (meant == "Weight" ? "E1" : "D1"), problem.Cell);
        Assert.Equal(problem, Assert.Single(week.Legs[0].Doubts));
        Assert.Equal(problem, Assert.Single(week.Legs[1].Doubts));
        Assert.Empty(week.Legs[2].Doubts);
    }

    [Theory]
    [InlineData("Nut")]
    [InlineData("Allergies")]
    [InlineData("W")]
    public void A_column_of_ones_own_is_not_asked_about(string header)
    {
        var week = GoodBooks.Read((_, book) => book["Manifest"][0] = [.. book["Manifest"][0], header]);
        Assert.DoesNotContain(week.Problems, problem => problem.State != State.Note);
    }

    [Fact]
    public void A_passenger_without_a_trip_may_be_missing_from_any_leg()
    {
        var week = GoodBooks.Read((_, book) => book.Set("Manifest", 2, "Trip", null));
        Assert.Equal(2, week.Manifest.Length);
        foreach (var leg in week.Legs)
        {
            var doubt = Assert.Single(leg.Doubts);
            Assert.Equal((State.Caution, "week.xlsx/Manifest/3"), (doubt.State, doubt.Cell));
            Assert.Equal(("What Manifest holds for a trip that is not in Legs may be missing from this leg", "week.xlsx/Manifest/3"), (doubt.Text, doubt.Cell));
        }
    }

    [Fact]
    public void Passengers_of_another_week_cost_every_leg_one_caution()
    {
        var week = GoodBooks.Read((_, book) =>
        {
            for (var i = 0; i < 300; i++)
                book.Add("Manifest", "OLDWEEK" + i.ToString(System.Globalization.CultureInfo.InvariantCulture), "all", "Somebody Else", "man", 180, 20);
        });
        Assert.Equal(300, week.Problems.Count(problem => problem.State == State.Fail));
        Assert.All(week.Legs, leg => Assert.Single(leg.Doubts));
    }

    [Fact]
    public void A_passenger_of_a_trip_that_is_nearly_one_of_the_week_may_be_missing_from_that()
    {
        var week = GoodBooks.Read((_, book) => book.Set("Cargo", 1, "Trip", "T1O2"));
        Assert.Equal("week.xlsx/Cargo/2", Assert.Single(week.Legs[2].Doubts).Cell);
        Assert.Empty(week.Legs[0].Doubts);
    }

    [Fact]
    public void Passengers_of_a_trip_without_legs_cost_one_complaint_that_names_their_rows()
    {
        var week = GoodBooks.Read((_, book) =>
        {
            for (var row = 1; row <= 2; row++) book.Set("Manifest", row, "Trip", "Z77777");
            book.Set("Cargo", 1, "Trip", "Z77777");
        });
        var problem = ProblemsTests.Only(week, State.Fail, "week.xlsx/Manifest/A2");
        Assert.Equal("the trip of rows 2-3 is not one of Legs, so they are on no leg: give the trip its legs, or clear the rows", problem.Text);
        Assert.Equal(("Z77777", "a trip of Legs"), (problem.Read, problem.Expected));
        Assert.Equal(["week.xlsx/Manifest/A2", "week.xlsx/Cargo/A2"], week.Problems.Where(one => one.State == State.Fail).Select(one => one.Cell));
        Assert.Single(week.Manifest);
        Assert.Equal(["week.xlsx/Manifest/2", "week.xlsx/Cargo/2"], week.Legs[0].Doubts.Select(doubt => doubt.Cell));
    }

    [Fact]
    public void A_trip_that_is_like_many_is_not_taken_for_any_of_them_and_may_be_missing_from_every_leg()
    {
        var week = GoodBooks.Read((_, book) =>
        {
            for (var row = 1; row <= 3; row++) book.Set("Legs", row, "Trip", "N" + row).Set("Legs", row, "Leg", 1);
            for (var row = 1; row <= 3; row++) book.Set("Manifest", row, "Trip", row < 3 ? "N9" : "N2");
            book.Set("Cargo", 1, "Trip", "N1");
        });
        Assert.Equal("the trip of rows 2-3 is not one of Legs, so they are on no leg: give the trip its legs, or clear the rows",
            ProblemsTests.Only(week, State.Fail, "week.xlsx/Manifest/A2").Text);
        Assert.All(week.Legs, leg => Assert.Equal(["week.xlsx/Manifest/2"], leg.Doubts.Select(doubt => doubt.Cell)));
    }

    [Theory]
    [InlineData("Aircraft", "TBA", "E", "one of Aircraft")]
    [InlineData("Aircraft", "??", "E", "one of Aircraft")]
    [InlineData("To", "tbd", "G", "one of Airports")]
    [InlineData("To", "?", "G", "one of Airports")]
    [InlineData("Alternate", "TBC", "H", "one of Airports")]
    [InlineData("Captain", "T.B.A.", "P", "a code of Crew")]
    [InlineData("Captain", "?", "P", "a code of Crew")]
    [InlineData("Second pilot", "to be advised", "Q", "a code of Crew")]
    public void What_is_not_yet_decided_is_said_so_and_the_leg_does_not_pass(string column, string written, string letter, string expected)
    {
        var week = GoodBooks.Read((_, book) => book.Set("Legs", 1, column, written));
        var problem = ProblemsTests.Only(week, State.Fail, "week.xlsx/Legs/" + letter + "2");
        Assert.Equal(($"{column} is not yet decided; the leg does not pass until {expected} stands here", written), (problem.Text, problem.Read));
        Assert.Contains(problem, week.BrokenLegs.SelectMany(leg => leg.Problems).Concat(week.Legs[0].Doubts));
    }

    [Fact]
    public void A_total_below_the_passengers_costs_one_caution_and_no_leg()
    {
        var week = GoodBooks.Read((_, book) => book.Add("Manifest", "Total", null, null, null, 260, 60));
        var problem = Assert.Single(week.Problems, problem => problem.State != State.Note);
        Assert.Equal((State.Caution, "week.xlsx/Manifest/5"), (problem.State, problem.Cell));
        Assert.Equal("the row holds no trip of Legs and no passenger, so it is taken for a total or a remark", problem.Text);
        Assert.All(week.Legs, leg => Assert.Empty(leg.Doubts));
        Assert.Equal(3, week.Manifest.Length);
    }

    [Theory]
    [InlineData("Weight [lb]", 500, "is it the weight of one?")]
    [InlineData("Weight [kg]", 300, "was it given in pounds in a column of kilograms?")]
    [InlineData("Weight [lb]", 80, "was it given in kilograms in a column of pounds?")]
    [InlineData("Weight [kg]", 30, "is it a child?")]
    [InlineData("Weight", 80, "was it given in kilograms in a column of pounds?")]
    public void A_weight_that_is_hardly_one_of_a_person_is_asked_about_in_the_unit_of_its_column(string header, int weight, string asked)
    {
        var week = GoodBooks.Read((_, book) =>
        {
            book["Manifest"].RemoveRange(2, 2);
            book["Manifest"][0][4] = header;
            book["Manifest"][1][4] = weight;
        });
        Assert.EndsWith(asked, ProblemsTests.Only(week, State.Caution, "week.xlsx/Manifest/E2").Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Per Taner")]
    [InlineData("per tanner")]
    [InlineData("Tanner")]
    public void A_name_in_place_of_a_code_finds_the_code_also_where_it_is_not_quite_the_name(string written)
    {
        var week = GoodBooks.Read((_, book) => book.Set("Legs", 1, "Second pilot", written));
        var problem = ProblemsTests.Only(week, State.Fail, "week.xlsx/Legs/Q2");
        Assert.Equal(("Second pilot is not a code of Crew; did you mean TAN?", "TAN"), (problem.Text, problem.Expected));
    }

    [Fact]
    public void A_total_that_stands_in_the_column_of_names_is_no_passenger()
    {
        var week = GoodBooks.Read((_, book) => book.Add("Manifest", null, null, "Total:", null, 260, 60));
        Assert.Equal("week.xlsx/Manifest/5", Assert.Single(week.Problems, problem => problem.State != State.Note).Cell);
        Assert.All(week.Legs, leg => Assert.Empty(leg.Doubts));
    }

    [Fact]
    public void Headers_that_stand_again_below_are_passed_over_with_a_note()
    {
        var week = GoodBooks.Read((_, book) => book["Legs"].Insert(3, [.. book["Legs"][0]]));
        Assert.Equal("the headers stand here again; the row was passed over", ProblemsTests.Only(week, State.Note, "week.xlsx/Legs/4").Text);
        Assert.DoesNotContain(week.Problems, problem => problem.State != State.Note);
        Assert.Equal((3, 0), (week.Legs.Length, week.BrokenLegs.Length));
    }

    [Fact]
    public void A_week_without_a_leg_does_not_complain_of_each_passenger()
    {
        var week = GoodBooks.Read((_, book) => book["Legs"].RemoveRange(1, 3));
        Assert.Equal("week.xlsx/Legs", Assert.Single(week.Problems, problem => problem.State != State.Note).Cell);
    }

    [Theory]
    [InlineData("all", "all", true)]
    [InlineData("1", "all", true)]
    [InlineData("1-2", "2", true)]
    [InlineData("1", "2", false)]
    public void A_passenger_pasted_twice_is_a_caution_of_the_legs_and_is_not_named(string one, string other, bool isAsked)
    {
        var week = GoodBooks.Read((_, book) =>
        {
            book.Set("Manifest", 1, "Legs", one);
            book.Add("Manifest", "T101", other, "ansel quill ", "man", 190, 40, 2);
        });
        Assert.Equal(4, week.Manifest.Length);
        var problems = week.Problems.Where(problem => problem.State != State.Note).ToArray();
        Assert.Equal(isAsked ? 1 : 0, problems.Length);
        if (!isAsked) return;
        Assert.Equal((State.Caution, "week.xlsx/Manifest/5", ""), (problems[0].State, problems[0].Cell, problems[0].Read));
        Assert.StartsWith("a passenger of this name stands also in week.xlsx/Manifest/2 for the same leg", problems[0].Text, StringComparison.Ordinal);
        Assert.Equal(problems[0], Assert.Single(week.Legs[1].Doubts));
    }

    [Fact]
    public void Places_kept_for_passengers_to_come_are_not_asked_about()
    {
        var week = GoodBooks.Read((_, book) => book.Add("Manifest", "T101", null, "TBA", "man").Add("Manifest", "T101", null, "TBA", "man"));
        Assert.DoesNotContain(week.Problems, problem => problem.State != State.Note);
    }

    [Fact]
    public void A_ditto_mark_is_not_taken_for_a_value()
    {
        var week = GoodBooks.Read((_, book) => book.Set("Legs", 2, "Trip", "\"").Set("Legs", 2, "Captain", "\""));
        Assert.StartsWith("Trip holds a mark that means the same as above", ProblemsTests.Only(week, State.Fail, "week.xlsx/Legs/A3").Text,
            StringComparison.Ordinal);
        Assert.StartsWith("Captain holds a mark that means the same as above", ProblemsTests.Only(week, State.Fail, "week.xlsx/Legs/P3").Text,
            StringComparison.Ordinal);
        Assert.Equal("row 3", Assert.Single(week.BrokenLegs).Key.Trip);
    }

    [Theory]
    [InlineData(true, "Manifest holds no passenger, so every charter is planned as empty")]
    [InlineData(false, "no book has a sheet Manifest, so every charter is planned as empty")]
    public void Charters_of_a_week_in_which_nobody_flies_are_in_doubt(bool isThere, string text)
    {
        var week = GoodBooks.Read((_, book) =>
        {
            if (isThere) book["Manifest"].RemoveRange(1, 3);
            else book.Sheets.RemoveAll(sheet => sheet.Name == "Manifest");
        });
        var problem = ProblemsTests.Only(week, State.Caution, "week.xlsx/Legs");
        Assert.Equal(text, problem.Text);
        Assert.Equal([1, 1, 0], week.Legs.Select(leg => leg.Doubts.Length));
    }

    [Fact]
    public void A_week_of_freight_and_ferries_needs_no_passengers()
    {
        var week = GoodBooks.Read((_, book) =>
        {
            book.Sheets.RemoveAll(sheet => sheet.Name == "Manifest");
            book.Add("Cargo", "T101", null, "Mail bags", 85);
        });
        Assert.DoesNotContain(week.Problems, problem => problem.State != State.Note);
    }

    [Fact]
    public void A_passenger_of_a_leg_is_not_sent_away_while_a_number_of_the_trip_cannot_be_read()
    {
        var week = GoodBooks.Read((_, book) => book.Set("Legs", 2, "Leg", null));
        Assert.Equal("week.xlsx/Legs/B3", Assert.Single(week.Problems, problem => problem.State == State.Fail).Cell);
    }

    [Theory]
    [InlineData("E2", "X-SKUA")]
    [InlineData("P2", "MOR")]
    public void A_formula_whose_value_is_not_stored_is_no_aircraft_and_no_captain(string cell, string value)
    {
        using var folder = new TempFolder();
        var path = GoodBooks.Week().SaveXlsx(folder.File("week.xlsx"));
        using (var zip = System.IO.Compression.ZipFile.Open(path, System.IO.Compression.ZipArchiveMode.Update))
        {
            var entry = zip.GetEntry("xl/worksheets/sheet1.xml") ?? throw new InvalidOperationException("the sheet is not where it was");
            string xml;
            using (var reader = new StreamReader(entry.Open())) xml = reader.ReadToEnd();
            var begin = xml.IndexOf($"<x:c r=\"{cell}\"", StringComparison.Ordinal);
            var end = xml.IndexOf("</x:c>", begin, StringComparison.Ordinal);
            entry.Delete();
            using var writer = new StreamWriter(zip.CreateEntry("xl/worksheets/sheet1.xml").Open());
            writer.Write(xml[..begin] + $"<x:c r=\"{cell}\"><x:f>E3</x:f>" + xml[end..]);
        }

        var week = BookReader.Read([GoodBooks.Operator().SaveXlsx(folder.File("operator.xlsx")), path]);
        Assert.Contains("formula without a stored value", ProblemsTests.Only(week, State.Fail, "week.xlsx/Legs/" + cell).Text, StringComparison.Ordinal);
        var broken = Assert.Single(week.BrokenLegs);
        Assert.Equal(["X-SKUA", "MOR"], new[] { broken.Aircraft, broken.Captain }.Select(word => word.Length == 0 ? value : word));
        Assert.Contains("", new[] { broken.Aircraft, broken.Captain });
    }
}
