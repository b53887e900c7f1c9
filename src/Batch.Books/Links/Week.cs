using Batch.Books.Cells;
using Batch.Books.Headers;
using Batch.Books.Sheets;
using Batch.Flight.Fleet;
using Batch.Flight.Week;

namespace Batch.Books.Links;

/// <summary>Puts the week together: reads each sheet once what it refers to is read, then passes doubts on to the legs they touch.</summary>
internal static class Week
{
    /// <summary>No leg of these aircraft is longer.</summary>
    private static readonly Duration LongLeg = Duration.FromHours(8);

    /// <summary>The week the books hold.</summary>
    /// <param name="books">The books.</param>
    /// <param name="notRead">What stands beside them and is not read.</param>
    /// <exception cref="BookException">No book has a Legs sheet.</exception>
    public static OperatorWeek Of(ImmutableArray<RawBook> books, ImmutableArray<Problem> notRead)
    {
        var complaints = new Complaints();
        var shelf = new Shelf(books, complaints);
        if (!shelf.Has(LegsSheet.Plan)) throw new BookException(string.Join("; ", notRead.Select(problem => problem.Text).Prepend(NoLegs(books, shelf))));
        var strays = shelf.ComplainOfStrays(AllSheets.Plans, AllSheets.PassedOver);
        var settings = OperatorSheet.Read(shelf, out var settingFails);
        var types = Types(shelf);
        var airports = AirportsSheet.Read(shelf);
        var runways = RunwaysSheet.Read(shelf, airports);
        airports.Complete(airport => airport with { Runways = [.. runways[airport.Ident]] });
        var fleet = AircraftSheet.Read(shelf, types, airports);
        var fixes = FixesSheet.Read(shelf);
        var points = fixes.Select(fix => fix.Ident).Concat(airports.Names).ToHashSet(StringComparer.OrdinalIgnoreCase);
        var airways = AirwaysSheet.Read(shelf, points);
        var crew = CrewSheet.Read(shelf, types, airports);
        var logged = LoggedSheet.Read(shelf, crew);
        var reference = new Reference(types, fleet, airports, crew);
        var drafts = LegsSheet.Read(shelf, reference);
        var trips = new Trips(drafts);
        var manifest = ManifestSheet.Read(shelf, trips);
        var cargo = CargoSheet.Read(shelf, trips);
        if (manifest.IsEmpty) DoubtEmptyCharters(shelf, drafts, cargo);
        var subjects = points.Concat(airways.Keys).Concat(fleet.Names).ToHashSet(StringComparer.OrdinalIgnoreCase);
        var checks = ChecksSheet.Read(shelf, out var checkFails);
        var notices = NoticesSheet.Read(shelf, subjects, (subject, fails) => PassOnNotice(drafts, subject, fails));
        var winds = WindsSheet.Read(shelf, airports.Find, fixes.ToLookup(fix => fix.Ident, StringComparer.OrdinalIgnoreCase), points,
            (from, to, fails) => PassOnWind(drafts, from, to, fails));
        // What a sheet without a header row holds is missing from every leg; without winds the legs are planned in still air, which is said.
        Problem[] unread = [.. shelf.Unread.Select(one => one.Plan == WindsSheet.Plan ? one.Problem with { State = State.Caution } : one.Problem)];
        foreach (var draft in drafts)
        {
            PassOnDoubts(draft, reference);
            draft.Doubt(unread);
            draft.Doubt(settingFails);
            draft.Doubt(checkFails);
            draft.Doubt(strays);
        }

        var week = new OperatorWeek
        {
            Inputs = [.. books.Select(book => new InputBook(book.Name, book.Sha256))],
            Operator = settings,
            Types = types.Sorted(),
            Fleet = fleet.Sorted(),
            Airports = airports.Sorted(),
            Fixes = fixes,
            Airways = airways,
            Land = LandSheet.Read(shelf),
            AltitudeGrid = AltitudeGridSheet.Read(shelf),
            Crew = crew.Sorted(),
            Logged = logged,
            CheckSettings = checks,
            Legs = [.. drafts.Select(draft => draft.Whole).OfType<Leg>()],
            BrokenLegs = [.. drafts.Where(draft => draft.Whole is null).Select(draft => draft.Broken)],
            Manifest = manifest,
            Cargo = cargo,
            Winds = winds,
            Bulletins = BulletinsSheet.Read(shelf),
            Notices = notices,
        };
        shelf.RemarkOnOthers(AllSheets.Plans, AllSheets.PassedOver);
        return week with { Problems = notRead.AddRange(complaints.InOrder()) };
    }

