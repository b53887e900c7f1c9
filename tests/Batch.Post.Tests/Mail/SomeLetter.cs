using MimeKit;

namespace Batch.Post.Tests.Mail;

/// <summary>Letters for tests.</summary>
internal static class SomeLetter
{
    public static MailLetter To(string address) => new()
    {
        FromName = "Harrow Sound",
        From = "ops@harrow-sound.example",
        ToName = "Rima Ostrelle",
        To = address,
        Subject = "Flights",
        Text = "Zoë,\n.a line that begins with a dot\n" + new string('x', 2000) + "\n",
        Html = "<p>Zoë</p>\n",
        Attachments = [MailAttachment.Pdf("packet.pdf", Noise(50_000))],
        MessageId = address,
        At = SomePost.MadeAt,
    };

    /// <summary>Letters to some people with what the ledger is to say of them; each Message-ID is the address.</summary>
    public static (LedgerPacket Packet, MailLetter Letter)[] Post(params ReadOnlySpan<string> people)
    {
        var letters = new List<(LedgerPacket, MailLetter)>();
        foreach (var person in people)
        {
            var letter = To(person + "@harrow-sound.example");
            letters.Add((new LedgerPacket
            {
                Person = person,
                To = letter.To,
                Revision = 1,
                Fingerprint = person,
                MessageId = letter.MessageId,
                At = letter.At,
                Outcome = LedgerOutcome.Begun
            }, letter));
        }

        return [.. letters];
    }

    /// <summary>Bytes of every kind, the same each time.</summary>
    public static byte[] Noise(int length)
    {
        var bytes = new byte[length];
        new Random(7).NextBytes(bytes);
        return bytes;
    }

    public static byte[] Content(MimePart part)
    {
        using var bytes = new MemoryStream();
        part.Content?.DecodeTo(bytes);
        return bytes.ToArray();
    }
}
