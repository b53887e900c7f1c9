using System.Text;

namespace Batch.Post.Tests.Ledgers;

/// <summary>The file of what was issued.</summary>
public sealed class LedgerTests
{
    [Fact]
    public void A_folder_in_its_place_is_no_empty_ledger()
    {
        using var folder = new TemporaryFolder();
        Directory.CreateDirectory(folder.File("issued"));
        Assert.EndsWith("is a folder; the ledger is a file", Assert.Throws<LedgerException>(() => Ledger.Read(folder.File("issued"))).Message,
            StringComparison.Ordinal);
        Assert.EndsWith("is a folder; the ledger is a file",
            Assert.Throws<LedgerException>(() => LedgerPen.Open(folder.File("issued"), SystemClock.Instance)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_pipe_in_its_place_is_refused_without_waiting_for_it()
    {
        if (OperatingSystem.IsWindows()) return; // has no pipes with the name of a file
        using var folder = new TemporaryFolder();
        using (var maker = System.Diagnostics.Process.Start("mkfifo", [folder.File("issued.jsonl")])) await maker.WaitForExitAsync();
        File.CreateSymbolicLink(folder.File("link.jsonl"), folder.File("issued.jsonl"));
        foreach (var path in new[] { folder.File("issued.jsonl"), folder.File("link.jsonl") })
        {
            Assert.Equal($"{path} is a pipe; the ledger is a file", (await Refused(() => Ledger.Read(path))).Message);
            Assert.Equal($"{path} is a pipe; the ledger is a file", (await Refused(() => LedgerPen.Open(path, SystemClock.Instance).Dispose())).Message);
        }
    }

    [Fact]
    public void A_device_that_keeps_nothing_is_found_out_before_the_first_letter_goes()
    {
        if (OperatingSystem.IsWindows()) return; // has no device with the name of a file
        using var pen = LedgerPen.Open("/dev/null", SystemClock.Instance);
        Assert.Equal("/dev/null cannot be written, so nothing more is sent: what was written is not there",
            Assert.Throws<LedgerException>(() => pen.Begin(Packet())).Message);
    }

    [Fact]
    public void An_empty_file_and_a_link_to_none_begin_a_ledger()
    {
        using var folder = new TemporaryFolder();
        File.WriteAllText(folder.File("empty.jsonl"), "");
        File.CreateSymbolicLink(folder.File("link.jsonl"), folder.File("later.jsonl"));
        foreach (var path in new[] { folder.File("empty.jsonl"), folder.File("link.jsonl") })
        {
            Assert.Empty(Ledger.Read(path).Packets);
            using (var pen = LedgerPen.Open(path, SystemClock.Instance)) pen.Begin(Packet());
            Assert.Single(Ledger.Read(path).Packets);
        }
    }

    private static Task<LedgerException> Refused(Action read) => Task.Run(() => Assert.Throws<LedgerException>(read)).WaitAsync(TimeSpan.FromSeconds(30));

    [Fact]
    public void What_was_written_is_read_back()
    {
        var ledger = SomePost.Issued(SomePost.Week(SomePost.Facts() with { Remarks = "Zoë \"at\" gate 2\nlate" }));
        var packet = Assert.Single(ledger.Packets);
        Assert.Equal(("RIM", 1, LedgerOutcome.Issued, "250 taken"), (packet.Person, packet.Revision, packet.Outcome, packet.Answer));
        Assert.Equal(SomePost.Facts() with { Remarks = "Zoë \"at\" gate 2\nlate" }, Assert.Single(packet.Legs).Facts);
        Assert.False(ledger.IsTorn);
    }

    [Fact]
    public void A_line_is_one_line_that_a_person_can_read()
    {
        using var folder = new TemporaryFolder();
        using (var pen = Pen(folder)) pen.Begin(Packet() with { Legs = [] });
        var line = Assert.Single(File.ReadAllLines(folder.File("issued.jsonl")));
        Assert.StartsWith("{\"what\":\"begun\",\"at\":\"", line, StringComparison.Ordinal);
        Assert.Contains("\"person\":\"RIM\",\"revision\":1,", line, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0, LedgerOutcome.Begun)]
    [InlineData(1, LedgerOutcome.Unknown)]
    [InlineData(2, LedgerOutcome.Issued)]
    public void A_ledger_cut_off_anywhere_is_read_up_to_its_last_whole_line_and_written_on(int whole, LedgerOutcome outcome)
    {
        using var folder = new TemporaryFolder();
        var path = folder.File("issued.jsonl");
        using (var pen = Pen(folder))
        {
            pen.Begin(Packet());
            pen.HandOver(Packet().MessageId);
            pen.Issue(Packet().MessageId, "250 ü taken");
        }

        var all = File.ReadAllBytes(path);
        int[] ends = [.. all.Select((octet, at) => (octet, at)).Where(pair => pair.octet == '\n').Select(pair => pair.at + 1)];
        foreach (var cut in whole < 2 ? Enumerable.Range(ends[whole] + 1, ends[whole + 1] - ends[whole] - 1) : [all.Length])
        {
            File.WriteAllBytes(path, all[..cut]);
            var read = Ledger.Read(path);
            Assert.Equal(whole < 2, read.IsTorn);
            Assert.Equal(outcome, Assert.Single(read.Packets).Outcome);
            if (cut % 7 != 0 && cut != all.Length) continue;
            using (var pen = Pen(folder)) pen.Issue(Packet().MessageId, "again");
            Assert.Equal(LedgerOutcome.Issued, Assert.Single(Ledger.Read(path).Packets).Outcome);
            Assert.False(Ledger.Read(path).IsTorn);
        }
    }

    [Fact]
    public void A_damaged_line_in_the_middle_stops_everything_and_is_named()
    {
        using var folder = new TemporaryFolder();
        var path = folder.File("issued.jsonl");
        using (var pen = Pen(folder)) pen.Begin(Packet());
        File.AppendAllText(path, "{\"what\":\"iss\n", Encoding.UTF8);
        Assert.Contains("line 2", Assert.Throws<LedgerException>(() => Ledger.Read(path)).Message, StringComparison.Ordinal);
        Assert.Throws<LedgerException>(() => Pen(folder));
    }

    [Fact]
    public void Two_cannot_write_at_once_and_none_can_read_meanwhile()
    {
        using var folder = new TemporaryFolder();
        using (Pen(folder))
        {
            Assert.Throws<LedgerException>(() => Pen(folder));
            Assert.Throws<LedgerException>(() => Ledger.Read(folder.File("issued.jsonl")));
        }

        using (Pen(folder)) Assert.True(File.Exists(folder.File("issued.jsonl")));
    }

    [Fact]
    public void A_ledger_that_is_not_there_is_empty() => Assert.Empty(Ledger.Read(Path.Combine(Path.GetTempPath(), "no-such-ledger.jsonl")).Packets);

    private static LedgerPen Pen(TemporaryFolder folder) => LedgerPen.Open(folder.File("issued.jsonl"), SystemClock.Instance);

    private static LedgerPacket Packet() => SomePost.Packet(SomePost.Issue(SomePost.Week(SomePost.Facts()), Ledger.Empty), SomePost.MadeAt);
}
