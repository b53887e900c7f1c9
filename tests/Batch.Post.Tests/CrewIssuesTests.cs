namespace Batch.Post.Tests;

/// <summary>What a person is to be told, by what the person was told before.</summary>
public sealed class CrewIssuesTests
{
    private static readonly LegFacts First = SomePost.Facts();
    private static readonly LegFacts Second = SomePost.Facts(leg: 2);

    [Fact]
    public void A_first_issue_has_revision_1_and_no_changes()
    {
        var issue = SomePost.Issue(SomePost.Week(First, Second), Ledger.Empty);
        Assert.True(issue.IsDue);
        Assert.Equal((1, 2), (issue.Revision, issue.Legs.Length));
        Assert.Empty(issue.Changes);
        Assert.All(issue.Legs, leg => Assert.Equal((0, 1), (leg.Sequence, leg.TripRevision)));
    }

    [Fact]
    public void Somebody_without_legs_is_told_nothing() => Assert.False(SomePost.Issue(SomePost.Week(First), Ledger.Empty, "SOR").IsDue);

    [Fact]
    public void What_is_unchanged_is_not_due_and_keeps_its_revision()
    {
        var issue = SomePost.Issue(SomePost.Week(First, Second), SomePost.Issued(SomePost.Week(First, Second)));
        Assert.False(issue.IsDue);
        Assert.Equal(1, issue.Revision);
        Assert.Empty(issue.Changes);
    }

    [Fact]
    public void A_change_is_due_in_words_and_raises_the_revision_and_the_sequence_of_that_leg_alone()
    {
        var later = First with { Passengers = 4, BlockFuelLb = 1320, OffBlocks = First.OffBlocks + Duration.FromMinutes(30) };
        var issue = SomePost.Issue(SomePost.Week(later, Second), SomePost.Issued(SomePost.Week(First, Second)));
        Assert.True(issue.IsDue);
        Assert.Equal(2, issue.Revision);
        Assert.Equal(["T101/1: off blocks 14:30 to 15:00, passengers 3 to 4, block fuel 1,240 to 1,320 lb."], issue.Changes.AsEnumerable());
        Assert.Equal([1, 0], issue.Legs.Select(leg => leg.Sequence));
        Assert.All(issue.Legs, leg => Assert.Equal(2, leg.TripRevision));
    }

    [Fact]
    public void Fuel_alone_leaves_the_calendar_as_it_is()
    {
        var issue = SomePost.Issue(SomePost.Week(First with { BlockFuelLb = 1320 }), SomePost.Issued(SomePost.Week(First)));
        Assert.True(issue.IsDue);
        Assert.Equal(0, Assert.Single(issue.Legs).Sequence);
    }

    [Fact]
    public void An_event_keeps_its_name_when_its_day_changes()
    {
        var before = Assert.Single(SomePost.Issue(SomePost.Week(First), Ledger.Empty).Legs);
        var moved = First with { OffBlocks = First.OffBlocks + Duration.FromDays(1), OnBlocks = First.OnBlocks + Duration.FromDays(1) };
        var after = Assert.Single(SomePost.Issue(SomePost.Week(moved), SomePost.Issued(SomePost.Week(First))).Legs);
        Assert.Equal((before.Uid, 1), (after.Uid, after.Sequence));
    }

    [Fact]
    public void A_leg_that_is_added_and_one_that_is_dropped_are_said()
    {
        var issue = SomePost.Issue(SomePost.Week(First, SomePost.Facts("T102", 2)), SomePost.Issued(SomePost.Week(First, Second)));
        Assert.Equal(["T102/2: added, Mon 7 Dec 18:30 XAND to XBEL, Q-HAA.", "T101/2: cancelled, was Mon 7 Dec 18:30 XAND to XBEL."],
            issue.Changes.AsEnumerable());
        Assert.Equal(("T101/2", 1), (Assert.Single(issue.Dropped).Facts.Key, issue.Dropped[0].Sequence));
    }

