using Batch.Books.Headers;
using Batch.Books.Units;
using Batch.Flight.Fleet;
using Batch.Flight.Week;

namespace Batch.Books.Sheets;

/// <summary>The Operator sheet: one item a row.</summary>
internal static class OperatorSheet
{
    private const int AnyBook = -1;

    /// <summary>The declared columns and items.</summary>
    public static readonly SheetPlan Plan = new("Operator", "operator", "The operator's own settings, one item a row.");

    private static readonly Column<string> Item = Plan.Add(ColumnKinds.Text("Item", "Item", "What is set.", ColumnKinds.Starred));
    private static readonly Column<string> Value =
        Plan.Add(ColumnKinds.Text("Value", "Value", "Its value; a unit may stand behind a number or in the item's name.", ColumnKinds.Starred));

    private static readonly Column<string> Name =
        Plan.AddItem(ColumnKinds.Text("Name", nameof(Operator.Name), "Name of the operator.", false, "Operator", "Operator name"));
    private static readonly Column<string> HomeBase =
        Plan.AddItem(ColumnKinds.Ident("Home base", nameof(Operator.HomeBase), "Ident of the home base.", false, "Base"));
    private static readonly Column<string> RuleSet = Plan.AddItem(ColumnKinds.Word(
        "Rule set",
        nameof(Operator.RuleSet),
        "The rules that the legs are checked against.",
        [("us-charter", "us-charter"), ("us-general", "us-general"), ("icao-annex-6", "icao-annex-6"), ("eu-commercial", "eu-commercial")]));

    private static readonly Column<double> Report =
        Minutes("Report", nameof(Operator.Report), "Time from report to the first off blocks of a duty.", "Report time");
    private static readonly Column<double> Release =
        Minutes("Release", nameof(Operator.Release), "Time from the last on blocks of a duty to release.", "Release time");
    private static readonly Column<double> Turnaround =
        Minutes("Turnaround", nameof(Operator.Turnaround), "Least time between on blocks and the next off blocks of an aircraft.", "Turnaround time");
    private static readonly Column<double> TaxiOut = Minutes("Taxi out", nameof(Operator.TaxiOut), "Usual time from off blocks to takeoff.");
    private static readonly Column<double> TaxiIn = Minutes("Taxi in", nameof(Operator.TaxiIn), "Usual time from landing to on blocks.");
    private static readonly Column<double> Contingency = Plan.AddItem(ColumnKinds.NotNegative(Quantity.Percent, "Contingency", nameof(Operator.Contingency),
        "Contingency fuel as a percentage of trip fuel.", false, "Contingency fuel"));
    private static readonly Column<double> LandingFuel =
        Minutes("Least landing fuel", nameof(Operator.LandingFuel), "Least fuel on landing, as time.", "Minimum landing fuel");
    private static readonly Column<double> UpliftRounding = Weight("Uplift rounding", nameof(Operator.UpliftRounding), "Amount to which uplift is rounded up.");
    private static readonly Column<bool> OutsideTables = Plan.AddItem(ColumnKinds.Word(
        "Outside tables", nameof(Operator.MayUseTableEdge), "What to do outside a performance table: stop, or take the value at its edge and say so.",
        [("stop", false), ("edge", true)]));

    private static readonly ImmutableArray<(string Category, Column<double> Item)> Standard =
    [
        .. new[] { "adult", "man", "woman", "child", "infant", "pilot", "bag" }.Select(category =>
            (category, Weight(char.ToUpperInvariant(category[0]) + category[1..] + " weight", nameof(Operator.StandardWeights),
                $"Standard weight of one {category} where none is stated.", "Standard weight " + category))),
    ];

    private static readonly Column<string> PassengerWeights = Plan.AddItem(ColumnKinds.Word(
        "Passenger weights", nameof(Operator.PassengerWeights),
        "What the weights of the Manifest are where its row does not say: stated, with allowances (for clothing and hand baggage), or weighed.",
        ManifestSheet.WeightBases));

