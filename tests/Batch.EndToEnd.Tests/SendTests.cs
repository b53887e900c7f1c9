using System.Text;
using Batch.Testing;
using MimeKit;

namespace Batch.EndToEnd.Tests;

/// <summary><c>send</c> on a real run: drafts, what changed, what is held back.</summary>
public sealed class SendTests(PostRun.First first) : IClassFixture<PostRun.First>
{
    private const string FirstLegs = "week.xlsx/Legs/";

    [Fact]
    public void Drafts_carry_packet_and_calendar_and_note_nothing()
    {
        using var run = new PostRun(first);
        var (status, output, _) = run.Send();
        Assert.Equal(0, status);
        Assert.Equal(run.People.Select(person => person + "-revision-1.eml"),
            Directory.GetFiles(Path.Combine(run.Out, "drafts")).Select(Path.GetFileName).Order(StringComparer.Ordinal));
        Assert.False(File.Exists(run.Ledger));
        var mail = run.Draft("RIM");
        Assert.Equal("rima.ostrelle@harrow-sound.example", mail.To.Mailboxes.Single().Address);
        Assert.Equal("1", mail.Headers["X-Unsent"]);
        Assert.Equal(PostRun.Packet("RIM"), PostRun.Content(mail, "packet-RIM.pdf"));
        Assert.Equal(File.ReadAllBytes(Path.Combine(run.Out, "calendar", "RIM.ics")), PostRun.Content(mail, "flights-RIM.ics"));
        Assert.Contains("T101/1", mail.TextBody, StringComparison.Ordinal);
        Assert.Contains("Held back", mail.HtmlBody, StringComparison.Ordinal);
        Assert.DoesNotContain("T117/1", mail.TextBody, StringComparison.Ordinal);
        Assert.Contains("T117: Leg 1 fails WB-04", mail.TextBody, StringComparison.Ordinal);
        Assert.DoesNotContain("Rima", output, StringComparison.Ordinal);
        Assert.DoesNotContain("@harrow", output, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_noted_as_sent_is_not_sent_again_until_it_changes_and_then_the_change_is_in_words()
    {
        using var run = new PostRun(first);
        Assert.Equal(0, run.Send("--by-hand").Status);
        var (status, output, _) = run.Send();
        Assert.Equal(0, status);
        Assert.Contains("RIM   revision 1  unchanged since", output, StringComparison.Ordinal);
        Assert.Contains("0 drafts written", output, StringComparison.Ordinal);

        var said = run.Change((FirstLegs + "D3", "09:00"), (FirstLegs + "L3", "FL190"));
        Assert.Matches(
            @"RIM, revision 2: T101/1: off blocks 08:30 to 09:00, on blocks 09:18 to 09:4[0-9], level 21,000 to 19,000 ft, block fuel [0-9,]+ to [0-9,]+ lb",
            said);
        Assert.Contains("Changed since revision 1", File.ReadAllText(Path.Combine(run.Out, "sheets", "T101.html")), StringComparison.Ordinal);
        Assert.Contains("T101/1: off blocks 08:30 to 09:00", File.ReadAllText(Path.Combine(run.Out, "sheets", "T101.html")), StringComparison.Ordinal);
        Assert.DoesNotContain("Changed since", File.ReadAllText(Path.Combine(run.Out, "sheets", "T102.html")), StringComparison.Ordinal);
        var again = run.Send();
        Assert.Equal(0, again.Status);
        Assert.Contains("1 draft written.", again.Output, StringComparison.Ordinal);
        Assert.Equal(["RIM-revision-2.eml"], Directory.GetFiles(Path.Combine(run.Out, "drafts")).Select(Path.GetFileName));
        var mail = run.Draft("RIM", 2);
        Assert.Contains("T101/1: off blocks 08:30 to 09:00", mail.TextBody, StringComparison.Ordinal);
        Assert.Contains("revision 2", mail.Subject, StringComparison.Ordinal);
        var events = Encoding.UTF8.GetString(PostRun.Content(mail, "flights-RIM.ics")).Split("BEGIN:VEVENT");
        Assert.Contains("SEQUENCE:1", events.Single(item => item.Contains("UID:T101-1-", StringComparison.Ordinal)), StringComparison.Ordinal);
        Assert.Contains("SEQUENCE:0", events.Single(item => item.Contains("UID:T101-2-", StringComparison.Ordinal)), StringComparison.Ordinal);
    }

    [Fact]
    public void A_leg_given_to_another_captain_is_cancelled_in_the_calendar_of_the_first()
    {
        using var run = new PostRun(first);
        run.Send("--by-hand");
        run.Change((FirstLegs + "P3", "SOR"), (FirstLegs + "P4", "SOR"));
        run.Send();
        var mail = run.Draft("RIM", 2);
        Assert.Contains("T101/1: no longer yours", mail.TextBody, StringComparison.Ordinal);
        var cancelled = Encoding.UTF8.GetString(PostRun.Content(mail, "cancelled-RIM.ics"));
        Assert.Contains("METHOD:CANCEL", cancelled, StringComparison.Ordinal);
        Assert.Equal(2, cancelled.Split("STATUS:CANCELLED").Length - 1);
    }

    [Fact]
    public void A_reason_in_the_book_releases_a_trip_and_is_in_the_mail()
    {
        using var run = new PostRun(first);
        var file = Path.Combine(run.Books, "week", "Legs.csv");
        File.WriteAllLines(file, File.ReadAllLines(file).Select((line, at) => at == 1
            ? line + ",Override"
            : line.StartsWith("T106,1,", StringComparison.Ordinal) ? line + ",the chief pilot agreed" : line));
        run.Run();
        run.Send();
        var mail = run.Draft("YLA");
        Assert.Contains("Sent all the same, because: the chief pilot agreed", mail.TextBody, StringComparison.Ordinal);
        Assert.Contains("T106/1", mail.TextBody, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--only", "RMI", "RIM")]
    [InlineData("--again", "RIM", "--again RIM")]
    [InlineData("--smtp", "localhost", "HOST")]
    [InlineData("--user", "me", "--smtp")]
    public void What_makes_no_sense_is_said_and_nothing_is_sent(string option, string value, string said)
    {
        using var run = new PostRun(first);
        var (status, _, errors) = run.Send(option, value);
        Assert.Equal(2, status);
        Assert.Contains(said == "HOST" ? "a server such as" : said, errors, StringComparison.Ordinal);
        Assert.False(Directory.Exists(Path.Combine(run.Out, "drafts")));
    }

    [Theory]
    [InlineData("empty", "is empty, or is no file (a pipe or a device); run again.")]
    [InlineData("pipe", "is empty, or is no file (a pipe or a device); run again.")]
    [InlineData("spoilt", "is not the record of a run by this version; run again.")]
    [InlineData("folder", "holds no run (run.json is not there); make one with")]
    public async Task A_record_of_the_run_that_is_none_is_said_and_nothing_is_sent(string what, string said)
    {
        if (what == "pipe" && OperatingSystem.IsWindows()) return; // has no pipes with the name of a file
        using var run = new PostRun(first);
        var path = Path.Combine(run.Out, "run.json");
        var text = File.ReadAllText(path);
        File.Delete(path);
        if (what == "folder") Directory.CreateDirectory(path);
        else if (what == "pipe") using (var maker = System.Diagnostics.Process.Start("mkfifo", [path])) await maker.WaitForExitAsync();
        else File.WriteAllText(path, what == "empty" ? "" : text[..^200]);
        var (status, _, errors) = await Task.Run(() => run.Send()).WaitAsync(TimeSpan.FromSeconds(60));
        Assert.Equal(2, status);
        Assert.Contains(said, errors, StringComparison.Ordinal);
        Assert.False(Directory.Exists(Path.Combine(run.Out, "drafts")));
    }

    [Fact]
    public void A_person_without_an_address_does_not_keep_the_others_from_theirs()
    {
        using var run = new PostRun(first);
        run.Change(("operator.xlsx/Crew/C3", "rima at harrow"));
        var (status, output, _) = run.Send();
        Assert.Equal(1, status);
        Assert.Contains("RIM   revision 1  NOT SENT: the mail address in the Crew sheet", output, StringComparison.Ordinal);
        Assert.Contains(string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{run.People.Length - 1} drafts written, 1 not"), output,
            StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(".pdf", "packets/RIM.pdf is not in the run; run again without --no-pdf")]
    [InlineData(".*", "packets/RIM could not be written by the run; run again, which says why")]
    public void A_person_whose_packet_was_not_written_is_named_with_what_to_do(string missing, string why)
    {
        using var run = new PostRun(first);
        foreach (var file in Directory.GetFiles(Path.Combine(run.Out, "packets"), "RIM" + missing)) File.Delete(file);
        var (status, output, _) = run.Send();
        Assert.Equal(1, status);
        Assert.Contains("RIM   revision 1  NOT SENT: " + why, output, StringComparison.Ordinal);
        Assert.Contains("1 not", output, StringComparison.Ordinal);
        Assert.False(File.Exists(Path.Combine(run.Out, "drafts", "RIM-revision-1.eml")));
    }

    [Fact]
    public void A_broken_template_sends_nothing_and_is_named()
    {
        using var run = new PostRun(first);
        using var templates = new TemporaryFolder();
        Directory.CreateDirectory(templates.Path);
        File.WriteAllText(Path.Combine(templates.Path, "mail.txt"), "Subject: x\n{{ legz }}");
        using var server = new LoopbackServer();
        var (status, _, errors) =
            run.Send("--templates", templates.Path, "--smtp", "127.0.0.1:" + server.Port.ToString(System.Globalization.CultureInfo.InvariantCulture));
        Assert.Equal(2, status);
        Assert.Contains("mail.txt", errors, StringComparison.Ordinal);
        Assert.Empty(server.Taken);
    }

    [Fact]
    public void Killed_in_the_middle_and_run_again_every_message_arrives_exactly_once()
    {
        using var run = new PostRun(first);
        using var reached = new SemaphoreSlim(0);
        var stops = new HashSet<string>(StringComparer.Ordinal) { "RIM", "TES", "VAR" };
        using var server = new LoopbackServer(refuses: to =>
        {
            if (!stops.Remove(to[..3].ToUpperInvariant())) return false;
            reached.Release();
            Thread.Sleep(1500);
            return false;
        });
        for (var kills = 0; kills < 3; kills++)
        {
            using var process = run.StartSending(server);
            Assert.True(reached.Wait(TimeSpan.FromSeconds(60)));
            process.Kill();
            process.WaitForExit();
        }

        using var last = run.StartSending(server);
        var output = last.StandardOutput.ReadToEnd();
        last.WaitForExit();
        Assert.Equal(0, last.ExitCode);
        Assert.DoesNotContain("may come twice", output, StringComparison.Ordinal);
        Assert.Equal(run.People, server.Taken.Select(mail => mail.To[..3].ToUpperInvariant()).Order(StringComparer.Ordinal));
        Assert.Equal(server.Taken.Length, server.Taken.Select(mail => mail.MessageId).Distinct(StringComparer.Ordinal).Count());
        Assert.All(server.Taken, mail =>
        {
            var person = mail.To[..3].ToUpperInvariant();
            Assert.Equal(PostRun.Packet(person), PostRun.Content(MimeMessage.Load(new MemoryStream(mail.Bytes)), $"packet-{person}.pdf"));
        });
        using var again = run.StartSending(server);
        Assert.Contains("0 sent.", again.StandardOutput.ReadToEnd(), StringComparison.Ordinal);
        Assert.Equal(run.People.Length, server.Taken.Length);
    }

    [Fact]
    public void Killed_while_the_answer_is_awaited_the_letter_is_sent_again_under_the_same_name_and_that_is_said()
    {
        using var run = new PostRun(first);
        using var reached = new SemaphoreSlim(0);
        using var server = new LoopbackServer((to, tries) =>
        {
            if (to.StartsWith("rim", StringComparison.Ordinal) && tries == 1)
            {
                reached.Release();
                Thread.Sleep(1500);
            }

            return null;
        });
        using (var process = run.StartSending(server))
        {
            Assert.True(reached.Wait(TimeSpan.FromSeconds(60)));
            process.Kill();
            process.WaitForExit();
        }

        using var last = run.StartSending(server);
        var output = last.StandardOutput.ReadToEnd();
        last.WaitForExit();
        Assert.Contains("this mail may come twice, with the same Message-ID", output, StringComparison.Ordinal);
        Assert.Equal(run.People, server.Taken.Select(mail => mail.To[..3].ToUpperInvariant()).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal));
        Assert.Equal(run.People.Length, server.Taken.Select(mail => mail.MessageId).Distinct(StringComparer.Ordinal).Count());
    }

    [SkippableFact]
    public void Interrupted_it_finishes_the_letter_at_hand_and_the_next_run_sends_the_rest_each_once()
    {
        Skip.IfNot(Watching.WatchedProgram.CanBeInterrupted, "interrupts do not reach a program that is started here");
        using var run = new PostRun(first);
        using var reached = new SemaphoreSlim(0);
        using var server = new LoopbackServer((to, tries) =>
        {
            if (to.StartsWith("rim", StringComparison.Ordinal) && tries == 1)
            {
                reached.Release();
                Thread.Sleep(2000);
            }

            return null;
        });
        using (var process = run.StartSending(server))
        {
            Assert.True(reached.Wait(TimeSpan.FromSeconds(60)));
            using var kill = System.Diagnostics.Process.Start("kill", ["-INT", process.Id.ToString(System.Globalization.CultureInfo.InvariantCulture)]);
            kill.WaitForExit();
            var said = process.StandardError.ReadToEnd();
            process.WaitForExit();
            Assert.Equal(1, process.ExitCode);
            Assert.Contains("Stopping when the letter at hand is done", said, StringComparison.Ordinal);
            Assert.InRange(server.Taken.Length, 1, run.People.Length - 1);
        }

        using var last = run.StartSending(server);
        var output = last.StandardOutput.ReadToEnd();
        last.WaitForExit();
        Assert.Equal(0, last.ExitCode);
        Assert.DoesNotContain("may come twice", output, StringComparison.Ordinal);
        Assert.Equal(run.People, server.Taken.Select(mail => mail.To[..3].ToUpperInvariant()).Order(StringComparer.Ordinal));
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void The_password_comes_from_the_environment_or_a_file_and_is_never_shown(bool isFromFile)
    {
        const string Password = "sand-and-7-gulls";
        using var run = new PostRun(first);
        using var server = new LoopbackServer(login: ("dispatch", Password));
        var file = Path.Combine(run.Out, "secret.txt");
        File.WriteAllText(file, (isFromFile ? Password : "wrong") + "\nsecond line\n");
        using (var wrong = run.StartSending(
            server, isFromFile ? null : "wrong", isFromFile ? ["--user", "somebody", "--password-file", file] : ["--user", "dispatch"]))
        {
            var said = wrong.StandardOutput.ReadToEnd() + wrong.StandardError.ReadToEnd();
            wrong.WaitForExit();
            Assert.Equal(1, wrong.ExitCode);
            Assert.Contains("did not take user and password", said, StringComparison.Ordinal);
            Assert.DoesNotContain(Password, said, StringComparison.Ordinal);
            Assert.Empty(server.Taken);
        }

        using var right = run.StartSending(
            server, isFromFile ? null : Password, isFromFile ? ["--user", "dispatch", "--password-file", file] : ["--user", "dispatch"]);
        Assert.DoesNotContain(Password, right.StandardOutput.ReadToEnd(), StringComparison.Ordinal);
        right.WaitForExit();
        Assert.Equal((0, run.People.Length), (right.ExitCode, server.Taken.Length));
    }

    [Fact]
    public void Two_at_once_do_not_send_twice()
    {
        using var run = new PostRun(first);
        using var reached = new SemaphoreSlim(0);
        using var server = new LoopbackServer(refuses: to =>
        {
            if (to.StartsWith("rim", StringComparison.Ordinal))
            {
                reached.Release();
                Thread.Sleep(3000);
            }

            return false;
        });
        using var sending = run.StartSending(server);
        Assert.True(reached.Wait(TimeSpan.FromSeconds(60)));
        var (status, _, errors) = run.Send("--smtp", "127.0.0.1:" + server.Port.ToString(System.Globalization.CultureInfo.InvariantCulture));
        Assert.Equal(2, status);
        Assert.Contains("another tripbatch is sending", errors, StringComparison.Ordinal);
        sending.StandardOutput.ReadToEnd();
        sending.WaitForExit();
        Assert.Equal((0, run.People.Length), (sending.ExitCode, server.Taken.Length));
    }
}