    [Fact]
    public void A_dropped_leg_is_cancelled_once_and_a_leg_that_comes_back_outranks_its_cancellation()
    {
        var both = SomePost.Week(First, Second);
        var dropped = SomePost.Issued(both, SomePost.Week(First, SomePost.Facts("T102", 2)));
        var later = SomePost.Issue(SomePost.Week(First, SomePost.Facts("T102", 2)), dropped);
        Assert.False(later.IsDue);
        Assert.Empty(later.Dropped);
        var back = SomePost.Issue(SomePost.Week(First, SomePost.Facts("T102", 2), Second), dropped);
        Assert.Equal(2, back.Legs.Single(leg => leg.Facts.Key == "T101/2").Sequence);
    }

    [Fact]
    public void A_leg_given_to_another_is_taken_from_the_first_and_told_to_the_second()
    {
        var ledger = SomePost.Issued(SomePost.Week(First, Second));
        var week = SomePost.Week(First, Second with { Captain = "SOR" });
        var first = SomePost.Issue(week, ledger);
        Assert.Equal(["T101/2: no longer yours, was Mon 7 Dec 18:30 XAND to XBEL."], first.Changes.AsEnumerable());
        Assert.Single(first.Dropped);
        var second = SomePost.Issue(week, ledger, "SOR");
        Assert.Equal((true, 1, 2), (second.IsDue, second.Revision, Assert.Single(second.Legs).TripRevision));
    }

    [Fact]
    public void Somebody_who_flies_no_more_and_left_the_crew_sheet_is_told_at_the_address_known()
    {
        var ledger = SomePost.Issued(SomePost.Week(First));
        var week = SomePost.Week(First with { Captain = "SOR" });
        var issue = SomePost.Issue(week with { Persons = [.. week.Persons.Where(person => person.Code != "RIM")] }, ledger);
        Assert.True(issue.IsDue);
        Assert.Equal("rima@harrow-sound.example", issue.Person.Mail);
        Assert.Empty(issue.Legs);
    }

    [Fact]
    public void The_order_of_the_legs_is_said_where_it_changes()
    {
        var other = SomePost.Facts("T102") with { OffBlocks = First.OffBlocks + Duration.FromHours(3), OnBlocks = First.OnBlocks + Duration.FromHours(3) };
        var earlier = other with { OffBlocks = First.OffBlocks - Duration.FromHours(3), OnBlocks = First.OnBlocks - Duration.FromHours(3) };
        var issue = SomePost.Issue(SomePost.Week(First, earlier), SomePost.Issued(SomePost.Week(First, other)));
        Assert.Contains("Order of your legs: T101/1, T102/1 to T102/1, T101/1.", issue.Changes);
    }

    [Fact]
    public void A_trip_that_fails_is_not_told_and_a_reason_releases_it()
    {
        var failing = First with { State = "fail", Failing = "FUEL-03" };
        var held = SomePost.Issue(SomePost.Week(failing, Second, SomePost.Facts("T102")), Ledger.Empty);
        Assert.Equal(["T102/1"], held.Legs.Select(leg => leg.Facts.Key));
        Assert.Equal(["T101: Leg 1 fails FUEL-03."], held.Held.AsEnumerable());
        var released = SomePost.Issue(SomePost.Week(failing with { Override = "agreed" }, Second), Ledger.Empty);
        Assert.Equal(2, released.Legs.Length);
        Assert.Empty(released.Held);
    }

    [Fact]
    public void A_trip_that_is_held_back_says_in_words_why()
    {
        var failing = SomePost.Leg(First with { State = "fail", Failing = "FUEL-03" }) with { Trouble = "Fuel aboard is 1,100 lb, 365 lb short." };
        Assert.Equal(["T101: Leg 1 fails FUEL-03: Fuel aboard is 1,100 lb, 365 lb short."],
            SomePost.Issue(SomePost.Week(failing), Ledger.Empty).Held.AsEnumerable());
    }

