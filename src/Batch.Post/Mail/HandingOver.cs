using MailKit;

namespace Batch.Post.Mail;

/// <summary>
/// Writes into the ledger that the end of a message is about to be given: when its last bytes are written and before the line that ends it is.
/// </summary>
internal sealed class HandingOver(LedgerPen pen, string messageId) : ITransferProgress
{
    /// <summary>Whether it was written.</summary>
    public bool IsNoted { get; private set; }

    public void Report(long bytesTransferred, long totalSize)
    {
        if (IsNoted || bytesTransferred < totalSize) return;
        pen.HandOver(messageId);
        IsNoted = true;
    }

    // Without a known size any byte may be among the last.
    public void Report(long bytesTransferred) => Report(bytesTransferred, 0);
}
