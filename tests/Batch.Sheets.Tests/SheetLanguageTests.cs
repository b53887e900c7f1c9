using Batch.Flight.Fleet;

namespace Batch.Sheets.Tests;

/// <summary>Which shipped sheets an operator reads, by unit of weight and language.</summary>
public sealed class SheetLanguageTests
{
    private const string Pounds = "Trip lb";
    private const string Metric = "Trip kg";
    private const string German = "Reise kg";

    [Theory]
    [InlineData("lb", "", Pounds)]
    [InlineData("lb", "de", Pounds)]
    [InlineData("kg", "", Metric)]
    [InlineData("kg", "en-GB", Metric)]
    [InlineData("kg", "fr", Metric)]
    [InlineData("kg", "den", Metric)]
    [InlineData("kg", "de", German)]
    [InlineData("kg", "DE-at", German)]
    [InlineData("kg", "german", German)]
    [InlineData("kg", "Deutsch", German)]
    public void The_shipped_set_follows_the_unit_and_then_the_language(string unit, string language, string header)
    {
        var templates = TemplateFolder.Shipped.For(WeightUnit.Named(unit), language);
        Assert.Contains(">" + header + "<", templates.Text("_options.html"), StringComparison.Ordinal);
        Assert.False(templates.IsOwn("_options.html"));
    }

    [Fact]
    public void A_template_of_the_users_own_stands_in_the_place_of_whatever_set_there_is()
    {
        var templates = TemplateFolder.With(new Dictionary<string, string> { ["_options.html"] = "mine" }).For(WeightUnit.Kilograms, "de");
        Assert.Equal("mine", templates.Text("_options.html"));
        Assert.True(templates.IsOwn("_options.html"));
        Assert.Contains("lang=\"de\"", templates.Text("trip-sheet.html"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("lb", "")]
    [InlineData("lb", "en-US")]
    [InlineData("kg", "English")]
    [InlineData("kg", "de-DE")]
    public void Nothing_is_said_where_the_sheets_are_as_asked(string unit, string language) => Assert.Null(Note(unit, language));

    [Theory]
    [InlineData("lb", "de", "The German sheets that are shipped are in kilograms and the weight unit is lb, so the sheets are in English.")]
    [InlineData("kg", "fr", "No sheets in the language fr are shipped, so the sheets are in English.")]
    public void A_language_without_sheets_is_noted_at_its_cell(string unit, string language, string said)
    {
        var note = Note(unit, language);
        Assert.Equal((State.Note, "operator.xlsx/Operator/B9", said), (note?.State, note?.Cell, note?.Text));
        Assert.Contains("--templates", note?.Expected, StringComparison.Ordinal);
    }

    private static Problem? Note(string unit, string language) => SheetLanguage.Note(new Operator
    {
        WeightUnit = WeightUnit.Named(unit),
        Language = language,
        Cells = ImmutableSortedDictionary<string, string>.Empty.Add("Sheet language", "operator.xlsx/Operator/B9"),
    });
}
