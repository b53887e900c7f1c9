namespace Batch.Flight.Week;

/// <summary>The notices of a week, by what they are about.</summary>
public sealed class NoticeBoard
{
    private static readonly char[] Separators = [' ', '/', ',', ';'];

    private readonly ILookup<string, Notice> _bySubject;

    /// <summary>Makes the board.</summary>
    /// <param name="notices">Notices in book order.</param>
    public NoticeBoard(IEnumerable<Notice> notices) =>
        _bySubject = notices.ToLookup(
            notice => notice.Subject.Split(Separators, 2, StringSplitOptions.RemoveEmptyEntries).FirstOrDefault() ?? "", StringComparer.OrdinalIgnoreCase);

    /// <summary>
    /// Every notice about an airport (its runways included), a fix, an airway or an aircraft that holds at some time in a closed interval, in book order.
    /// </summary>
    /// <param name="ident">Ident, airway name or registration.</param>
    /// <param name="from">Start.</param>
    /// <param name="to">End, not before the start.</param>
    public IEnumerable<Notice> About(string ident, Instant from, Instant to) =>
        _bySubject[ident].Where(notice => (notice.From is null || notice.From <= to) && (notice.To is null || notice.To > from));

    /// <summary>The first notice with an effect on a subject at an instant; null for none.</summary>
    /// <param name="ident">Ident, airway name or registration.</param>
    /// <param name="effect">The effect.</param>
    /// <param name="at">The instant.</param>
    public Notice? First(string ident, NoticeEffect effect, Instant at) =>
        _bySubject[ident].FirstOrDefault(notice => notice.Effect == effect && notice.HoldsAt(at));

    /// <summary>Runways of an airport that are closed at an instant: the designators named in the subject after the ident, such as <c>XAND 09/27</c>.</summary>
    /// <param name="airport">Ident of the airport.</param>
    /// <param name="at">The instant.</param>
    public ImmutableHashSet<string> ClosedRunways(string airport, Instant at) =>
    [
        .. _bySubject[airport]
            .Where(notice => notice.Effect == NoticeEffect.RunwayClosed && notice.HoldsAt(at))
            .SelectMany(notice => notice.Subject.Split(Separators, StringSplitOptions.RemoveEmptyEntries).Skip(1))
            .Select(word => word.ToUpperInvariant()),
    ];
}
