using System.Reflection;
using Batch.Sheets.Templates;

namespace Batch.Sheets.Tests;

public class TemplateValuesTests
{
    private static readonly ImmutableArray<TemplateValue> Values =
    [
        .. TemplateValues.Of(SheetModels.Trip(SampleWeek.Made, SampleWeek.Facts, "T101", PaperSize.A4)),
        .. TemplateValues.Of(SheetModels.Board(SampleWeek.Made, SampleWeek.Facts, PaperSize.A4)),
        .. TemplateValues.Of(SheetModels.Packet(SampleWeek.Made, SampleWeek.Facts, "ANA", PaperSize.A4)),
        .. TemplateValues.Of(SheetModels.Load(SampleWeek.Made, SampleWeek.Facts, ("XAND", new LocalDate(2026, 12, 7)), PaperSize.A4)),
        .. TemplateValues.Of(SheetModels.Mail(CrewLetters.Of(SampleWeek.Made, SampleWeek.Facts)[0])),
    ];

    private static IEnumerable<Type> Views => typeof(TemplateValues).Assembly.GetTypes()
        .Where(type => type.Namespace == "Batch.Sheets.Views" && type is { IsAbstract: false } && !type.Name.StartsWith('<') && ViewMembers.Of(type).Count > 0);

    [Fact]
    public void Every_public_property_of_a_view_is_a_value_with_words() =>
        Assert.All(Views, view => Assert.All(view.GetProperties(BindingFlags.Public | BindingFlags.Instance), property =>
            Assert.False(string.IsNullOrWhiteSpace(property.GetCustomAttribute<ValueAttribute>()?.Text), view.Name + "." + property.Name)));

    [Fact]
    public void Every_view_can_be_reached_from_a_model()
    {
        var models = Views.Where(view => view.IsSubclassOf(typeof(SheetModel))).ToArray();
        Assert.NotEmpty(models);
        var listed = Values.Select(value => value.Path).ToHashSet(StringComparer.Ordinal);
        Assert.All(["legs[].unplanned.why", "legs[].plan.log[].minimum_altitude", "days[].aircraft[].legs[].worst", "margins[].finding.margin",
            "manifest[].notes", "contents[].legs[].worst", "duty.limits[].unknown", "departures[].stations[].spare", "legs[].override_reason",
            "trips[]"], path => Assert.Contains(path, listed));
    }

    [Fact]
    public void Every_value_has_a_type_and_words() => Assert.All(Values, value =>
    {
        Assert.False(string.IsNullOrWhiteSpace(value.Type), value.Path);
        Assert.False(string.IsNullOrWhiteSpace(value.Text), value.Path);
    });

    [Fact]
    public void A_quantity_has_its_unit_and_an_example()
    {
        var trip = Values.First(value => value.Path == "legs[].plan.fuel.trip");
        Assert.Equal(("fuel", "lb"), (trip.Type, trip.Unit));
        Assert.EndsWith(" lb", trip.Example, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_value_in_the_catalogue_can_be_used()
    {
        var model = SheetModels.Trip(SampleWeek.Made, SampleWeek.Facts, "T101", PaperSize.A4);
        var usable = TemplateValues.Of(model).Where(value => value.Example.Length > 0).ToArray();
        Assert.True(usable.Length > 150);
        var renderer = new SheetRenderer(TemplateFolder.With(new Dictionary<string,
            string>
        { ["t.html"] = string.Join('\n', usable.Select(value => "{{ " + value.Path.Replace("[]", "[0]", StringComparison.Ordinal) + " }}")) }));
        Assert.Empty(renderer.Render("t.html", model).Problems);
    }

    [Fact]
    public void The_page_of_values_lists_every_value_and_function()
    {
        var page = new SheetRenderer(TemplateFolder.Shipped)
            .Render(SheetModels.ValuesPage, SheetModels.Values(SampleWeek.Made, SampleWeek.Facts, PaperSize.A4));
        Assert.Empty(page.Problems);
        Golden.Matches("values.html", page.Html);
        Assert.All(Values, value => Assert.Contains(value.Path, page.Html, StringComparison.Ordinal));
        Assert.All(TemplateValues.Functions, function => Assert.Contains(">" + function.Name, page.Html, StringComparison.Ordinal));
    }

    [Fact]
    public void Every_function_has_words()
    {
        Assert.NotEmpty(TemplateValues.Functions);
        Assert.All(TemplateValues.Functions, function => Assert.False(string.IsNullOrWhiteSpace(function.Text), function.Name));
        Assert.Contains(TemplateValues.Functions, function => function is { Name: "lb", Parameters: "decimals" });
    }
}
