namespace Batch.Post.Mail;

/// <summary>Keeps what became of the letters from one round of tries to the next.</summary>
internal sealed class DeliveryRounds
{
    private readonly IReadOnlyList<(LedgerPacket Packet, MailLetter Letter)> _letters;
    private readonly IProgress<Delivery> _progress;
    private readonly Delivery?[] _done;
    private readonly string[] _last;
    private readonly bool[] _mayComeTwice;

    public DeliveryRounds(Ledger ledger, IReadOnlyList<(LedgerPacket Packet, MailLetter Letter)> letters, IProgress<Delivery> progress)
    {
        (_letters, _progress) = (letters, progress);
        _done = new Delivery?[letters.Count];
        _last = [.. Enumerable.Repeat("it was not tried", letters.Count)];
        _mayComeTwice =
            [.. letters.Select(letter => ledger.Packets.Any(packet => packet.MessageId == letter.Packet.MessageId && packet.Outcome == LedgerOutcome.Unknown))];
    }

    /// <summary>Whether nothing can be sent at all.</summary>
    public bool IsHopeless { get; private set; }

    /// <summary>Letters whose fate is not decided.</summary>
    public ImmutableArray<int> Open => [.. Enumerable.Range(0, _done.Length).Where(at => _done[at] is null)];

    /// <summary>What the last try of a letter said.</summary>
    public string Why(int at) => _last[at];

    public (LedgerPacket Packet, MailLetter Letter) this[int at] => _letters[at];

    public void Note(int at, (MailTry Try, string Text) outcome)
    {
        _last[at] = outcome.Text;
        switch (outcome.Try)
        {
            case MailTry.Taken:
                Decide(at, DeliveryKind.Sent);
                break;
            case MailTry.Refused:
                Decide(at, DeliveryKind.Refused);
                break;
            case MailTry.Unheard:
                _mayComeTwice[at] = true;
                break;
            case MailTry.Hopeless:
                IsHopeless = true;
                foreach (var open in Open) _last[open] = outcome.Text;
                break;
            case MailTry.Later:
                break;
        }
    }

    /// <summary>What became of all letters; those still open are not sent.</summary>
    public ImmutableArray<Delivery> Finish(bool isStopped)
    {
        foreach (var at in Open)
        {
            if (isStopped) _last[at] = "stopped before it was sent";
            Decide(at, DeliveryKind.NotSent);
        }

        return [.. _done.OfType<Delivery>()];
    }

    private void Decide(int at, DeliveryKind kind)
    {
        var delivery = new Delivery(_letters[at].Packet, kind, _last[at], _mayComeTwice[at]);
        _done[at] = delivery;
        _progress.Report(delivery);
    }
}
