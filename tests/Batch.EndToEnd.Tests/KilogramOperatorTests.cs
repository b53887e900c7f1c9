using System.Globalization;
using System.IO.Compression;
using System.Net;
using System.Text.RegularExpressions;
using Batch.Testing;

namespace Batch.EndToEnd.Tests;

/// <summary>The sample of an operator whose weight unit is kg: every door speaks kilograms, and what it says adds up.</summary>
public sealed partial class KilogramOperatorTests(KilogramOperatorTests.InKilograms run) : IClassFixture<KilogramOperatorTests.InKilograms>
{
    private const string WeightUnit = "operator/Operator/B30";
    private const string SheetLanguage = "operator/Operator/B27";
    private const string FuelAsked = "week/Legs/R3";

    [Fact]
    public void The_terminal_names_no_pound()
    {
        var (_, check, _) = SampleRun.Run("check", Book("operator"), Book("week"));
        Assert.Contains("Load at Aft baggage is 118 kg, 28 kg over the maximum of that station (90 kg).", check, StringComparison.Ordinal);
        Assert.Contains("would pass: Leave 28 kg of cargo or bags behind", check, StringComparison.Ordinal);
        NoPound("check", check);
        var (_, stress, _) = SampleRun.Run("check", Book("operator"), Book("week"), "--stress", "heavy");
        Assert.Matches("[0-9] kg over the maximum landing weight", stress);
        NoPound("stress", stress);
    }

    [Fact]
    public void Board_and_sheets_name_no_pound()
    {
        string[] pages = [.. Directory.EnumerateFiles(run.Post.Out, "*.html", SearchOption.AllDirectories)];
        Assert.InRange(pages.Length, 70, int.MaxValue);
        Assert.Contains("Load kg", Text(File.ReadAllText(Path.Combine(run.Post.Out, "index.html"))), StringComparison.Ordinal);
        Assert.All(pages, page =>
        {
            var html = File.ReadAllText(page);
            NoPound(page, Text(html));
            Assert.DoesNotMatch("data-label=\"[^\"]* lb\"", html);
        });
    }

    [Fact]
    public void The_marked_week_book_names_no_pound_but_those_that_the_user_wrote()
    {
        using var book = ZipFile.OpenRead(Path.Combine(run.Post.Out, "checked.xlsx"));
        string Part(ZipArchiveEntry entry)
        {
            using var reader = new StreamReader(entry.Open());
            return Text(reader.ReadToEnd());
        }

        var comments = string.Join('\n', book.Entries.Where(entry => entry.Name.StartsWith("comments", StringComparison.Ordinal)).Select(Part));
        Assert.Contains("Required 90, planned 118 kg", comments, StringComparison.Ordinal);
        NoPound("comments", comments);
        var findings = Part(book.Entries.Single(entry => entry.FullName.StartsWith("xl/worksheets/", StringComparison.Ordinal)
            && Part(entry).Contains("tripbatch findings", StringComparison.Ordinal)));
        Assert.Contains("28 kg over the maximum of that station", findings, StringComparison.Ordinal);
        NoPound("findings", findings);
    }

    /// <summary>Whole kilograms whose difference is the margin, and the sentence holds them.</summary>
    [Fact]
    public void Required_actual_and_margin_add_up_and_stand_in_the_sentence()
    {
        var rows = CsvCells.Read(File.ReadAllText(Path.Combine(run.Post.Out, "findings.csv")));
        int Column(string name) => rows[0].FindIndex(header => header.TrimStart('\uFEFF') == name);
        var (required, actual, margin, unit, text) = (Column("required"), Column("actual"), Column("margin"), Column("unit"), Column("text"));
        var weighed = rows.Skip(1).Where(row => row[unit] == "kg" && row[required].Length > 0).ToArray();
        Assert.InRange(weighed.Length, 300, int.MaxValue);
        Assert.DoesNotContain(rows, row => row[unit].StartsWith("lb", StringComparison.Ordinal));
        Assert.All(weighed, row =>
        {
            var (limit, there, spare) = (Whole(row[required]), Whole(row[actual]), Whole(row[margin]));
            Assert.Equal(Math.Abs(limit - there), Math.Abs(spare));
            Assert.All([limit, there], number => Assert.Contains(number.ToString("#,0", CultureInfo.InvariantCulture) + " kg", row[text], StringComparison.Ordinal));
        });
    }

    [Fact]
    public void Remedies_that_are_typed_in_kilograms_make_their_checks_pass()
    {
        var failing = RemedyTests.Failing(run.Post.Books).Where(failure => failure.Changes.Any(change => change.Value.EndsWith(" kg", StringComparison.Ordinal)))
            .GroupBy(failure => failure.Name.Split(' ')[0]).Select(leg => leg.Last()).ToArray();
        Assert.InRange(failing.Length, 4, int.MaxValue);
        using var copy = new TemporaryFolder();
        CsvCells.Copy(run.Post.Books, copy.Path);
        CsvCells.Type(copy.Path, failing.SelectMany(failure => failure.Changes));
        var after = RemedyTests.Failing(copy.Path, "--no-remedies").Select(failure => failure.Name).ToArray();
        Assert.Empty(failing.Select(failure => failure.Name).Intersect(after));
    }