    [Fact]
    public void A_leg_whose_number_could_not_be_read_is_not_called_leg_0()
    {
        var issue = SomePost.Issue(SomePost.Week(SomePost.Leg(SomePost.Facts("T102")), SomePost.Unplanned("T101", 0)), Ledger.Empty);
        Assert.Equal(["T101: A leg whose number could not be read could not be planned: The route element NORRO is not known."], issue.Held.AsEnumerable());
    }

    [Fact]
    public void A_leg_whose_number_could_not_be_read_is_named_by_its_row()
    {
        var week = SomePost.Week(SomePost.Leg(First), SomePost.Unplanned("T101", 0) with { Row = 5 });
        Assert.Equal(["T101: The leg in row 5 could not be planned: The route element NORRO is not known."],
            SomePost.Issue(week, Ledger.Empty).Held.AsEnumerable());
        Assert.Equal(
            ["T101, row 5: cannot be planned now. The route element NORRO is not known."],
            Assert.Single(TripRevisions.Of(week, SomePost.Issued(SomePost.Week(First)))).Changes.AsEnumerable());
        Assert.Equal("row 9", (SomePost.Unplanned("row 9", 0) with { Row = 9 }).Key);
        Assert.Equal("row 9/2", SomePost.Unplanned("row 9", 2).Key);
    }

    [Fact]
    public void A_reason_without_a_full_stop_gets_one()
    {
        const string Run = """{"madeAt":"2026-12-03T16:00:00Z","operator":"","operatorMail":"","wholeWeek":true,"crew":[],"legs":[{"trip":"T101","leg":0,"row":5,"captain":"RIM","state":"unplanned","why":"Leg is not a number"}]}""";
        using var json = System.Text.Json.JsonDocument.Parse(Run);
        Assert.Equal(["T101: The leg in row 5 could not be planned: Leg is not a number."],
            SomePost.Issue(WeekRecord.Of(json.RootElement), Ledger.Empty).Held.AsEnumerable());
    }

    [Fact]
    public void With_nothing_but_held_trips_nothing_is_due()
    {
        var issue = SomePost.Issue(SomePost.Week(First with { State = "fail", Failing = "FUEL-03" }), Ledger.Empty);
        Assert.False(issue.IsDue);
        Assert.NotEmpty(issue.Held);
    }

    [Fact]
    public void A_trip_told_before_that_fails_now_is_said_once_to_be_held_back_and_said_again_when_released()
    {
        var failing = SomePost.Week(First with { State = "fail", Failing = "FUEL-03", BlockFuelLb = 900 });
        var held = SomePost.Issue(failing, SomePost.Issued(SomePost.Week(First)));
        Assert.Equal(["T101: held back. Leg 1 fails FUEL-03. Do not fly it by the sheet that you hold."], held.Changes.AsEnumerable());
        Assert.True(Assert.Single(held.Legs).IsHeld);
        var ledger = SomePost.Issued(SomePost.Week(First), failing);
        Assert.False(SomePost.Issue(failing, ledger).IsDue);
        var released = SomePost.Issue(SomePost.Week(First with { BlockFuelLb = 1300 }), ledger);
        Assert.Equal(["T101/1: no longer held back, block fuel 1,240 to 1,300 lb."], released.Changes.AsEnumerable());
        Assert.Equal(3, released.Revision);
    }

    [Fact]
    public void A_trip_of_several_legs_is_said_once_to_be_held_back()
    {
        var held = SomePost.Issue(SomePost.Week(First with { State = "fail", Failing = "FUEL-03" }, Second), SomePost.Issued(SomePost.Week(First, Second)));
        Assert.Equal(["T101: held back. Leg 1 fails FUEL-03. Do not fly it by the sheet that you hold."], held.Changes.AsEnumerable());
        Assert.Equal(2, held.Legs.Count(leg => leg.IsHeld));
    }

