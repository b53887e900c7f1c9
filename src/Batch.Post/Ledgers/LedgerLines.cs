using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Unicode;

namespace Batch.Post.Ledgers;

/// <summary>The lines of the ledger as text.</summary>
internal static class LedgerLines
{
    /// <summary>A packet is about to be sent.</summary>
    public const string Begun = "begun";

    /// <summary>The server is about to be given the end of the message.</summary>
    public const string Handing = "handing over";

    /// <summary>The packet is issued.</summary>
    public const string Issued = "issued";

    /// <summary>The packet did not go.</summary>
    public const string Refused = "refused";

    private static readonly JsonSerializerOptions Options = new()
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
        IgnoreReadOnlyProperties = true,
        Encoder = JavaScriptEncoder.Create(UnicodeRanges.All),
        Converters = { new InstantJson(), new OptionalInstantJson() },
    };

    /// <summary>One line with its end.</summary>
    public static byte[] Write(LedgerLine line) => Encoding.UTF8.GetBytes(JsonSerializer.Serialize(line, Options) + "\n");

    /// <summary>The text of legs, for fingerprints.</summary>
    public static string Text(IEnumerable<IssuedLeg> legs) => JsonSerializer.Serialize(legs, Options);

    /// <summary>The packets of a ledger; whether its last line broke off.</summary>
    /// <exception cref="LedgerException">A line that is not the last cannot be read.</exception>
    public static (ImmutableArray<LedgerPacket> Packets, bool IsTorn) Read(string text, string path)
    {
        var packets = new List<LedgerPacket>();
        var end = text.LastIndexOf('\n') + 1;
        var number = 0;
        foreach (var written in text[..end].Split('\n', StringSplitOptions.None)[..^1])
        {
            number++;
            if (written.Trim().Length > 0) Add(packets, Line(written, path, number));
        }

        return ([.. packets], end < text.Length);
    }

    private static LedgerLine Line(string written, string path, int number)
    {
        try
        {
            return JsonSerializer.Deserialize<LedgerLine>(written, Options) ?? throw new JsonException("Nothing stands there.");
        }
        catch (JsonException error)
        {
            throw new LedgerException(string.Create(CultureInfo.InvariantCulture,
                $"{path}, line {number} cannot be read: {error.Message} Nothing is sent by a damaged ledger; mend the line or put a copy in its place."),
                error);
        }
    }

    private static void Add(List<LedgerPacket> packets, LedgerLine line)
    {
        if (line.What == Begun)
        {
            packets.Add(new LedgerPacket
            {
                Person = line.Person ?? "",
                To = line.To ?? "",
                Revision = Math.Max(line.Revision, 1),
                Fingerprint = line.Fingerprint ?? "",
                MessageId = line.MessageId,
                At = line.At,
                Outcome = LedgerOutcome.Begun,
                Legs = [.. line.Legs ?? []],
                Dropped = [.. line.Dropped ?? []],
            });
            return;
        }

        var at = packets.FindLastIndex(packet => packet.MessageId == line.MessageId);
        if (at < 0) return;
        packets[at] = packets[at] with { At = line.At, Answer = line.Answer ?? "", Outcome = Outcome(line.What, packets[at].Outcome) };
    }

    private static LedgerOutcome Outcome(string what, LedgerOutcome before) => what switch
    {
        Handing => LedgerOutcome.Unknown,
        Issued => LedgerOutcome.Issued,
        Refused => LedgerOutcome.Refused,
        _ => before,
    };
}
