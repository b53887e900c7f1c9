using Batch.Paper;
using Batch.Sheets;

namespace Batch.Cli.Pipeline;

/// <summary>One sheet of a run, rendered and perhaps printed.</summary>
/// <param name="Path">Path in the folder of the run, without its ending.</param>
/// <param name="Html">The page; null where its template or the program failed.</param>
/// <param name="Printed">The page as PDF; null where it was not printed.</param>
/// <param name="Problems">What is wrong in its templates.</param>
internal sealed record SheetFile(string Path, byte[]? Html, PrintedDocument? Printed, ImmutableArray<TemplateProblem> Problems)
{
    /// <summary>Writes what there is.</summary>
    /// <param name="folder">Where to.</param>
    public void Write(OutputFolder folder)
    {
        if (Html is not null) folder.Write(Path + ".html", Html);
        if (Printed is not null) folder.Write(Path + ".pdf", Printed.Pdf);
    }
}
