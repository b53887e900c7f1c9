using System.Net;
using System.Text.Json;
using ClosedXML.Excel;

namespace Batch.EndToEnd.Tests.Watching;

/// <summary>A book saved again and again while the real program watches it.</summary>
public sealed class WatchTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();
    private readonly HttpClient _browser = new();
    private readonly string _out;
    private readonly string _week;

    public WatchTests()
    {
        SampleRun.Run("new", _folder.Path);
        _out = Path.Combine(_folder.Path, "out");
        _week = Path.Combine(_folder.Path, "week.xlsx");
    }

    [Fact]
    public async Task A_saved_book_is_run_again_and_the_line_says_what_changed()
    {
        using var program = Start();
        Assert.Contains("2 legs: 2 pass", program.Line("legs:"), StringComparison.Ordinal);
        var before = await _browser.GetStringAsync(program.Address);
        File.WriteAllText(Path.Combine(_folder.Path, "~$week.xlsx"), "a lock");
        File.WriteAllText(Path.Combine(_folder.Path, ".~lock.week.xlsx#"), "a lock");
        Assert.True(program.IsQuiet(TimeSpan.FromSeconds(2)));

        SaveBeside(Edited(("Fuel plan", "150 lb"), ("Fuel aboard", "")));
        var line = program.Line("legs:");
        Assert.Contains("1 fail", line, StringComparison.Ordinal);
        Assert.Matches(@"T1/1 now fails FUEL-0\d", line);
        using var record = JsonDocument.Parse(File.ReadAllText(Path.Combine(_out, "run.json")));
        Assert.Equal("fail", record.RootElement.Legs().First().State());
        Assert.NotEqual(before, await _browser.GetStringAsync(program.Address));

        SaveBeside(Edited(("Fuel plan", "minimum+60")));
        Assert.Contains("T1/1 now passes.", program.Line("legs:"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_book_half_written_is_waited_for_and_a_broken_one_leaves_the_last_good_board()
    {
        using var program = Start();
        program.Line("legs:");
        var good = File.ReadAllBytes(_week);
        var written = File.ReadAllBytes(Path.Combine(_out, "run.json"));

        var edited = Edited(("Remarks", "seen"));
        File.WriteAllBytes(_week, good[..(good.Length / 2)]);
        await Task.Delay(700);
        File.WriteAllBytes(_week, edited);
        Assert.Contains("no leg changed its state", program.Line("  "), StringComparison.Ordinal);

        File.WriteAllBytes(_week, good[..(good.Length / 2)]);
        Assert.Contains("cannot be used: ", program.Line("  "), StringComparison.Ordinal);
        var board = await _browser.GetStringAsync(program.Address);
        Assert.Contains("This is the last good board.", board, StringComparison.Ordinal);
        Assert.Contains("T1/1", board, StringComparison.Ordinal);
        Assert.Equal(written.Length, File.ReadAllBytes(Path.Combine(_out, "run.json")).Length, 200.0);

        File.WriteAllBytes(_week, good);
        program.Line("legs:");
        Assert.DoesNotContain("last good board.", await _browser.GetStringAsync(program.Address), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_broken_template_of_the_board_leaves_the_last_good_one_served_and_on_disk_and_marked()
    {
        var templates = Path.Combine(_folder.Path, "templates");
        using var program = Start("--templates", templates);
        program.Line("legs:");
        var board = Path.Combine(templates, "week-board.html");
        var good = File.ReadAllText(board);
        File.WriteAllText(board, "{{ if }}");
        Assert.Contains("Not written: index.html.", program.Line("legs:"), StringComparison.Ordinal);
        File.WriteAllText(board, "{{ if if }}");
        program.Line("legs:");
        foreach (var page in new[] { File.ReadAllText(Path.Combine(_out, "index.html")), await _browser.GetStringAsync(program.Address) })
        {
            Assert.Contains("T1/1", page, StringComparison.Ordinal);
            Assert.Equal(2, page.Split("This is the last good board.").Length);
        }

        File.WriteAllText(board, good);
        program.Line("legs:");
        Assert.DoesNotContain("last good board.", File.ReadAllText(Path.Combine(_out, "index.html")), StringComparison.Ordinal);
        Assert.DoesNotContain("last good board.", await _browser.GetStringAsync(program.Address), StringComparison.Ordinal);
    }

    [Fact]
    public void Every_broken_template_is_named_in_the_line_with_what_was_not_written()
    {
        var templates = Path.Combine(_folder.Path, "templates");
        using var program = Start("--templates", templates);
        program.Line("legs:");
        var packet = File.ReadAllText(Path.Combine(templates, "crew-packet.html"));
        var board = File.ReadAllText(Path.Combine(templates, "week-board.html"));
        File.WriteAllText(Path.Combine(templates, "crew-packet.html"), "{{ persn }}");
        File.WriteAllText(Path.Combine(templates, "week-board.html"), "{{ if }}");
        var line = program.Line("legs:");
        Assert.Contains("crew-packet.html(1,4)", line, StringComparison.Ordinal);
        Assert.Contains("week-board.html(1,", line, StringComparison.Ordinal);
        Assert.EndsWith("Not written: index.html, packets/ANA, packets/BEN.", line.TrimEnd(), StringComparison.Ordinal);

        File.WriteAllText(Path.Combine(templates, "crew-packet.html"), packet);
        File.WriteAllText(Path.Combine(templates, "week-board.html"), board);
        Assert.DoesNotContain("Not written", program.Line("legs:"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_saved_template_is_run_again()
    {
        var templates = Path.Combine(_folder.Path, "templates");
        using var program = Start("--templates", templates);
        program.Line("legs:");
        File.AppendAllText(Path.Combine(templates, "trip-sheet.html"), "<!-- mine -->");
        program.Line("no leg changed its state");
        Assert.EndsWith("<!-- mine -->", File.ReadAllText(Path.Combine(_out, "sheets", "T1.html")).TrimEnd(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_sheet_that_says_the_same_keeps_the_time_it_was_made_at()
    {
        SampleRun.Run("new", Path.Combine(_folder.Path, "two"));
        var books = Path.Combine(_folder.Path, "two");
        using var program = new WatchedProgram(books, "--out", _out);
        program.Line("legs:");
        var sheet = File.ReadAllText(Path.Combine(_out, "sheets", "T1.html"));
        var pdf = File.ReadAllBytes(Path.Combine(_out, "sheets", "T1.pdf"));
        var path = Path.Combine(books, "week.xlsx");
        File.SetLastWriteTimeUtc(path, File.GetLastWriteTimeUtc(path).AddSeconds(1));
        program.Line("no leg changed its state");
        Assert.Equal(sheet, File.ReadAllText(Path.Combine(_out, "sheets", "T1.html")));
        Assert.True(pdf.AsSpan().SequenceEqual(File.ReadAllBytes(Path.Combine(_out, "sheets", "T1.pdf"))));
    }

    [Fact]
    public async Task The_board_is_given_to_its_own_address_only()
    {
        using var program = Start();
        program.Line("legs:");
        Assert.Equal("127.0.0.1", program.Address.Host);
        Assert.Matches("^/[0-9a-f]{32}/$", program.Address.AbsolutePath);
        async Task<HttpStatusCode> Status(string path, HttpMethod? method = null, string? host = null)
        {
            using var request = new HttpRequestMessage(method ?? HttpMethod.Get, new Uri(program.Address, path));
            if (host is not null) request.Headers.Host = host;
            using var answer = await _browser.SendAsync(request);
            return answer.StatusCode;
        }

        Assert.Equal(HttpStatusCode.OK, await Status("index.html"));
        Assert.Equal(HttpStatusCode.OK, await Status("sheets/T1.html"));
        Assert.Equal(HttpStatusCode.NotFound, await Status("/"));
        Assert.Equal(HttpStatusCode.NotFound, await Status("/" + new string('0', 32) + "/index.html"));
        Assert.Equal(HttpStatusCode.NotFound, await Status("/index.html"));
        Assert.Equal((HttpStatusCode)421, await Status("index.html", host: "board.example"));
        Assert.Equal((HttpStatusCode)421, await Status("index.html", host: "board.example:" + program.Address.Port));
        Assert.Equal(HttpStatusCode.OK, await Status("index.html", host: "localhost:" + program.Address.Port));
        foreach (var method in new[] { HttpMethod.Post, HttpMethod.Put, HttpMethod.Delete, HttpMethod.Patch, HttpMethod.Options })
            Assert.Equal(HttpStatusCode.MethodNotAllowed, await Status("index.html", method));
        foreach (var path in new[] { "..%2f..%2fweek.xlsx", "%2e%2e/week.xlsx", "sheets/..%2f..%2f..%2fweek.xlsx", "..%5cweek.xlsx", "//etc/passwd", "%00",
            "/etc/passwd" })
            Assert.Contains(await Status(program.Address.AbsolutePath + path), (HttpStatusCode[])[HttpStatusCode.NotFound, HttpStatusCode.BadRequest]);
    }

    [Fact]
    public async Task The_page_that_is_served_may_load_the_notices_and_nothing_else()
    {
        using var program = Start();
        program.Line("legs:");
        var board = await _browser.GetStringAsync(program.Address);
        Assert.Matches("content=\"default-src 'none'; connect-src 'self'; style-src 'unsafe-inline'; font-src data:; script-src 'self' 'sha256-[^']+'; base-uri 'none'; form-action 'none'\"", board);
        Assert.DoesNotContain("connect-src", File.ReadAllText(Path.Combine(_out, "index.html")), StringComparison.Ordinal);
        using var notices = new StreamReader(await _browser.GetStreamAsync(new Uri(program.Address, "live")));
        Assert.Equal("data: 1", await notices.ReadLineAsync());
        SaveBeside(Edited(("Fuel plan", "full")));
        await notices.ReadLineAsync();
        Assert.Equal("data: 2", await notices.ReadLineAsync());
    }

    [SkippableTheory]
    [InlineData("INT")]
    [InlineData("TERM")]
    public void Interrupted_it_ends_at_once_with_status_0_and_the_last_output_stands(string signal)
    {
        Skip.IfNot(WatchedProgram.CanBeInterrupted, "interrupts do not reach a program that is started here");
        using var program = Start();
        program.Line("legs:");
        SaveBeside(Edited(("Fuel plan", "full")));
        var (status, took) = program.Interrupt(signal);
        Assert.Equal(0, status);
        Assert.True(took < TimeSpan.FromSeconds(30), took.ToString()); // a shared machine; two seconds is what a user sees
        Assert.True(File.Exists(Path.Combine(_out, "index.html")));
    }

    [Fact]
    public void A_book_that_is_not_there_ends_with_status_2_and_is_named()
    {
        var (status, _, errors) = SampleRun.Run("watch", Path.Combine(_folder.Path, "wek.xlsx"));
        Assert.Equal(2, status);
        Assert.Contains("wek.xlsx", errors, StringComparison.Ordinal);
    }

    public void Dispose()
    {
        _browser.Dispose();
        _folder.Dispose();
    }

    private WatchedProgram Start(params string[] more) => new([_folder.Path, "--out", _out, "--no-pdf", .. more]);

    /// <summary>The week book with cells of its first leg changed.</summary>
    private byte[] Edited(params (string Header, string Value)[] cells)
    {
        using var book = new XLWorkbook(_week);
        var legs = book.Worksheet("Legs");
        foreach (var (header, value) in cells)
            legs.Cell(3, legs.Row(2).CellsUsed().First(cell => cell.GetString().Split(" [")[0] == header).Address.ColumnNumber).SetValue(value);
        using var saved = new MemoryStream();
        book.SaveAs(saved);
        return saved.ToArray();
    }

    /// <summary>Saves as spreadsheets do: a temporary file beside, then renamed over the book.</summary>
    private void SaveBeside(byte[] book)
    {
        var temporary = Path.Combine(_folder.Path, "~WRL0001.tmp");
        File.WriteAllBytes(temporary, book);
        File.Move(temporary, _week, overwrite: true);
    }
}
