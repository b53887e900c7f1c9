using System.Text.RegularExpressions;
using Batch.Testing;

namespace Batch.House.Tests;

/// <summary>Habits of the code that no analyzer holds.</summary>
public sealed partial class HabitsTests
{
    private const int MostLines = 500;

    /// <summary>As .editorconfig says.</summary>
    private const int LongestLine = 160;

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

    /// <summary>
    /// What does not fit leaves the promise of the room, not the budget. Lines of code are counted: no blank ones, comments, usings, namespaces or brackets
    /// alone.
    /// </summary>
    [Fact]
    public void The_paper_room_keeps_its_budget()
    {
        var files = SourceFiles.CSharp("src").Where(path => Relative(path).StartsWith("src/Batch.Paper/", StringComparison.Ordinal)).ToArray();
        Assert.InRange(files.Sum(path => File.ReadLines(path).Count(line => !NoCode().IsMatch(line))), 1000, 3500);
        Assert.All(files, path => Assert.InRange(File.ReadLines(path).Count(), 1, 300));
    }

    /// <summary>A text is not parted for it, and the budget of the paper room counts lines.</summary>
    [Fact]
    public void No_line_of_code_is_longer_than_a_reader_can_see()
    {
        var tooLong = SourceFiles.CSharp("src").Concat(SourceFiles.CSharp("tests"))
            .Where(path => !Relative(path).StartsWith("src/Batch.Paper/", StringComparison.Ordinal))
            .SelectMany(path => WithoutRawTexts(File.ReadAllText(path)).Split('\n')
                .Where(line => line.Length > LongestLine && !line.Contains('"', StringComparison.Ordinal))
                .Select(line => Relative(path) + ": " + line.Trim()));
        Assert.Empty(tooLong);
    }

    [Fact]
    public void No_file_is_named_after_nothing()
    {
        string[] empty = ["Helper", "Manager", "Util", "Common", "Misc"];
        var named = SourceFiles.CSharp("src").Where(path => empty.Any(word => Path.GetFileNameWithoutExtension(path).Contains(word, StringComparison.Ordinal)))
            .Select(Relative);
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

    private static string WithoutRawTexts(string code) => RawText().Replace(code, "\"\"");

    private static string Relative(string path) => Path.GetRelativePath(RepositoryRoot.Folder, path).Replace('\\', '/');

    [GeneratedRegex(@"^\s*(//.*|[{}()\[\];,]*)$|^(using|namespace) ", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex NoCode();

    [GeneratedRegex("\"{3,}.*?\"{3,}", RegexOptions.Singleline, 1000)]
    private static partial Regex RawText();

    [GeneratedRegex(@"NotImplementedException|\bTODO\b|\bFIXME\b|\bHACK\b|Assert\.True\(true\)|Skip *= *""", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex LeftOvers();

    [GeneratedRegex(@"catch\s*(\(Exception( \w+)?\))?\s*\{|CA1031", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex CatchAll();
}
