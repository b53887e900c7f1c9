using Batch.Checks;

namespace Batch.Sheets.Tests;

internal static class SampleFindings
{
    public static Finding Fail { get; } = new()
    {
        Check = "FUEL-03",
        Title = "IFR reserve",
        Verdict = Verdict.Fail,
        Text = "Fuel aboard is 41 lb short of destination, alternate and 45 minutes.",
        Required = 812.4,
        Actual = 771,
        Margin = -41.4,
        Unit = "lb",
        Citation = "14 CFR 135.223(a), 91.167(a)(3)",
        Cells = ["week.xlsx/Legs/Q5"],
        Actor = "captain",
        Remedies =
        [
            new Remedy("Load 42 lb more here: week.xlsx/Legs/Q5 from 'amount 771' to 'minimum'", 1,
                ImmutableSortedDictionary<string, string>.Empty.Add("week.xlsx/Legs/Q5", "minimum")),
            new Remedy("Fly at 18,000 ft", 2, ImmutableSortedDictionary<string, string>.Empty.Add("week.xlsx/Legs/N5", "FL180")),
        ],
    };

    public static Finding Caution { get; } = new()
    {
        Check = "WB-08",
        Title = "Passenger weight basis",
        Verdict = Verdict.Caution,
        Text = "Two of three passengers are taken at a standard weight.",
        Required = 3,
        Actual = 1,
        Margin = -2,
        Unit = "persons",
        Citation = "AC 120-27F",
        IsBasisUnconfirmed = true,
        Cells = ["week.xlsx/Manifest/E6", "week.xlsx/Manifest/E7"],
        Remedies =
            [new Remedy("Ask for the actual weights and enter them in week.xlsx/Manifest/E6 and E7", 1, ImmutableSortedDictionary<string, string>.Empty)],
    };

    public static Finding NotChecked { get; } = new()
    {
        Check = "ALT-01",
        Title = "Destination forecast",
        Verdict = Verdict.NotChecked,
        Text = "No forecast for XBEL in Bulletins.",
        Citation = "14 CFR 135.219",
        Cells = ["week.xlsx/Bulletins"],
    };

    public static Finding Note { get; } = new()
    {
        Check = "PERF-07",
        Title = "Crosswind",
        Verdict = Verdict.Note,
        Text = "=11 kt from the left at XAND runway 09.",
        Required = 15,
        Actual = 11.2,
        Margin = 3.8,
        Unit = "kt",
        Citation = "operator policy",
        Actor = "captain",
    };

    public static Finding DoesNotApply { get; } =
        new() { Check = "FUEL-01", Title = "VFR reserve, day", Verdict = Verdict.NotApplicable, Text = "Flown under IFR.", Citation = "14 CFR 91.151(a)(1)" };

    public static Finding Pass(string check, string title, double required, double actual, string unit) => new()
    {
        Check = check,
        Title = title,
        Verdict = Verdict.Pass,
        Text = title + " fits.",
        Required = required,
        Actual = actual,
        Margin = Math.Abs(required - actual),
        Unit = unit,
        Citation = "14 CFR 91.9",
    };
}
