namespace Batch.Post.Mail;

/// <summary>How one try to send a letter ended.</summary>
internal enum MailTry
{
    /// <summary>The server took it.</summary>
    Taken,

    /// <summary>The server refused it for good.</summary>
    Refused,

    /// <summary>It surely did not go; another try may do.</summary>
    Later,

    /// <summary>The answer was not heard: it may have gone.</summary>
    Unheard,

    /// <summary>Nothing can be sent over this server as it is set up.</summary>
    Hopeless,
}
