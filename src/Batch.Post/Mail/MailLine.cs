using System.Globalization;
using System.Net.Sockets;
using MailKit;
using MailKit.Net.Smtp;
using MailKit.Security;

namespace Batch.Post.Mail;

/// <summary>A connection to the server, made when the first letter is sent and made again when it broke.</summary>
internal sealed class MailLine(MailTarget target, LedgerPen pen) : IDisposable
{
    private const int TimeoutMs = 60_000;

    private SmtpClient? _client;

    /// <summary>Tries to send one letter, keeping the ledger.</summary>
    public (MailTry Try, string Text) Send(LedgerPacket packet, MailLetter letter)
    {
        var handing = new HandingOver(pen, packet.MessageId);
        var isBegun = false;
        try
        {
            var client = Connected();
            pen.Begin(packet);
            isBegun = true;
            using var message = MessageMaker.Make(letter);
            var answer = OneLine(client.Send(MessageMaker.Format, message, CancellationToken.None, handing));
            if (!handing.IsNoted) throw new InvalidOperationException("A letter was sent before the ledger said so.");
            pen.Issue(packet.MessageId, answer);
            return (MailTry.Taken, answer);
        }
        catch (SmtpCommandException error)
        {
            var answer = OneLine(string.Create(CultureInfo.InvariantCulture, $"{(int)error.StatusCode} {error.Message}"));
            var isForGood = (int)error.StatusCode >= 500;
            if (isBegun) pen.Refuse(packet.MessageId, answer);
            else Close();
            return (!isForGood ? MailTry.Later : isBegun && error.StatusCode != SmtpStatusCode.AuthenticationRequired ? MailTry.Refused : MailTry.Hopeless,
                answer);
        }
        catch (ServiceNotAuthenticatedException error)
        {
            if (isBegun) pen.Refuse(packet.MessageId, OneLine(error.Message));
            return (MailTry.Hopeless, $"{target} asks for user and password; none was given");
        }
        catch (SslHandshakeException)
        {
            return (MailTry.Hopeless, $"the certificate of {target.Host} is not one that this machine trusts for that name, or the connection could not be encrypted; nothing was sent");
        }
        catch (NotSupportedException error)
        {
            return (MailTry.Hopeless, OneLine(
                $"{target} does not offer what is asked of it (encryption by STARTTLS outside this machine, or a way to give the password): {error.Message}"));
        }
        catch (AuthenticationException error)
        {
            return (MailTry.Hopeless, OneLine($"{target} did not take user and password: {error.Message}"));
        }
        catch (Exception error) when (error is IOException or SocketException or TimeoutException or ProtocolException or ServiceNotConnectedException)
        {
            Close();
            if (handing.IsNoted) return (MailTry.Unheard, OneLine($"the answer of {target} was not heard: {error.Message}"));
            return (MailTry.Later, OneLine($"{target} cannot be reached or broke off: {error.Message}"));
        }
    }

    public void Dispose() => Close();

    private static string OneLine(string text) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    private SmtpClient Connected()
    {
        if (_client is { IsConnected: true }) return _client;
        Close();
        var client = new SmtpClient { Timeout = TimeoutMs, CheckCertificateRevocation = false };
        _client = client;
        if (target.IsLoopback)
        {
#pragma warning disable CA5359 // The other end is this machine itself; nobody else can hold that address.
            client.ServerCertificateValidationCallback = (_, _, _, _) => true;
#pragma warning restore CA5359
        }

        client.Connect(target.Host, target.Port, target switch
        {
            { IsEncryptedFromStart: true } => SecureSocketOptions.SslOnConnect,
            { IsLoopback: true } => SecureSocketOptions.StartTlsWhenAvailable,
            _ => SecureSocketOptions.StartTls,
        });

        // Sent in chunks (BDAT) a message has its end before it can be written down that the end is being given.
        client.Capabilities &= ~SmtpCapabilities.Chunking;
        if (target.User.Length > 0) client.Authenticate(target.User, target.Password);
        return client;
    }

    private void Close()
    {
        if (_client is not { } client) return;
        _client = null;
        try
        {
            if (client.IsConnected) client.Disconnect(quit: true);
        }
        catch (Exception error) when (error is IOException or SocketException or ProtocolException or CommandException)
        {
            // The answer to the farewell does not matter.
        }

        client.Dispose();
    }
}
