using MimeKit;

namespace Batch.Post;

/// <summary>Looks at mail addresses before anything is sent to them.</summary>
public static class MailAddress
{
    /// <summary>Longest address [characters]; RFC 5321, 4.5.3.1.3, less the angle brackets.</summary>
    private const int Longest = 254;

    /// <summary>
    /// What is wrong with an address, as the end of a sentence that begins with whose it is; empty for one that can be used. The address itself is not
    /// repeated: such texts reach logs.
    /// </summary>
    /// <param name="address">The address.</param>
    public static string Complaint(string address)
    {
        if (address.Length == 0) return "is missing";
        if (address.Length > Longest) return "is longer than an address can be";
        if (address.Any(letter => char.IsControl(letter) || char.IsWhiteSpace(letter))) return "holds a space or a line break";
        var options = new ParserOptions
        {
            AddressParserComplianceMode = RfcComplianceMode.Strict,
            AllowAddressesWithoutDomain = false,
            AllowUnquotedCommasInAddresses = false
        };
        if (!MailboxAddress.TryParse(options, address, out var mailbox) || (mailbox.Address != address
            && mailbox.GetAddress(idnEncode: true) != address) || mailbox.Route.Count > 0)
            return "is not one mail address such as name@operator.example";
        return mailbox.LocalPart.All(char.IsAscii) ? "" : "holds a letter before the @ that mail servers do not take";
    }
}
