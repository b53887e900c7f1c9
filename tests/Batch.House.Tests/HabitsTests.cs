using System.Text.RegularExpressions;
using Batch.Testing;

namespace Batch.House.Tests;

/// <summary>Habits of the code that no analyzer holds.</summary>
public sealed partial class HabitsTests
{
    private const int MostLines = 500;

    [Fact]
    public void No_source_file_is_longer_than_a_reader_can_hold()
    {
        var tooLong = SourceFiles.CSharp("src").Where(path => File.ReadLines(path).Count() > MostLines).Select(Relative);
        Assert.Empty(tooLong);
    }

    [Fact]
    public void Most_source_files_are_short()
    {
        var lengths = SourceFiles.CSharp("src").Select(path => File.ReadLines(path).Count()).Order().ToArray();
        Assert.InRange(lengths[lengths.Length / 2], 1, 80);
        Assert.InRange(lengths[lengths.Length * 95 / 100], 1, 300);
    }

    [Fact]
    public void No_file_is_named_after_nothing()
    {
        string[] empty = ["Helper", "Manager", "Util", "Common", "Misc"];
        var named = SourceFiles.CSharp("src").Where(path => empty.Any(word => Path.GetFileNameWithoutExtension(path).Contains(word, StringComparison.Ordinal))).Select(Relative);
        Assert.Empty(named);
    }

    [Fact]
    public void Nothing_is_left_to_do_and_no_test_is_switched_off()
    {
        var found = SourceFiles.CSharp("src").Concat(SourceFiles.CSharp("tests"))
            .Where(path => Path.GetFileName(path) != "HabitsTests.cs")
            .Where(path => LeftOvers().IsMatch(File.ReadAllText(path)))
            .Select(Relative);
        Assert.Empty(found);
    }

    [Fact]
    public void Only_two_places_catch_everything()
    {
        var places = SourceFiles.CSharp("src").Where(path => CatchAll().IsMatch(File.ReadAllText(path))).Select(Relative);
        Assert.Equal(["src/Batch.Cli/Pipeline/LegGuard.cs", "src/Batch.Cli/Program.cs"], places);
    }

    private static string Relative(string path) => Path.GetRelativePath(RepositoryRoot.Folder, path).Replace('\\', '/');

    [GeneratedRegex(@"NotImplementedException|\bTODO\b|\bFIXME\b|\bHACK\b|Assert\.True\(true\)|Skip *= *""", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex LeftOvers();

    [GeneratedRegex(@"catch\s*(\(Exception( \w+)?\))?\s*\{|CA1031", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex CatchAll();
}