    [Fact]
    public void A_leg_that_cannot_be_planned_any_more_is_held_not_cancelled()
    {
        var issue = SomePost.Issue(SomePost.Week(SomePost.Unplanned("T101", 1, captain: "")), SomePost.Issued(SomePost.Week(First)));
        Assert.Empty(issue.Dropped);
        Assert.Equal(["T101: held back. Leg 1 could not be planned: The route element NORRO is not known. Do not fly it by the sheet that you hold."],
            issue.Changes.AsEnumerable());
    }

    [Fact]
    public void Nothing_is_cancelled_while_a_row_without_a_name_could_be_it()
    {
        var issue = SomePost.Issue(SomePost.Week(SomePost.Leg(First), SomePost.Unplanned("row 17", 0, "")), SomePost.Issued(SomePost.Week(First, Second)));
        Assert.False(issue.IsDue);
        Assert.Contains("a row there could not be read", Assert.Single(issue.Doubts), StringComparison.Ordinal);
    }

    [Fact]
    public void Legs_of_days_that_the_run_does_not_speak_of_stand_until_they_are_cancelled_by_name()
    {
        var next = SomePost.Facts("T201") with { OffBlocks = First.OffBlocks + Duration.FromDays(7), OnBlocks = First.OnBlocks + Duration.FromDays(7) };
        var ledger = SomePost.Issued(SomePost.Week(First));
        var issue = SomePost.Issue(SomePost.Week(next), ledger);
        Assert.Equal(["T201/1: added, Mon 14 Dec 14:30 XAND to XBEL, Q-HAA."], issue.Changes.AsEnumerable());
        Assert.Contains("--cancel T101", Assert.Single(issue.Doubts), StringComparison.Ordinal);
        var cancelled = SomePost.Issue(SomePost.Week(next), ledger, "RIM", "t101");
        Assert.Equal("T101/1", Assert.Single(cancelled.Dropped).Facts.Key);
        Assert.Empty(cancelled.Doubts);
    }

    [Fact]
    public void A_run_of_some_trips_takes_nothing_back()
    {
        var issue = SomePost.Issue(SomePost.Week(First) with { IsWhole = false }, SomePost.Issued(SomePost.Week(First, Second)));
        Assert.False(issue.IsDue);
        Assert.Equal(2, issue.Legs.Length);
    }

    [Fact]
    public void Legs_already_flown_are_forgotten_and_their_names_may_be_used_again()
    {
        var ledger = SomePost.Issued(SomePost.Week(First));
        var after = First with { OffBlocks = First.OffBlocks + Duration.FromDays(7), OnBlocks = First.OnBlocks + Duration.FromDays(7) };
        var issue = SomePost.Issue(SomePost.Week(after) with { MadeAt = First.OnBlocks + Duration.FromDays(3) }, ledger);
        Assert.Empty(issue.Dropped);
        Assert.NotEqual(Assert.Single(ledger.Packets).Legs[0].Uid, Assert.Single(issue.Legs).Uid);
        Assert.Equal(1, issue.Legs[0].TripRevision);
    }

    [Fact]
    public void A_changed_report_time_is_said()
    {
        static WeekRecord At(Instant report) => SomePost.Week(First) with
        {
            Persons = [new PersonRecord { Code = "RIM", Mail = "rima@harrow-sound.example",
            Reports = ImmutableDictionary<string, Instant>.Empty.Add("T101/1", report) }]
        };
        var issue = SomePost.Issue(At(Instant.FromUtc(2026, 12, 7, 18, 0)), SomePost.Issued(At(Instant.FromUtc(2026, 12, 7, 18, 30))));
        Assert.Equal(["T101/1: report Mon 7 Dec 13:30 to Mon 7 Dec 13:00."], issue.Changes.AsEnumerable());
        Assert.Equal(1, issue.Legs[0].Sequence);
    }

