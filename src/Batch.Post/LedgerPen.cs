using Batch.Post.Ledgers;

namespace Batch.Post;

/// <summary>
/// Writes a ledger. It is held alone from opening to closing, so that two runs cannot send at once; every line is on the disk before the method returns.
/// </summary>
public sealed class LedgerPen : IDisposable
{
    private readonly FileStream _file;
    private readonly IClock _clock;

    private LedgerPen(FileStream file, IClock clock, Ledger ledger) => (_file, _clock, Ledger) = (file, clock, ledger);

    /// <summary>The ledger as it stood on opening.</summary>
    public Ledger Ledger { get; }

    /// <summary>
    /// Opens a ledger, making the file where there is none. A last line that broke off is taken away: the packet then stands as the whole line before says.
    /// </summary>
    /// <param name="path">The file.</param>
    /// <param name="clock">Gives the times of the lines.</param>
    /// <exception cref="LedgerException">The file is in use, cannot be written, or is damaged elsewhere than in its last line.</exception>
    public static LedgerPen Open(string path, IClock clock)
    {
        FileStream? file = null;
        try
        {
            Ledger.RefuseOther(path);
            file = new FileStream(path, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None);
            var ledger = Ledger.Read(file, path);
            if (ledger.IsTorn) file.SetLength(WholeLines(file));
            file.Seek(0, SeekOrigin.End);
            var pen = new LedgerPen(file, clock, ledger);
            file = null;
            return pen;
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            throw new LedgerException($"{path} cannot be opened for writing; perhaps another tripbatch is sending just now: {error.Message}", error);
        }
        finally
        {
            file?.Dispose();
        }
    }

    /// <summary>Notes that a packet is about to be sent.</summary>
    /// <param name="packet">The packet; its time and outcome are not looked at.</param>
    public void Begin(LedgerPacket packet) => Write(new LedgerLine
    {
        What = LedgerLines.Begun,
        At = Now,
        Person = packet.Person,
        Revision = packet.Revision,
        MessageId = packet.MessageId,
        To = packet.To,
        Fingerprint = packet.Fingerprint,
        Legs = packet.Legs,
        Dropped = packet.Dropped,
    });

    /// <summary>Notes that the server is about to be given the end of a message; from here on it may have gone.</summary>
    /// <param name="messageId">Message-ID.</param>
    public void HandOver(string messageId) => Write(new LedgerLine { What = LedgerLines.Handing, At = Now, MessageId = messageId });

    /// <summary>Notes that a packet is issued.</summary>
    /// <param name="messageId">Message-ID.</param>
    /// <param name="answer">What the server said, or that it was sent by hand.</param>
    public void Issue(string messageId, string answer) => Write(new LedgerLine { What = LedgerLines.Issued, At = Now, MessageId = messageId, Answer = answer });

    /// <summary>Notes that the server refused a packet.</summary>
    /// <param name="messageId">Message-ID.</param>
    /// <param name="answer">What it said.</param>
    public void Refuse(string messageId, string answer) =>
        Write(new LedgerLine { What = LedgerLines.Refused, At = Now, MessageId = messageId, Answer = answer });

    /// <summary>Closes the file.</summary>
    public void Dispose() => _file.Dispose();

    private Instant Now => Instant.FromUnixTimeSeconds(_clock.GetCurrentInstant().ToUnixTimeSeconds());

    private static long WholeLines(FileStream file)
    {
        file.Seek(0, SeekOrigin.Begin);
        long whole = 0;
        for (long at = 1; file.ReadByte() is var octet && octet >= 0; at++)
        {
            if (octet == '\n') whole = at;
        }

        return whole;
    }

    private void Write(LedgerLine line)
    {
        try
        {
            _file.Write(LedgerLines.Write(line));
            _file.Flush(flushToDisk: true);
            // A device such as the null device takes everything and keeps nothing.
            if (_file.Length < _file.Position) throw new IOException("what was written is not there");
        }
        catch (IOException error)
        {
            throw new LedgerException($"{_file.Name} cannot be written, so nothing more is sent: {error.Message}", error);
        }
    }
}
