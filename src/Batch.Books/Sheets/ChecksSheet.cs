using Batch.Books.Headers;
using Batch.Flight.Fleet;

namespace Batch.Books.Sheets;

/// <summary>The Checks sheet: the operator's own settings of checks.</summary>
internal static class ChecksSheet
{
    /// <summary>The declared columns.</summary>
    public static readonly SheetPlan Plan = new("Checks", "operator", "The operator's own, stricter settings of checks.");

    private static readonly Column<string> Check = Plan.Add(ColumnKinds.Ident("Check", nameof(CheckSetting.Check), "Check id.", ColumnKinds.Starred));
    private static readonly Column<bool> On = Plan.Add(ColumnKinds.YesNo("On", nameof(CheckSetting.On), "Whether the check is on."));
    private static readonly Column<State> StateColumn = Plan.Add(ColumnKinds.Word(
        "State", nameof(CheckSetting.State), "State given to a finding of this check.",
        [("fail", State.Fail), ("caution", State.Caution), ("note", State.Note)]));
    private static readonly Column<string> Value =
        Plan.Add(ColumnKinds.Text("Value", nameof(CheckSetting.Value), "The operator's limit, in the check's own unit."));
    private static readonly Column<string> Reason = Plan.Add(ColumnKinds.Text("Reason", nameof(CheckSetting.Reason), "Why it is set so."));

    /// <summary>The settings in book order.</summary>
    /// <param name="shelf">All books.</param>
    /// <param name="fails">What of them could not be read.</param>
    public static ImmutableArray<CheckSetting> Read(Shelf shelf, out IReadOnlyList<Problem> fails)
    {
        var found = new List<Problem>();
        var settings = ImmutableArray.CreateBuilder<CheckSetting>();
        foreach (var row in shelf.Rows(Plan))
        {
            var setting = new CheckSetting
            {
                Check = row.NeededText(Check),
                On = row.Optional(On),
                State = row.Optional(StateColumn),
                Value = row.Text(Value),
                Reason = row.Text(Reason),
                Origin = row.Origin,
            };
            found.AddRange(row.Fails);
            if (!row.IsLost) settings.Add(setting);
        }

        fails = found;
        return settings.ToImmutable();
    }
}
