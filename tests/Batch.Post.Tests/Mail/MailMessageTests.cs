using System.Text;
using MimeKit;

namespace Batch.Post.Tests.Mail;

/// <summary>Letters as bytes, read back.</summary>
public sealed class MailMessageTests
{
    [Fact]
    public void Text_HTML_and_files_come_back_as_they_were()
    {
        var pdf = SomeLetter.Noise(200_000);
        var calendar = Encoding.UTF8.GetBytes("BEGIN:VCALENDAR\r\nX:Zoë\r\nEND:VCALENDAR\r\n");
        var message = Read(MailMessage.Draft(SomeLetter.To("rima@harrow-sound.example") with
        {
            Attachments = [MailAttachment.Pdf("packet-RIM.pdf", pdf), MailAttachment.Calendar("flights-RIM.ics", CalendarMethod.Publish, calendar),
                MailAttachment.Calendar("cancelled-RIM.ics", CalendarMethod.Cancel, calendar)],
        }));
        Assert.Equal("Zoë,\n.a line that begins with a dot\n" + new string('x', 2000), message.TextBody?.ReplaceLineEndings("\n").TrimEnd());
        Assert.Equal("<p>Zoë</p>", message.HtmlBody?.TrimEnd());
        var files = message.Attachments.Cast<MimePart>().ToArray();
        Assert.Equal(["packet-RIM.pdf", "flights-RIM.ics", "cancelled-RIM.ics"], files.Select(file => file.FileName));
        Assert.Equal(["application/pdf", "text/calendar", "text/calendar"], files.Select(file => file.ContentType.MimeType));
        Assert.Equal(["PUBLISH", "CANCEL"], files.Skip(1).Select(file => file.ContentType.Parameters["method"]));
        Assert.Equal([pdf, calendar, calendar], files.Select(SomeLetter.Content));
    }

    [Theory]
    [InlineData("Rima\r\nBcc: thief@elsewhere.example")]
    [InlineData("Rima\nBcc: thief@elsewhere.example")]
    [InlineData("Rima\rBcc: thief@elsewhere.example")]
    [InlineData("Rima\u2028Bcc: thief@elsewhere.example")]
    [InlineData("Rima\" <thief@elsewhere.example>, \"x")]
    [InlineData("Rima\0\u0007\r\n\r\n<script>")]
    public void A_name_or_subject_with_line_breaks_adds_no_header_and_no_recipient(string name)
    {
        var letter = SomeLetter.To("rima@harrow-sound.example") with { ToName = name, FromName = name, Subject = name };
        var bytes = MailMessage.Draft(letter);
        var message = Read(bytes);
        Assert.Equal(["rima@harrow-sound.example"], message.GetRecipients().Select(mailbox => mailbox.Address));
        Assert.Equal(["ops@harrow-sound.example"], message.From.Mailboxes.Select(mailbox => mailbox.Address));
        Assert.Empty(message.Bcc);
        Assert.Equal(["X-Unsent", "Message-Id", "Date", "Subject", "From", "To", "MIME-Version"],
            message.Headers.Select(header => header.Field).OrderBy(field => Array.IndexOf(Order, field)));
        var head = Encoding.ASCII.GetString(bytes)[..Encoding.ASCII.GetString(bytes).IndexOf("\r\n\r\n", StringComparison.Ordinal)];
        Assert.All(head.Split("\r\n"), line => Assert.Matches(@"^(?:[A-Za-z-]+:|[ \t])", line));
        Assert.DoesNotContain(message.Subject ?? "", letter => char.IsControl(letter));
    }

    [Fact]
    public void Names_outside_ASCII_are_encoded_and_come_back()
    {
        var bytes = MailMessage.Draft(SomeLetter.To("rima@harrow-sound.example") with { ToName = "Zoë Ångström 李", Subject = "Flüge – 7 Dec" });
        Assert.All(bytes, octet => Assert.InRange(octet, 9, 126));
        var message = Read(bytes);
        Assert.Equal(("Zoë Ångström 李", "Flüge – 7 Dec"), (message.To.Mailboxes.Single().Name, message.Subject));
    }

    [Fact]
    public void Lines_end_with_CR_LF_and_are_no_longer_than_SMTP_takes()
    {
        var text = Encoding.ASCII.GetString(MailMessage.Draft(SomeLetter.To("rima@harrow-sound.example")));
        Assert.DoesNotContain('\n', text.Replace("\r\n", "", StringComparison.Ordinal));
        Assert.All(text.Split("\r\n"), line => Assert.InRange(line.Length, 0, 998));
    }

    [Theory]
    [InlineData("rima.ostrelle@harrow-sound.example", true)]
    [InlineData("rima+week@xn--bcher-kva.example", true)]
    [InlineData("rima@bücher.example", true)]
    [InlineData("", false)]
    [InlineData("rima", false)]
    [InlineData("rima@", false)]
    [InlineData("@harrow.example", false)]
    [InlineData("rima@harrow.example, soren@harrow.example", false)]
    [InlineData("Rima <rima@harrow.example>", false)]
    [InlineData("rima@harrow.example\r\nBcc: x@y.example", false)]
    [InlineData("ri ma@harrow.example", false)]
    [InlineData("rïma@harrow.example", false)]
    [InlineData("<@a.example:rima@harrow.example>", false)]
    public void An_address_is_looked_at_before_it_is_used(string address, bool isGood)
    {
        var complaint = MailAddress.Complaint(address);
        Assert.Equal(isGood, complaint.Length == 0);
        Assert.DoesNotContain("harrow", complaint, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("localhost:25", "localhost", 25, true, false)]
    [InlineData("127.0.0.1:2525", "127.0.0.1", 2525, true, false)]
    [InlineData("[::1]:25", "::1", 25, true, false)]
    [InlineData("smtps://localhost:2465", "localhost", 2465, true, true)]
    [InlineData("192.0.2.1:465", "192.0.2.1", 465, false, true)]
    [InlineData("smtp://192.0.2.1:587", "192.0.2.1", 587, false, false)]
    public void A_server_is_read_from_host_and_port(string text, string host, int port, bool isLoopback, bool isEncrypted)
    {
        var target = MailTarget.Parse(text);
        Assert.NotNull(target);
        Assert.Equal((host, port, isLoopback, isEncrypted), (target.Host, target.Port, target.IsLoopback, target.IsEncryptedFromStart));
    }

    // Names that the hosts file of many machines gives to the loopback address: another file, or a name server, may say otherwise a moment later.
    [Theory]
    [InlineData("ip6-localhost")]
    [InlineData("localhost.localdomain")]
    [InlineData("runsc")]
    public void A_name_that_somebody_resolves_is_not_trusted_to_be_this_machine(string name) => Assert.False(MailTarget.Parse(name + ":25")?.IsLoopback);

    [Theory]
    [InlineData("localhost")]
    [InlineData("localhost:0")]
    [InlineData("localhost:70000")]
    [InlineData("user:secret@localhost:25")]
    [InlineData(":25")]
    [InlineData("a b:25")]
    public void Anything_else_is_no_server(string text) => Assert.Null(MailTarget.Parse(text));

    private static readonly string[] Order = ["X-Unsent", "Message-Id", "Date", "Subject", "From", "To", "MIME-Version"];

    private static MimeMessage Read(byte[] bytes) => MimeMessage.Load(new MemoryStream(bytes));
}
