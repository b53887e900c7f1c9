using Batch.Flight.Fleet;
using Batch.Sheets.Templates;

namespace Batch.Sheets.Views;

/// <summary>A pilot on a crew line. Private: the name is for the sheets of those who fly together.</summary>
internal sealed record PersonView
{
    [Value("Code of the pilot")]
    public required string Code { get; init; }

    [Value("Name; nothing where the code is not in the Crew sheet")]
    public required string Name { get; init; }

    /// <summary>The person of a code; null where the code is empty.</summary>
    public static PersonView? Of(string code, CrewMember? known) => code.Length == 0 ? null : new PersonView { Code = code, Name = known?.Name ?? "" };
}
