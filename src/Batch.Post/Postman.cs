using Batch.Post.Mail;

namespace Batch.Post;

/// <summary>
/// Sends letters and keeps the ledger. Before a letter is sent it is written down; just before the server is given its end that is written down; after the
/// server's answer the outcome is. So a run that is stopped anywhere is carried on by the next: only a letter whose end was given and whose answer was never
/// heard may come twice, and then with the same Message-ID.
/// </summary>
/// <param name="target">The server.</param>
/// <param name="pen">The ledger.</param>
/// <param name="pauses">Pauses before the second and later tries of letters that could not be sent for now.</param>
public sealed class Postman(MailTarget target, LedgerPen pen, ImmutableArray<TimeSpan> pauses)
{
    /// <summary>Pauses that outlast a busy server and its grey list's first answer, some two minutes in all.</summary>
    public static ImmutableArray<TimeSpan> UsualPauses { get; } =
        [TimeSpan.FromSeconds(2), TimeSpan.FromSeconds(8), TimeSpan.FromSeconds(30), TimeSpan.FromSeconds(90)];

    /// <summary>Told before each pause: why the first letter that is left was not taken, how many are left, and how long the pause is.</summary>
    public Action<string, int, TimeSpan> Waits { get; init; } = (_, _, _) => { };

    /// <summary>Sends letters, one after another; one that fails does not stop the others.</summary>
    /// <param name="letters">The letters with what the ledger is to say of them.</param>
    /// <param name="progress">Told of each letter whose fate is decided.</param>
    /// <param name="stop">Stops between letters; the one at hand is finished first.</param>
    /// <returns>What became of each letter, in the order given.</returns>
    public ImmutableArray<Delivery> Send(IReadOnlyList<(LedgerPacket Packet, MailLetter Letter)> letters, IProgress<Delivery> progress, CancellationToken stop)
    {
        var rounds = new DeliveryRounds(pen.Ledger, letters, progress);
        for (var round = 0; ; round++)
        {
            using (var line = new MailLine(target, pen)) Round(line, rounds, stop);
            if (rounds.Open.IsEmpty || rounds.IsHopeless || round == pauses.Length || stop.IsCancellationRequested)
                return rounds.Finish(stop.IsCancellationRequested);
            Waits(rounds.Why(rounds.Open[0]), rounds.Open.Length, pauses[round]);
            if (stop.WaitHandle.WaitOne(pauses[round])) return rounds.Finish(isStopped: true);
        }
    }

    private static void Round(MailLine line, DeliveryRounds rounds, CancellationToken stop)
    {
        foreach (var at in rounds.Open)
        {
            if (stop.IsCancellationRequested || rounds.IsHopeless) return;
            rounds.Note(at, line.Send(rounds[at].Packet, rounds[at].Letter));
        }
    }
}