    [Fact]
    public void A_packet_of_unknown_fate_keeps_number_and_name_while_it_says_the_same_and_gives_both_up_when_it_does_not()
    {
        using var folder = new TemporaryFolder();
        var issue = SomePost.Issue(SomePost.Week(First), Ledger.Empty);
        using (var pen = LedgerPen.Open(folder.File("issued.jsonl"), SystemClock.Instance))
        {
            pen.Begin(SomePost.Packet(issue, SomePost.MadeAt));
            pen.HandOver(SomePost.Packet(issue, SomePost.MadeAt).MessageId);
        }

        var ledger = Ledger.Read(folder.File("issued.jsonl"));
        Assert.Equal(issue.Fingerprint, SomePost.Issue(SomePost.Week(First), ledger).Fingerprint);
        var changed = SomePost.Issue(SomePost.Week(First with { Passengers = 4 }), ledger);
        Assert.Equal((2, 1), (changed.Revision, Assert.Single(changed.Legs).Sequence));
    }

    [Fact]
    public void What_a_packet_replaces_is_what_the_person_surely_has_and_what_may_have_arrived()
    {
        using var folder = new TemporaryFolder();
        var second = SomePost.Week(First with { Passengers = 4 });
        var ledger = Unheard(folder, SomePost.Week(First), second);
        var third = SomePost.Issue(SomePost.Week(First with { Passengers = 5 }), ledger);
        Assert.Equal((3, 1), (third.Revision, third.Since?.Revision));
        Assert.Equal([2], third.Unsure.AsEnumerable());
        Assert.Equal(["T101/1: passengers 3 to 5."], third.Changes.AsEnumerable());
        var again = SomePost.Issue(second, ledger);
        Assert.Equal((2, 0), (again.Revision, again.Unsure.Length));
        Assert.Equal(ledger.Packets[^1].Fingerprint, again.Fingerprint);
    }

    [Fact]
    public void A_change_taken_back_is_told_to_whom_it_may_have_reached()
    {
        using var folder = new TemporaryFolder();
        var ledger = Unheard(folder, SomePost.Week(First), SomePost.Week(First with { Passengers = 4 }, Second));
        var back = SomePost.Issue(SomePost.Week(First, SomePost.Facts("T102", 2) with { Captain = "SOR" }), ledger);
        Assert.True(back.IsDue);
        Assert.Equal((3, "T101/2"), (back.Revision, Assert.Single(back.Dropped).Facts.Key));
        Assert.Equal(["T101/2: cancelled, was Mon 7 Dec 18:30 XAND to XBEL, in case revision 2 reached you."], back.Changes.AsEnumerable());
        var same = Unheard(folder, SomePost.Week(First), SomePost.Week(First with { Passengers = 4 }));
        var fewer = SomePost.Issue(SomePost.Week(First), same);
        Assert.Equal(["Revision 2 may have reached you; it does not hold."], fewer.Changes.AsEnumerable());
        Assert.Equal(3, fewer.Revision);
    }

    [Fact]
    public void A_first_packet_that_may_have_arrived_is_taken_back_where_nothing_is_left()
    {
        using var folder = new TemporaryFolder();
        var issue = SomePost.Issue(SomePost.Week(First with { Captain = "SOR" }), Unheard(folder, null, SomePost.Week(First)));
        Assert.True(issue.IsDue);
        Assert.Equal((2, 1), (issue.Revision, issue.Dropped.Length));
        Assert.Contains("in case revision 1 reached you", Assert.Single(issue.Changes), StringComparison.Ordinal);
    }

