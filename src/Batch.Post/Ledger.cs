using Batch.Post.Ledgers;

namespace Batch.Post;

/// <summary>
/// What was issued to whom: a text file with one line of JSON for every step, only ever added to. What was meant to be sent is written before it is sent, the
/// outcome after it.
/// </summary>
public sealed class Ledger
{
    private Ledger(ImmutableArray<LedgerPacket> packets, bool isTorn) => (Packets, IsTorn) = (packets, isTorn);

    /// <summary>A ledger in which nothing was issued.</summary>
    public static Ledger Empty { get; } = new([], isTorn: false);

    /// <summary>Packets in the order written.</summary>
    public ImmutableArray<LedgerPacket> Packets { get; }

    /// <summary>Whether the last line broke off because the program was stopped while it wrote; that line is left out.</summary>
    public bool IsTorn { get; }

    /// <summary>Reads a ledger; one that is not there is empty.</summary>
    /// <param name="path">The file.</param>
    /// <exception cref="LedgerException">The file is in use, cannot be read, or is damaged elsewhere than in its last line.</exception>
    public static Ledger Read(string path)
    {
        try
        {
            RefuseOther(path);
            using var file = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.Read);
            return Read(file, path);
        }
        catch (Exception none) when (none is FileNotFoundException or DirectoryNotFoundException)
        {
            return Empty;
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            throw new LedgerException($"{path} cannot be read; perhaps another tripbatch is sending just now: {error.Message}", error);
        }
    }

    /// <summary>The last packet that the person surely has; null for none.</summary>
    /// <param name="person">Code.</param>
    public LedgerPacket? LastIssued(string person) => Of(person).LastOrDefault(packet => packet.Outcome == LedgerOutcome.Issued);

    /// <summary>The packets of a person, in the order written.</summary>
    /// <param name="person">Code.</param>
    public IEnumerable<LedgerPacket> Of(string person) => Packets.Where(packet => string.Equals(packet.Person, person, StringComparison.OrdinalIgnoreCase));

    /// <summary>Refuses what is no file: a folder, and a pipe, whose reader would wait for ever for a writer; opened for both it does not wait.</summary>
    internal static void RefuseOther(string path)
    {
        if (Directory.Exists(path)) throw new LedgerException($"{path} is a folder; the ledger is a file");
        var there = File.Exists(path) ? File.ResolveLinkTarget(path, returnFinalTarget: true) ?? new FileInfo(path) : null;
        if (there is not FileInfo { Exists: true, Length: 0 }) return;
        using var file = new FileStream(path, FileMode.Open, FileAccess.ReadWrite, FileShare.ReadWrite | FileShare.Delete);
        if (!file.CanSeek) throw new LedgerException($"{path} is a pipe; the ledger is a file");
    }

    internal static Ledger Read(Stream file, string path)
    {
        using var reader = new StreamReader(file, leaveOpen: true);
        var (packets, isTorn) = LedgerLines.Read(reader.ReadToEnd(), path);
        return new Ledger(packets, isTorn);
    }
}
