using System.Text.Json;
using Batch.Testing;

namespace Batch.EndToEnd.Tests;

/// <summary>Remedies really work: what they say is typed into a copy of the books, and the program run again.</summary>
public sealed class RemedyTests
{
    [Fact]
    public void Typing_a_remedy_into_the_books_makes_the_check_pass_and_adds_no_failure()
    {
        var failing = Failing(RepositoryRoot.PathOf("input-samples", "csv")).ToArray();
        Assert.InRange(failing.Count(finding => finding.Changes.Length > 0), 14, int.MaxValue);
        Assert.Empty(Wrong(RepositoryRoot.PathOf("input-samples", "csv"), failing));
    }

    [Fact]
    public void A_failure_without_remedy_says_how_many_plans_were_tried()
    {
        var (_, output, _) = SampleRun.Run("check", RepositoryRoot.PathOf("input-samples"));
        Assert.Matches(@"No change that makes it pass was found within \d+ plans tried\.", output);
        Assert.Contains("would pass: ", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_remedies_the_answers_are_the_same()
    {
        var (_, with, _) = SampleRun.Run("check", RepositoryRoot.PathOf("input-samples"));
        var (_, without, _) = SampleRun.Run("check", RepositoryRoot.PathOf("input-samples"), "--no-remedies");
        var answers = with.Split('\n')
            .Where(line => !line.Contains("would pass: ", StringComparison.Ordinal) && !line.Contains("plans tried.", StringComparison.Ordinal));
        Assert.Equal(without.Split('\n'), answers);
    }

    /// <summary>What goes wrong when each first remedy that can be typed is typed into a fresh copy of the books.</summary>
    internal static List<string> Wrong(string books, IReadOnlyCollection<Failure> failing)
    {
        var before = failing.Select(failure => failure.Name).ToHashSet(StringComparer.Ordinal);
        var wrong = new List<string>();
        foreach (var failure in failing.Where(failure => failure.Changes.Length > 0))
        {
            using var copy = new TemporaryFolder();
            CsvCells.Copy(books, copy.Path);
            CsvCells.Type(copy.Path, failure.Changes);
            var after = Failing(copy.Path, "--no-remedies").Select(other => other.Name).ToHashSet(StringComparer.Ordinal);
            if (after.Contains(failure.Name)) wrong.Add($"{failure.Name} still fails after: {failure.Remedy}");
            wrong.AddRange(after.Except(before).Select(added => $"{added} fails after: {failure.Remedy}"));
        }

        return wrong;
    }

    /// <summary>The failures of books as csv, with their first remedy.</summary>
    internal static IEnumerable<Failure> Failing(string books, params string[] options)
    {
        var (_, output, _) = SampleRun.Run(
            ["check", Path.Combine(books, "operator"), Path.Combine(books, "week"), "--json", "--made-at", SampleRun.MadeAt, .. options]);
        using var json = JsonDocument.Parse(output);
        return
        [
            .. from leg in json.RootElement.Legs()
               from finding in leg.Items("findings")
               where finding.State() == "fail"
               select new Failure(leg.Key() + " " + finding.GetProperty("check").GetString(),
                   First(finding, remedy => remedy.GetProperty("text").GetString() ?? "", ""), First<(string, string)[]>(finding, Changes, [])),
            .. json.RootElement.Items("problems").Where(problem => problem.State() == "fail")
                .Select(problem => new Failure("books " + problem.GetProperty("text").GetString(), "", [])),
        ];
    }

    private static (string, string)[] Changes(JsonElement remedy) =>
        [.. remedy.GetProperty("changes").EnumerateObject().Select(change => (change.Name, change.Value.GetString() ?? ""))];

    private static T First<T>(JsonElement finding, Func<JsonElement, T> what, T none) => finding.Items("remedies").Select(what).FirstOrDefault() ?? none;

    /// <summary>A failed check of a leg.</summary>
    /// <param name="Name">Leg and check.</param>
    /// <param name="Remedy">The first remedy; empty where there is none.</param>
    /// <param name="Changes">What it types.</param>
    internal sealed record Failure(string Name, string Remedy, (string Cell, string Value)[] Changes);
}
