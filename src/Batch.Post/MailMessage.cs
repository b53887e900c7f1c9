using Batch.Post.Mail;

namespace Batch.Post;

/// <summary>A letter as the bytes of a mail (RFC 5322, MIME).</summary>
public static class MailMessage
{
    /// <summary>A draft that mail programs open for sending: marked unsent, lines ended by CR LF.</summary>
    /// <param name="letter">The letter.</param>
    public static byte[] Draft(MailLetter letter)
    {
        using var message = MessageMaker.Make(letter);
        message.Headers.Insert(0, "X-Unsent", "1");
        using var bytes = new MemoryStream();
        message.WriteTo(MessageMaker.Format, bytes);
        return bytes.ToArray();
    }
}
