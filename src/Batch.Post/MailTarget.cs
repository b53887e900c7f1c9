using System.Globalization;
using System.Net;

namespace Batch.Post;

/// <summary>The server that takes the mail.</summary>
public sealed record MailTarget
{
    /// <summary>Port on which a connection is encrypted from its first byte (RFC 8314, 3.3).</summary>
    private const int EncryptedPort = 465;

    /// <summary>Host name or address.</summary>
    public required string Host { get; init; }

    /// <summary>Port, 1 to 65535.</summary>
    public required int Port { get; init; }

    /// <summary>
    /// Whether the host is <c>localhost</c> or a loopback address, so this machine whatever a name server says; only then may the connection be unencrypted or
    /// the certificate unknown.
    /// </summary>
    public required bool IsLoopback { get; init; }

    /// <summary>Whether the connection is encrypted from its first byte; else it becomes so by STARTTLS.</summary>
    public bool IsEncryptedFromStart { get; init; }

    /// <summary>User name; empty where the server asks for none.</summary>
    public string User { get; init; } = "";

    /// <summary>Password. Never printed.</summary>
    public string Password { get; init; } = "";

    /// <summary>Reads <c>HOST:PORT</c>, with <c>smtps://</c> before it for a connection that is encrypted from its first byte; port 465 always is.</summary>
    /// <param name="text">As written.</param>
    /// <returns>The server, or null where the text is something else.</returns>
    public static MailTarget? Parse(string text)
    {
        var isSecure = text.StartsWith("smtps://", StringComparison.OrdinalIgnoreCase);
        var bare = isSecure ? text[8..] : text.StartsWith("smtp://", StringComparison.OrdinalIgnoreCase) ? text[7..] : text;
        var colon = bare.LastIndexOf(':');
        if (colon <= 0 || !int.TryParse(bare[(colon + 1)..].TrimEnd('/'), NumberStyles.None, CultureInfo.InvariantCulture, out var port) || port is < 1
            or > 65535) return null;
        var host = bare[..colon].Trim('[', ']');
        if (host.Contains('@', StringComparison.Ordinal) || Uri.CheckHostName(host) == UriHostNameType.Unknown) return null;
        return new MailTarget { Host = host, Port = port, IsLoopback = IsOwn(host), IsEncryptedFromStart = isSecure || port == EncryptedPort };
    }

    /// <summary>Host and port.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Host}:{Port}");

    private static bool IsOwn(string host) =>
        host.Equals("localhost", StringComparison.OrdinalIgnoreCase) || (IPAddress.TryParse(host, out var address) && IPAddress.IsLoopback(address));
}
