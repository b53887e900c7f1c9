using Batch.Books.Tests.Support;

namespace Batch.Books.Tests;

public sealed class GoodBooksTests
{
    [Fact]
    public void Good_books_are_read_without_complaint_but_the_note_on_the_unknown_column()
    {
        var week = GoodBooks.Read();
        Assert.Equal(["columns that are not known here are kept for the templates: Hangar (X)"], week.Problems.Select(problem => problem.Text + (problem.State == State.Note ? "" : " " + problem.State + " " + problem.Cell)));
        Assert.Equal((3, 0, 3, 1, 3, 1, 1), (week.Legs.Length, week.BrokenLegs.Length, week.Manifest.Length, week.Cargo.Length, week.Winds.Length, week.Bulletins.Length, week.Notices.Length));
        Assert.Equal((2, 2, 3, 3, 1, 1, 2, 2, 2, 1), (week.Types.Count, week.Fleet.Count, week.Airports.Count, week.Fixes.Length, week.Airways.Count, week.Land.Length, week.AltitudeGrid.Length, week.Crew.Count, week.Logged.Length, week.CheckSettings.Length));
    }
}
