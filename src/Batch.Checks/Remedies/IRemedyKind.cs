namespace Batch.Checks.Remedies;

/// <summary>One kind of change that may make a failed check pass.</summary>
internal interface IRemedyKind
{
    /// <summary>The least that a change of this kind disturbs; see <see cref="Disruptions"/>.</summary>
    int Disruption { get; }

    /// <summary>Whether the kind can help against a failure at all.</summary>
    /// <param name="failure">The failure.</param>
    bool Suits(Failure failure);

    /// <summary>The smallest change of this kind that was tried and makes the check pass without a new failure; null where none was found.</summary>
    /// <param name="failure">The failure.</param>
    /// <param name="trials">Tries changes.</param>
    FoundRemedy? Find(Failure failure, Trials trials);
}
