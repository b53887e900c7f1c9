using Batch.Testing;
using Xunit.Abstractions;

namespace Batch.House.Tests;

/// <summary>Every file of outside values says where its values come from and how near is near enough.</summary>
public sealed class CheckFilesTests(ITestOutputHelper output)
{
    [Fact]
    public void Every_check_file_names_source_and_tolerance()
    {
        var files = SourceFiles.All("tests", "*.csv").Where(path => Path.GetFileName(Path.GetDirectoryName(path)) == "Checks").Select(CheckFile.ReadFrom)
            .ToArray();
        Assert.NotEmpty(files);
        var unsourced = files.Count(file => file.Sources.Any(source => source.Contains("no source", StringComparison.OrdinalIgnoreCase)
            || source.Contains("from memory", StringComparison.OrdinalIgnoreCase)));
        output.WriteLine(FormattableString.Invariant(
            $"{files.Length} check files, {files.Sum(file => file.Rows.Count)} rows; {unsourced} files from memory or common practice"));
    }
}
