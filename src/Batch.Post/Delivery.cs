namespace Batch.Post;

/// <summary>What became of one letter.</summary>
/// <param name="Packet">The packet.</param>
/// <param name="Kind">What became of it.</param>
/// <param name="Text">What the server said, or why it was not sent; one line.</param>
/// <param name="MayComeTwice">Whether an earlier try may have arrived as well, because its answer was never heard.</param>
public sealed record Delivery(LedgerPacket Packet, DeliveryKind Kind, string Text, bool MayComeTwice);
