using Batch.Post;
using Batch.Sheets;

namespace Batch.Cli.Pipeline;

/// <summary>A letter ready to go, or why there is none.</summary>
/// <param name="Issue">What the person is told.</param>
/// <param name="Packet">What the ledger is to say; null where there is no letter.</param>
/// <param name="Letter">The letter; null where there is none.</param>
/// <param name="Unfit">Why there is none; empty where there is one or the templates are wrong.</param>
/// <param name="Problems">What is wrong in the templates.</param>
internal sealed record WrittenLetter(CrewIssue Issue, LedgerPacket? Packet, MailLetter? Letter, string Unfit, ImmutableArray<TemplateProblem> Problems);
