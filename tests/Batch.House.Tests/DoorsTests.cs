using System.Xml.Linq;
using Batch.Testing;

namespace Batch.House.Tests;

/// <summary>Which room may see which: the table of DEVELOPERS.md, held against the project files.</summary>
public sealed class DoorsTests
{
    private static readonly Dictionary<string, string[]> Doors = new(StringComparer.Ordinal)
    {
        ["Batch.Flight"] = [],
        ["Batch.Checks"] = ["Batch.Flight"],
        ["Batch.Books"] = ["Batch.Flight"],
        ["Batch.Paper"] = [],
        ["Batch.Sheets"] = ["Batch.Checks", "Batch.Flight"],
        ["Batch.Post"] = [],
        ["Batch.Cli"] = ["Batch.Books", "Batch.Checks", "Batch.Flight", "Batch.Paper", "Batch.Post", "Batch.Sheets"],
    };

    public static TheoryData<string> Rooms =>
        [.. Directory.GetDirectories(Path.Combine(RepositoryRoot.Folder, "src")).Select(folder => Path.GetFileName(folder))];

    [Theory]
    [MemberData(nameof(Rooms))]
    public void A_room_sees_only_the_rooms_of_the_table(string room)
    {
        Assert.True(Doors.ContainsKey(room), $"{room} is not in the table of doors.");
        Assert.Equal(Doors[room].Order(StringComparer.Ordinal), References(room));
    }

    [Fact]
    public void Only_the_command_line_is_a_program()
    {
        var programs = ProjectFiles("src").Where(path => XDocument.Load(path).Descendants("OutputType").Any(element => element.Value == "Exe"))
            .Select(path => Path.GetFileNameWithoutExtension(path));
        Assert.Equal(["Batch.Cli"], programs);
    }

    [Fact]
    public void Internals_are_visible_to_the_rooms_own_tests_only()
    {
        foreach (var path in ProjectFiles("src"))
        {
            var room = Path.GetFileNameWithoutExtension(path);
            string[] allowed = room == "Batch.Cli" ? ["Batch.EndToEnd.Tests"] : [room + ".Tests"];
            var seenBy = XDocument.Load(path).Descendants("InternalsVisibleTo").Select(element => element.Attribute("Include")?.Value);
            Assert.Equal(allowed, seenBy);
        }
    }

    [Theory]
    [InlineData("Batch.Flight")]
    [InlineData("Batch.Checks")]
    public void Pure_rooms_ban_clock_files_and_console(string room)
    {
        var project = XDocument.Load(ProjectFile(room));
        Assert.Contains(project.Descendants("AdditionalFiles"),
            element => element.Attribute("Include")?.Value.EndsWith("BannedSymbols.Pure.txt", StringComparison.Ordinal) == true);
    }

    [Fact]
    public void Every_project_is_in_the_solution()
    {
        var solution = File.ReadAllText(Path.Combine(RepositoryRoot.Folder, "Batch.sln"));
        foreach (var path in ProjectFiles("src").Concat(ProjectFiles("tests")))
            Assert.Contains(Path.GetFileName(path), solution, StringComparison.Ordinal);
    }

    private static IEnumerable<string> References(string room) =>
        XDocument.Load(ProjectFile(room)).Descendants("ProjectReference")
            .Select(element => Path.GetFileNameWithoutExtension(element.Attribute("Include")?.Value.Replace('\\', '/') ?? ""))
            .Order(StringComparer.Ordinal);

    private static string ProjectFile(string room) => Path.Combine(RepositoryRoot.Folder, "src", room, room + ".csproj");

    private static IEnumerable<string> ProjectFiles(string folder) =>
        Directory.GetDirectories(Path.Combine(RepositoryRoot.Folder, folder)).SelectMany(room => Directory.GetFiles(room, "*.csproj"))
            .Order(StringComparer.Ordinal);
}