    [Fact]
    public void The_number_of_a_trip_that_may_have_reached_somebody_is_not_given_to_another_content()
    {
        using var folder = new TemporaryFolder();
        var second = First with { Passengers = 4 };
        var ledger = Unheard(folder, SomePost.Week(First), SomePost.Week(second));
        Assert.Equal((2, 1), Numbers(TripRevisions.Of(SomePost.Week(second), ledger)));
        Assert.Equal((3, 1), Numbers(TripRevisions.Of(SomePost.Week(second with { Passengers = 5 }), ledger)));
        Assert.Equal((1, 1), Numbers(TripRevisions.Of(SomePost.Week(First), ledger)));

        static (int, int?) Numbers(ImmutableArray<TripRevision> trips) => (Assert.Single(trips).Number, trips[0].Issued);
    }

    [Fact]
    public void A_calendar_event_names_its_place()
    {
        var week = SomePost.Week(First);
        var named = week with { Legs = [.. week.Legs.Select(leg => leg with { FromName = "Andrel City" })] };
        Assert.Equal("Andrel City (XAND)", CalendarEvents.Of(Assert.Single(SomePost.Issue(named, Ledger.Empty).Legs), "RIM").Location);
        Assert.Equal("XAND", CalendarEvents.Of(Assert.Single(SomePost.Issue(week, Ledger.Empty).Legs), "RIM").Location);
    }

    // A ledger in which RIM surely has a first packet and may have a second.
    private static Ledger Unheard(TemporaryFolder folder, WeekRecord? first, WeekRecord second)
    {
        var path = folder.File(Guid.NewGuid() + ".jsonl");
        using (var pen = LedgerPen.Open(path, SystemClock.Instance))
        {
            if (first is not null)
            {
                var sure = SomePost.Packet(SomePost.Issue(first, Ledger.Empty), SomePost.MadeAt);
                pen.Begin(sure);
                pen.HandOver(sure.MessageId);
                pen.Issue(sure.MessageId, "taken");
            }
        }

        using (var pen = LedgerPen.Open(path, SystemClock.Instance))
        {
            var open = SomePost.Packet(SomePost.Issue(second, pen.Ledger), SomePost.MadeAt);
            pen.Begin(open);
            pen.HandOver(open.MessageId);
        }

        return Ledger.Read(path);
    }

    [Fact]
    public void Trips_carry_their_revision_and_changes_for_the_sheet()
    {
        var ledger = SomePost.Issued(SomePost.Week(First, Second));
        var same = Assert.Single(TripRevisions.Of(SomePost.Week(First, Second), ledger));
        Assert.Equal((1, 1), (same.Number, same.Issued));
        Assert.Empty(same.Changes);
        var changed = Assert.Single(TripRevisions.Of(SomePost.Week(First with { State = "fail", Failing = "FUEL-03" }), ledger));
        Assert.Equal((2, 1), (changed.Number, changed.Issued));
        Assert.Equal(["T101/1: state pass to fail (FUEL-03).", "T101/2: cancelled, was Mon 7 Dec 18:30 XAND to XBEL."], changed.Changes.AsEnumerable());
        Assert.Equal(1, Assert.Single(TripRevisions.Of(SomePost.Week(First), Ledger.Empty)).Number);
    }

    [Fact]
    public void The_calendar_file_holds_the_legs_and_the_cancelled_ones()
    {
        var week = SomePost.Week(First, SomePost.Facts("T102", 2));
        var issue = SomePost.Issue(week, SomePost.Issued(SomePost.Week(First, Second)));
        var file = System.Text.Encoding.UTF8.GetString(CalendarEvents.File(week, issue));
        Assert.Equal(3, Ical.Net.Calendar.Load(file)!.Events.Count);
        var cancelled = Assert.Single(Ical.Net.Calendar.Load(System.Text.Encoding.UTF8.GetString(CalendarEvents.Cancellation(week, issue)!))!.Events);
        Assert.Equal(("T101-2-2026-12-07-RIM@harrow-sound.example", "CANCELLED", 1), (cancelled.Uid, cancelled.Status, cancelled.Sequence));
        Assert.Null(CalendarEvents.Cancellation(week, SomePost.Issue(week, Ledger.Empty)));
    }
}
