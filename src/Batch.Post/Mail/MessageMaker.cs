using System.Text;
using MimeKit;

namespace Batch.Post.Mail;

/// <summary>Makes the message of a letter: text and HTML beside each other, files after them.</summary>
internal static class MessageMaker
{
    /// <summary>Lines ended by CR LF, headers in ASCII.</summary>
    public static FormatOptions Format { get; } = MadeFormat();

    public static MimeMessage Make(MailLetter letter)
    {
        var body = new MultipartAlternative
        {
            Part("plain", letter.Text),
            Part("html", letter.Html),
        };
        var all = new Multipart("mixed") { body };
        foreach (var file in letter.Attachments) all.Add(File(file));
        var message = new MimeMessage
        {
            MessageId = letter.MessageId,
            Date = letter.At.ToDateTimeOffset(),
            Subject = OneLine(letter.Subject),
            Body = all,
        };
        message.From.Add(new MailboxAddress(Encoding.UTF8, OneLine(letter.FromName), letter.From));
        message.To.Add(new MailboxAddress(Encoding.UTF8, OneLine(letter.ToName), letter.To));
        message.Prepare(EncodingConstraint.SevenBit);
        return message;
    }

    // Nothing of the user's can begin a new header: control characters become spaces before the library sees them.
    private static string OneLine(string text) => string.Join(' ',
        string.Concat(text.Select(letter => char.IsControl(letter) || letter is '\u2028' or '\u2029' ? ' ' : letter))
            .Split(' ', StringSplitOptions.RemoveEmptyEntries));

    private static TextPart Part(string kind, string text)
    {
        var part = new TextPart(kind) { ContentTransferEncoding = ContentEncoding.QuotedPrintable };
        part.SetText(Encoding.UTF8, text.ReplaceLineEndings("\r\n"));
        return part;
    }

    private static MimePart File(MailAttachment file) => new(ContentType.Parse(file.Type))
    {
        Content = new MimeContent(new MemoryStream(file.Content, writable: false)),
        ContentDisposition = new ContentDisposition(ContentDisposition.Attachment) { FileName = file.Name, Size = file.Content.Length },
        ContentTransferEncoding = ContentEncoding.Base64,
        FileName = file.Name,
    };

    private static FormatOptions MadeFormat()
    {
        var format = FormatOptions.Default.Clone();
        format.NewLineFormat = NewLineFormat.Dos;
        format.International = false;
        return format;
    }
}
