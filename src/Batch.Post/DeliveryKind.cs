namespace Batch.Post;

/// <summary>What became of a letter.</summary>
public enum DeliveryKind
{
    /// <summary>The server took it.</summary>
    Sent,

    /// <summary>The server refused it for good.</summary>
    Refused,

    /// <summary>It could not be sent now; the next run tries again.</summary>
    NotSent,
}