    private static readonly Column<string> VorCheck = Plan.AddItem(ColumnKinds.Word(
        "VOR check", nameof(Operator.VorCheck),
        "How the VOR receivers are kept: by an approved procedure of maintenance, or by a check within 30 days (the column VOR checked on of the Aircraft sheet).",
        [("approved procedure", "approved procedure"), ("30 days", "30 days")]));

    private static readonly Column<ImmutableArray<string>> WeatherSources =
        Plan.AddItem(ColumnKinds.List("Weather sources", nameof(Operator.WeatherSources), "Weather sources that the operator may use, with commas."));
    private static readonly Column<string> FlightFollowing = Plan.AddItem(ColumnKinds.Word(
        "Flight following", nameof(Operator.FlightFollowing), "How flights are followed where the leg does not say.",
        [("filed", "filed"), ("company", "company"), ("none", "none")]));

    private static readonly Column<ImmutableArray<string>> BriefingTopics = Plan.AddItem(ColumnKinds.List(
        "Briefing topics", nameof(Operator.BriefingTopics),
        "Topics of the briefing of passengers, with commas: smoking, belts, seat backs, doors, survival equipment, extinguishers, ditching, oxygen, assistance."));

    private static readonly Column<string> Contact = Plan.AddItem(ColumnKinds.Text("Contact", nameof(Operator.Contact), "Contact line for the sheets."));
    private static readonly Column<string> MailFrom = Plan.AddItem(ColumnKinds.Text("Mail from", nameof(Operator.MailFrom), "Sender address of mail."));
    private static readonly Column<string> Language =
        Plan.AddItem(ColumnKinds.Text("Sheet language", nameof(Operator.Language), "Language of the sheets: en, or de together with the weight unit kg; for another make templates of your own.", false, "Language"));
    private static readonly Column<string> Currency = Plan.AddItem(ColumnKinds.Text("Currency", nameof(Operator.Currency), "Currency of fuel prices."));

    private static readonly Column<string> OwnScenario = Plan.AddItem(ColumnKinds.Text(
        ScenarioItems.Example,
        nameof(Operator.Scenarios),
        "A scenario of your own for check --stress, under a name of your own: degrees warmer, knots more headwind, per cent heavier persons, minutes later; as many rows as you like."));

    private static readonly ImmutableArray<(UnitRole Role, Quantity Quantity, Column<string> Item)> Units =
    [
        Unit("Weight unit", UnitRole.Weight, Quantity.Weight,
            " What the program shows you, such as findings, board, sheets and mail, is in this unit too, lb where none is given."),
        Unit("Fuel unit", UnitRole.Fuel, Quantity.Fuel),
        Unit("Distance unit", UnitRole.Distance, Quantity.Distance),
        Unit("Runway unit", UnitRole.Runway, Quantity.RunwayLength), Unit("Altitude unit", UnitRole.Altitude, Quantity.Altitude),
        Unit("Temperature unit", UnitRole.Temperature, Quantity.Temperature), Unit("Speed unit", UnitRole.Speed, Quantity.Speed),
    ];

