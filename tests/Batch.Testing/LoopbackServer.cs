using System.Buffers;
using System.Net;
using System.Net.Sockets;
using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;
using System.Text.RegularExpressions;
using SmtpServer;
using SmtpServer.Authentication;
using SmtpServer.ComponentModel;
using SmtpServer.Mail;
using SmtpServer.Protocol;
using SmtpServer.Storage;

namespace Batch.Testing;

/// <summary>A real SMTP server on this machine that keeps what it takes and can be told to answer otherwise.</summary>
public sealed partial class LoopbackServer : IDisposable
{
    private readonly CancellationTokenSource _stop = new();
    private readonly List<(string To, string MessageId, byte[] Bytes)> _taken = [];
    private readonly Task _running;

    /// <param name="answer">Answer to the whole message for an address and the number of this try for it, from 1; null to take it.</param>
    /// <param name="hasCertificate">Whether it offers STARTTLS with a certificate nobody vouches for.</param>
    /// <param name="refuses">Addresses refused before the message.</param>
    /// <param name="login">User and password that it asks for, over an encrypted connection only; null where it asks for none.</param>
    /// <param name="isEncryptedFromStart">Whether connections are encrypted from their first byte.</param>
    public LoopbackServer(Func<string, int, SmtpResponse?>? answer = null, bool hasCertificate = false, Func<string, bool>? refuses = null,
        (string User, string Password)? login = null, bool isEncryptedFromStart = false)
    {
        Port = FreePort();
        var services = new ServiceProvider();
        services.Add(new Store(this, answer ?? ((_, _) => null)));
        services.Add(new Filter(refuses ?? (_ => false)));
        if (login is { } asked) services.Add(new Doorkeeper(asked.User, asked.Password));
        var options = new SmtpServerOptionsBuilder().ServerName("localhost").Endpoint(endpoint =>
        {
            endpoint.Endpoint(new IPEndPoint(IPAddress.Any, Port));
            if (hasCertificate || login is not null || isEncryptedFromStart) endpoint.Certificate(Certificate());
            if (login is not null) endpoint.AuthenticationRequired().AllowUnsecureAuthentication(false);
            if (isEncryptedFromStart) endpoint.IsSecure(true);
        }).Build();
        _running = new SmtpServer.SmtpServer(options, services).StartAsync(_stop.Token);
    }

    /// <summary>The port it listens on, at every address of this machine.</summary>
    public int Port { get; }

    /// <summary>An address of this machine that is not loopback; null where it has none.</summary>
    public static IPAddress? OutsideAddress { get; } = Dns.GetHostAddresses(Dns.GetHostName())
        .FirstOrDefault(address => address.AddressFamily == AddressFamily.InterNetwork && !IPAddress.IsLoopback(address));

    /// <summary>What was taken, in order.</summary>
    public ImmutableArray<(string To, string MessageId, byte[] Bytes)> Taken
    {
        get
        {
            lock (_taken) return [.. _taken];
        }
    }

    public void Dispose()
    {
        _stop.Cancel();
        try
        {
            _running.Wait(TimeSpan.FromSeconds(10));
        }
        catch (AggregateException)
        {
            // Stopped in the middle of a session, as some tests want.
        }

        _stop.Dispose();
    }

    private static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }

    private static X509Certificate2 Certificate()
    {
        using var key = RSA.Create(2048);
        var request = new CertificateRequest("CN=localhost", key, HashAlgorithmName.SHA256, RSASignaturePadding.Pkcs1);
        using var made = request.CreateSelfSigned(DateTimeOffset.UtcNow.AddDays(-1), DateTimeOffset.UtcNow.AddDays(1));
        return X509CertificateLoader.LoadPkcs12(made.Export(X509ContentType.Pkcs12), null);
    }

    [GeneratedRegex(@"^Message-Id:\s*<(?<id>[^>]*)>", RegexOptions.IgnoreCase | RegexOptions.Multiline | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex MessageId();

    private sealed class Store(LoopbackServer server, Func<string, int, SmtpResponse?> answer) : MessageStore
    {
        private readonly Dictionary<string, int> _tries = new(StringComparer.Ordinal);

        public override Task<SmtpResponse> SaveAsync(ISessionContext context, IMessageTransaction transaction, ReadOnlySequence<byte> buffer,
            CancellationToken cancellationToken)
        {
            var to = string.Join(",", transaction.To.Select(mailbox => mailbox.User + "@" + mailbox.Host));
            int tries;
            lock (_tries) tries = _tries[to] = _tries.GetValueOrDefault(to) + 1;
            if (answer(to, tries) is { } other) return Task.FromResult(other);
            var bytes = buffer.ToArray();
            lock (server._taken) server._taken.Add((to, MessageId().Match(System.Text.Encoding.Latin1.GetString(bytes)).Groups["id"].Value, bytes));
            return Task.FromResult(SmtpResponse.Ok);
        }
    }

    private sealed class Doorkeeper(string user, string password) : UserAuthenticator
    {
        public override Task<bool> AuthenticateAsync(ISessionContext context, string given, string secret, CancellationToken cancellationToken) =>
            Task.FromResult(given == user && secret == password);
    }

    private sealed class Filter(Func<string, bool> refuses) : MailboxFilter
    {
        public override Task<bool> CanDeliverToAsync(ISessionContext context, IMailbox to, IMailbox from, CancellationToken cancellationToken) =>
            Task.FromResult(!refuses(to.User + "@" + to.Host));
    }
}