    /// <summary>What is held back and what changed are said in kilograms, in the mail, on the sheet and on the terminal.</summary>
    [Fact]
    public void Mail_and_revision_name_no_pound()
    {
        NoPound("run", run.Output);
        Assert.All(Directory.GetFiles(Path.Combine(run.Post.Out, "drafts"), "*.eml"), draft =>
        {
            var message = MimeKit.MimeMessage.Load(draft);
            NoPound(draft, message.TextBody + Text(message.HtmlBody ?? ""));
        });
        var said = run.Post.Draft("RIM", 2).TextBody;
        Assert.Matches("T101/1: .*block fuel [0-9]+ to 600 kg", said);
        Assert.Matches("Takeoff weight is [0-9],[0-9]{3} kg, [0-9]+ kg over", said);
        Assert.Contains("to 600 kg", Text(File.ReadAllText(Path.Combine(run.Post.Out, "sheets", "T101.html"))), StringComparison.Ordinal);
    }

    [Fact]
    public void Explain_names_the_kilograms_beside_the_pounds_of_the_working()
    {
        var (_, output, _) = SampleRun.Run("explain", Book("operator"), Book("week"), "--leg", "T116/1", "--value", "fuel required");
        Assert.StartsWith("The working is in pounds, the unit of the program, with kilograms beside: 1 lb = 0.45359237 kg", output, StringComparison.Ordinal);
        Assert.Contains("taxi = 70 lb (31.751 kg)", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Explain_says_in_kilograms_why_a_leg_is_too_heavy_to_be_planned()
    {
        using var folder = new TemporaryFolder();
        CsvCells.Copy(RepositoryRoot.PathOf("input-samples/csv"), folder.Path);
        var cargo = Path.Combine(folder.Path, "week", "Cargo.csv");
        File.AppendAllText(cargo, "T101,1,Anvils,2300 kg,Aft baggage\n");
        CsvCells.Type(folder.Path, [(WeightUnit, "kg"), ("operator/Operator/B14", "stop")]);
        var (_, output, _) = SampleRun.Run("explain", Path.Combine(folder.Path, "operator"), Path.Combine(folder.Path, "week"), "--leg", "T101/1");
        Assert.Matches("T101/1 is not planned: The weight of [0-9],[0-9]{3} kg is", output);
        NoPound("explain", output);
    }

    /// <summary>
    /// Two legs of the sample: the sheets of a run without templates of its own follow unit and language, and a language without sheets is noted.
    /// </summary>
    [Theory]
    [InlineData("kg", "de", "", "de", false)]
    [InlineData("kg", "fr", "", "en", true)]
    [InlineData("lb", "de", "", "en", true)]
    [InlineData("lb", "de", "templates/examples/german", "de", false)]
    public void Sheets_are_in_the_language_that_they_name(string unit, string language, string templates, string sheets, bool isNoted)
    {
        using var folder = new TemporaryFolder();
        CsvCells.Copy(RepositoryRoot.PathOf("input-samples/csv"), folder.Path);
        CsvCells.Type(folder.Path, [(WeightUnit, unit), (SheetLanguage, language)]);
        var legs = Path.Combine(folder.Path, "week", "Legs.csv");
        CsvCells.Write(legs, CsvCells.Read(File.ReadAllText(legs))[..4]);
        var into = Path.Combine(folder.Path, "out");
        string[] own = templates.Length > 0 ? ["--templates", RepositoryRoot.PathOf(templates)] : [];
        SampleRun.Run(["run", Path.Combine(folder.Path, "operator"), Path.Combine(folder.Path, "week"), "--no-pdf", "--out", into, .. own]);
        Assert.Contains($"<html lang=\"{sheets}\">", File.ReadAllText(Path.Combine(into, "sheets", "T101.html")), StringComparison.Ordinal);
        var board = File.ReadAllText(Path.Combine(into, "index.html"));
        Assert.Contains("<html lang=\"en\">", board, StringComparison.Ordinal);
        Assert.Equal(isNoted, board.Contains("so the sheets are in English", StringComparison.Ordinal));
    }

    private string Book(string name) => Path.Combine(run.Post.Books, name);

    private static int Whole(string number) => int.Parse(number, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture);

    private static void NoPound(string where, string text) =>
        Assert.True(Pound().Match(text) is { Success: false }, $"{where}: {Pound().Match(text).Value}");

    private static string Text(string page) => WebUtility.HtmlDecode(Tags().Replace(page, " "));

    [GeneratedRegex(@".{0,60}\b(lbs?|pounds?|USG)\b.{0,20}", RegexOptions.ExplicitCapture | RegexOptions.NonBacktracking)]
    private static partial Regex Pound();

    /// <summary>Styles, scripts, letters of the print, and tags.</summary>
    [GeneratedRegex("<style.*?</style>|<script.*?</script>|<[^>]*>", RegexOptions.Singleline | RegexOptions.NonBacktracking)]
    private static partial Regex Tags();

    /// <summary>The sample with the weight unit kg, whose headers name their own units: run, issued by hand, run and drafted again with more fuel.</summary>
    public sealed class InKilograms : IDisposable
    {
        public InKilograms()
        {
            Post.Send("--by-hand");
            Output = Post.Change((FuelAsked, "600 kg"));
            Post.Send();
        }

        internal PostRun Post { get; } = new(null, (WeightUnit, "kg"));

        internal string Output { get; }

        public void Dispose() => Post.Dispose();
    }
}