    private static Register<AircraftType> Types(Shelf shelf)
    {
        var types = TypesSheet.Read(shelf);
        var stations = StationsSheet.Read(shelf, types);
        var fuelMoments = FuelArmsSheet.Read(shelf, types);
        var envelopes = EnvelopeSheet.Read(shelf, types);
        var tables = TableSheets.Read(shelf, types);
        types.Complete(type => type with
        {
            Stations = [.. stations[type.Name]],
            FuelMoments = [.. fuelMoments[type.Name]],
            Envelopes = [.. envelopes[type.Name]],
            Tables = tables(type.Name),
        });
        return types;
    }

    // What could not be read of an aircraft, its type, its airports or its pilots makes the leg's figures doubtful: a limit that is not known is not a limit
    // that holds.
    private static void PassOnDoubts(LegDraft draft, Reference reference)
    {
        if (draft.Leg is not { } leg) return;
        draft.Doubt(reference.Fleet.DoubtsOf(leg.Aircraft));
        if (reference.Fleet.Find(leg.Aircraft) is { } aircraft) draft.Doubt(reference.Types.DoubtsOf(aircraft.Type));
        foreach (var ident in new[] { leg.From, leg.To, leg.Alternate, leg.SecondAlternate }) draft.Doubt(reference.Airports.DoubtsOf(ident));
        draft.Doubt(reference.Crew.DoubtsOf(leg.Captain));
        draft.Doubt(reference.Crew.DoubtsOf(leg.SecondPilot));
    }

    // A week of charters in which nobody flies has more likely lost its sheet of passengers.
    private static void DoubtEmptyCharters(Shelf shelf, List<LegDraft> drafts, ImmutableArray<CargoLine> cargo)
    {
        bool IsFreight(LegKey key) => cargo.Any(line => line.Legs.Contains(key.Number)
            && string.Equals(line.Trip, key.Trip, StringComparison.OrdinalIgnoreCase));
        var empty = drafts.Where(draft => draft.Leg is { Purpose: LegPurpose.Charter } && !IsFreight(draft.Key)).ToArray();
        if (empty.Length == 0) return;
        var where = shelf.Has(ManifestSheet.Plan) ? "Manifest holds no passenger" : "no book has a sheet Manifest";
        var problem = shelf.Complaints.Add(empty[0].Row.Sheet.Place, State.Caution, $"{where}, so every charter is planned as empty",
            expected: "passengers in the sheet Manifest, or another purpose");
        foreach (var draft in empty) draft.Doubt([problem]);
    }

    // A notice of which a cell could not be read may close what the leg needs.
    private static void PassOnNotice(IEnumerable<LegDraft> drafts, string subject, IReadOnlyList<Problem> fails)
    {
        var word = subject.Split([' ', '/'], 2)[0];
        if (word.Length == 0) return;
        foreach (var draft in drafts.Where(draft => draft.Leg is { } leg && Touches(leg, word))) draft.Doubt(fails);
    }

    // A wind that could not be read may be the one that would decide: the legs of its time are planned without it, which is said.
    private static void PassOnWind(IEnumerable<LegDraft> drafts, Instant? from, Instant? to, IReadOnlyList<Problem> fails)
    {
        ImmutableArray<Problem> cautions = [.. fails.Select(
            fail => fail with { State = State.Caution, Text = $"A row of Winds could not be read, and the leg is planned without it: {fail.Text}" })];
        foreach (var draft in drafts.Where(draft => draft.Leg is { } leg && !(from > leg.OffBlocks + LongLeg) && !(to < leg.OffBlocks))) draft.Doubt(cautions);
    }

    private static bool Touches(Leg leg, string word) =>
        new[] { leg.From, leg.To, leg.Alternate, leg.SecondAlternate, leg.Aircraft }.Concat(leg.Route.Split(' ')).Concat(leg.BackupRoute.Split(' '))
            .Contains(word, StringComparer.OrdinalIgnoreCase);

    private static string NoLegs(ImmutableArray<RawBook> books, Shelf shelf)
    {
        var refusal = $"no book has a sheet Legs ({string.Join(", ", books.Select(book => book.Name))})";
        if (shelf.Strays(AllSheets.Plans, AllSheets.PassedOver).FirstOrDefault(stray => stray.Plan == LegsSheet.Plan) is { } stray)
            return $"{refusal}; {stray.Sheet.Place} has its columns: call that sheet Legs";
        var names = books.SelectMany(book => book.Sheets).Select(sheet => sheet.Name).ToArray();
        return refusal + ((HeaderText.Near("legs", names) ?? names.FirstOrDefault(name => name.Contains("leg", StringComparison.OrdinalIgnoreCase))) is { } near
            ? $"; is it the one called {near}? Then call it Legs"
            : "");
    }
}