    /// <summary>Reads the items of all books. Sets the default units of each book on the shelf first, since weights among the items follow them.</summary>
    /// <param name="shelf">All books.</param>
    /// <param name="fails">What of it could not be read.</param>
    public static Operator Read(Shelf shelf, out IReadOnlyList<Problem> fails)
    {
        var known = new Dictionary<string, Column>(StringComparer.Ordinal);
        foreach (var item in Plan.Items)
        {
            known.TryAdd(HeaderText.Plain(item.Name), item);
            foreach (var alias in item.Aliases) known.TryAdd(HeaderText.Plain(alias), item);
        }

        var read = new ItemRows(known);
        var scenarios = ImmutableArray.CreateBuilder<Scenario>();
        foreach (var row in shelf.Rows(Plan))
        {
            if (ScenarioItems.NameOf(row.Raw(Item).Text) is { } name)
            {
                if (ScenarioItems.Read(row, name, Item, Value, scenarios) is { } scenario) scenarios.Add(scenario);
                read.Note(row, Item, Value);
            }
            else
            {
                read.Take(row, Item, Value);
            }
        }

        shelf.Defaults = Defaults(read);
        var settings = new Operator
        {
            Name = read.Text(Name),
            HomeBase = read.Text(HomeBase),
            RuleSet = read.Text(RuleSet),
            Report = Span(read.Number(Report)),
            Release = Span(read.Number(Release)),
            Turnaround = Span(read.Number(Turnaround)),
            TaxiOut = Span(read.Number(TaxiOut)),
            TaxiIn = Span(read.Number(TaxiIn)),
            Contingency = read.Number(Contingency) / 100,
            LandingFuel = Span(read.Number(LandingFuel)),
            UpliftRounding = Pounds(read, UpliftRounding, shelf),
            MayUseTableEdge = read.Value(OutsideTables, UnitDefaults.None) ?? false,
            StandardWeights = Standard
                .Select(pair => (pair.Category, Weight: Pounds(read, pair.Item, shelf)))
                .Where(pair => pair.Weight is not null)
                .ToImmutableSortedDictionary(pair => pair.Category, pair => pair.Weight.GetValueOrDefault(), StringComparer.OrdinalIgnoreCase),
            PassengerWeights = read.Text(PassengerWeights),
            VorCheck = read.Text(VorCheck),
            WeatherSources = read.List(WeatherSources),
            FlightFollowing = read.Text(FlightFollowing),
            BriefingTopics = read.List(BriefingTopics),
            Contact = read.Text(Contact),
            MailFrom = read.Text(MailFrom),
            Language = read.Text(Language),
            WeightUnit = Shown(shelf.Defaults(AnyBook)),
            Currency = read.Text(Currency),
            Scenarios = scenarios.ToImmutable(),
            Items = read.Items(),
            Cells = read.Cells(),
        };
        foreach (var (category, item) in Standard)
        {
            if (settings.StandardWeights.TryGetValue(category, out var weight) && Plausible.Standard(item.Name, category, weight) is { } doubt)
                read.Doubt(item, doubt, "a weight with its unit, such as 190 lb or 86 kg");
        }

        fails = [.. read.Fails];
        return settings;
    }

    // A weight has one of two units.
    private static WeightUnit Shown(UnitDefaults all) =>
        all.Of(Quantity.Weight).Factor.Equals(Quantity.Weight.Kept.Factor) ? WeightUnit.Pounds : WeightUnit.Kilograms;

    private static Pounds? Pounds(ItemRows read, Column<double> item, Shelf shelf) =>
        read.Value(item, shelf.Defaults(read.BookOf(item))) is { } weight ? new Pounds(weight) : null;

    private static Func<int, UnitDefaults> Defaults(ItemRows read)
    {
        var byBook = new Dictionary<int, UnitDefaults>();
        var all = UnitDefaults.None;
        foreach (var (role, quantity, item) in Units)
        {
            foreach (var (book, word) in read.UnitWords(item, quantity))
            {
                var own = new UnitDefaults(ImmutableDictionary<UnitRole, string>.Empty.Add(role, word));
                byBook[book] = byBook.GetValueOrDefault(book, UnitDefaults.None).Or(own);
                all = all.Or(own);
            }
        }

        return book => byBook.GetValueOrDefault(book, UnitDefaults.None).Or(all);
    }

    private static Duration? Span(double? minutes) => minutes is { } value ? Spans.OfMinutes(value) : null;

    private static Column<double> Minutes(string name, string field, string meaning, params string[] aliases) =>
        Plan.AddItem(ColumnKinds.Span(Quantity.Minutes, name, field, meaning, false, aliases));

    private static Column<double> Weight(string name, string field, string meaning, params string[] aliases) =>
        Plan.AddItem(ColumnKinds.AboveZero(Quantity.Weight, name, field, meaning, false, aliases));

    private static (UnitRole Role, Quantity Quantity, Column<string> Item) Unit(string name, UnitRole role, Quantity quantity, string more = "") =>
        (role, quantity, Plan.AddItem(ColumnKinds.Text(name, name, $"Unit of {quantity.Name} where a header names none: {quantity.KnownUnits}.{more}")));
}
