using Batch.Checks;

namespace Batch.Sheets.Tests;

public class MailBodyTests
{
    private static readonly SheetRenderer Renderer = new(TemplateFolder.Shipped);

    private static readonly CrewLetter Ana = CrewLetters.Of(SampleWeek.Made, SampleWeek.Facts)
        .Single(letter => letter.Code == "ANA") with
    { Attachments = ["packet-ANA.pdf", "flights-ANA.ics"] };

    private static readonly CrewLetter Second = Ana with
    {
        Revision = 2,
        Since = 1,
        Changes = ["T101/1: off blocks 14:00Z to 14:30Z.", "T102/1: block fuel 1,240 to 1,320 lb."],
        Legs = [.. Ana.Legs.Select(leg => leg.State == LegState.Fail ? leg with { OverrideReason = "Chief pilot <released> it by phone" } : leg)],
    };

    private static RenderedMail Mail(CrewLetter letter, SheetRenderer? renderer = null)
    {
        var mail = MailBody.Render(renderer ?? Renderer, letter);
        Assert.Empty(mail.Problems);
        return mail;
    }

    private static SheetRenderer With(string name, string text) => new(TemplateFolder.With(new Dictionary<string, string> { [name] = text }));

    [Fact]
    public void The_first_issue_is_the_one_that_was_looked_through()
    {
        var mail = Mail(Ana);
        Golden.Matches("mail.html", mail.Html);
        Golden.Matches("mail.txt", mail.Subject + "\n\n" + mail.Text);
    }

    [Fact]
    public void A_later_issue_is_the_one_that_was_looked_through()
    {
        var mail = Mail(Second);
        Golden.Matches("mail-2.html", mail.Html);
        Golden.Matches("mail-2.txt", mail.Subject + "\n\n" + mail.Text);
    }

    [Fact]
    public void Changes_and_the_revision_stand_in_subject_and_bodies_of_a_later_issue_alone()
    {
        var (first, second) = (Mail(Ana), Mail(Second));
        Assert.Contains("revision 2", second.Subject, StringComparison.Ordinal);
        Assert.DoesNotContain("revision", first.Subject, StringComparison.Ordinal);
        Assert.All([second.Html, second.Text], body => Assert.All(Second.Changes, change => Assert.Contains(change, body, StringComparison.Ordinal)));
        Assert.All([first.Html, first.Text], body => Assert.DoesNotContain("since revision", body, StringComparison.OrdinalIgnoreCase));
    }

    [Theory]
    [InlineData(2, 1, "", "It replaces revision 1.", "since revision 1")]
    [InlineData(3, 1, "2", "It replaces revision 1, and revision 2 should you have it.", "since revision 1")]
    [InlineData(2, null, "1", "It replaces revision 1 should you have it.", "changes")]
    [InlineData(2, 2, "", "this is your packet once more, revision 2.", "since revision 2")]
    public void What_it_replaces_is_what_the_person_has_or_may_have(int revision, int? since, string unsure, string said, string heading)
    {
        var mail = Mail(Second with { Revision = revision, Since = since, Unsure = [.. unsure.Where(char.IsDigit).Select(digit => digit - '0')] });
        Assert.All([mail.Html, mail.Text], body => Assert.Contains(said, body, StringComparison.Ordinal));
        Assert.All([mail.Html, mail.Text], body => Assert.Contains(heading, body, StringComparison.OrdinalIgnoreCase));
    }

    [Fact]
    public void A_leg_that_fails_says_why_it_is_sent_all_the_same()
    {
        var mail = Mail(Second);
        Assert.Contains("because: Chief pilot <released> it by phone", mail.Text, StringComparison.Ordinal);
        Assert.Contains("Chief pilot &lt;released&gt; it by phone", mail.Html, StringComparison.Ordinal);
    }

    [Fact]
    public void A_leg_that_fails_without_such_a_reason_is_not_to_be_accepted() =>
        Assert.All([Mail(Ana).Html, Mail(Ana).Text], body => Assert.Contains("Do not accept this leg", body, StringComparison.Ordinal));

    [Fact]
    public void Every_leg_stands_in_both_bodies_with_utc_and_local_time()
    {
        var mail = Mail(Ana);
        Assert.All(["T101/1", "T101/2", "T102/1", "T103/1", "row 17"],
            key => Assert.All([mail.Html, mail.Text], body => Assert.Contains(key, body, StringComparison.Ordinal)));
        Assert.Contains("14:30Z (Mon 7 Dec 09:30 EST)", mail.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Someone_whose_legs_are_gone_is_told_so()
    {
        var mail = Mail(Ana with { Legs = [], Revision = 3, Changes = ["T101 is cancelled."] });
        Assert.StartsWith("No flights left", mail.Subject, StringComparison.Ordinal);
        Assert.All([mail.Html, mail.Text], body => Assert.Contains("what was issued before is cancelled", body, StringComparison.Ordinal));
    }

    [Fact]
    public void A_cell_adds_no_line_to_subject_or_text()
    {
        var mail = Mail(Ana with { Operator = "Skerry\r\nBcc: all@skerry.example", Name = "Ana\nSubject: other" });
        Assert.DoesNotContain('\n', mail.Subject);
        Assert.DoesNotContain('\r', mail.Subject + mail.Text);
        Assert.DoesNotContain(mail.Text.Split('\n'),
            line => line.StartsWith("Bcc", StringComparison.Ordinal) || line.StartsWith("Subject", StringComparison.Ordinal));
    }

    [Fact]
    public void Nobody_else_is_named() => Assert.All([Mail(Ana).Html, Mail(Ana).Text],
        body => Assert.All(["Orlo", "Mia", "Olaf", "Voss"], name => Assert.DoesNotContain(name, body, StringComparison.Ordinal)));

    [Fact]
    public void A_text_template_without_a_subject_is_named()
    {
        var mail = MailBody.Render(With("mail.txt", "Dear {{ person.name }},"), Ana);
        Assert.False(mail.IsRendered);
        Assert.StartsWith("mail.txt(1,1): The first line must give the subject", Assert.Single(mail.Problems).ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_picture_in_a_text_template_is_named() =>
        Assert.Contains("A picture cannot stand in a text.",
            Assert.Single(MailBody.Render(With("mail.txt", "Subject: x\n{{ state.mark }}"), Ana).Problems).ToString(), StringComparison.Ordinal);

    [Fact]
    public void The_letters_hold_every_person_with_legs_in_order_of_time()
    {
        var letters = CrewLetters.Of(SampleWeek.Made, SampleWeek.Facts);
        Assert.Equal(["ANA", "BEN"], letters.Select(letter => letter.Code));
        Assert.Equal(["T101/1", "T101/2", "T102/1", "T103/1", "row 17"], letters[0].Legs.Select(leg => leg.Key));
        Assert.All(letters[0].Legs, leg => Assert.True(leg.IsCaptain));
        Assert.All(letters[1].Legs, leg => Assert.False(leg.IsCaptain));
        Assert.Equal(("Skerry Air & Sons", "ops@skerry.example", "ana@skerry.example", "Ana Quist"),
            (letters[0].Operator, letters[0].Contact, letters[0].Mail, letters[0].Name));
        Assert.Equal(["America/New_York", "Atlantic/Azores"], [letters[0].Legs[3].FromZone.Id, letters[0].Legs[1].FromZone.Id]);
    }
}
