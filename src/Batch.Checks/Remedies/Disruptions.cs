namespace Batch.Checks.Remedies;

/// <summary>How much a change disturbs the people of the week: the order in which remedies are offered.</summary>
internal static class Disruptions
{
    /// <summary>Only paper and the ramp notice: fuel, station, seat, level, runway.</summary>
    public const int Paper = 1;

    /// <summary>The crew plan another way: route, alternate.</summary>
    public const int Way = 2;

    /// <summary>The client notices a little: an hour at most.</summary>
    public const int ShortTime = 3;

    /// <summary>The client notices: goods stay behind.</summary>
    public const int Goods = 4;

    /// <summary>Somebody's week changes: more than an hour, another pilot.</summary>
    public const int People = 5;

    /// <summary>Another aircraft.</summary>
    public const int Aircraft = 6;

    /// <summary>A landing more, or a passenger who stays behind.</summary>
    public const int Passengers = 7;
}
