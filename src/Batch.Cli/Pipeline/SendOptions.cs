using Batch.Post;

namespace Batch.Cli.Pipeline;

/// <summary>What is to be sent of a run.</summary>
public sealed record SendOptions
{
    /// <summary>Folder of the run.</summary>
    public required string Run { get; init; }

    /// <summary>Ledger of what was issued; null for the one beside <see cref="Run"/>.</summary>
    public string? Ledger { get; init; }

    /// <summary>Folder that receives drafts; null for <c>drafts</c> in <see cref="Run"/>.</summary>
    public string? Drafts { get; init; }

    /// <summary>The server that takes the mail; null for drafts.</summary>
    public MailTarget? Target { get; init; }

    /// <summary>Whether the drafts are noted in the ledger as sent by hand.</summary>
    public bool IsByHand { get; init; }

    /// <summary>Persons to send to, by code, case ignored; empty for all.</summary>
    public ImmutableHashSet<string> Only { get; init => field = value.WithComparer(StringComparer.OrdinalIgnoreCase); } = [];

    /// <summary>Persons who get their packet once more although nothing changed, by code, case ignored.</summary>
    public ImmutableHashSet<string> Again { get; init => field = value.WithComparer(StringComparer.OrdinalIgnoreCase); } = [];

    /// <summary>Trips to be taken back although the run does not speak of their days, case ignored.</summary>
    public ImmutableHashSet<string> Cancelled { get; init => field = value.WithComparer(StringComparer.OrdinalIgnoreCase); } = [];

    /// <summary>Folder with the user's templates; null for the shipped ones.</summary>
    public string? Templates { get; init; }

    /// <summary>Pauses before later tries.</summary>
    public ImmutableArray<TimeSpan> Pauses { get; init; } = Postman.UsualPauses;

    /// <summary>Told before each pause: why the first letter that is left was not taken, how many are left, and how long the pause is.</summary>
    public Action<string, int, TimeSpan> Waits { get; init; } = (_, _, _) => { };
}
