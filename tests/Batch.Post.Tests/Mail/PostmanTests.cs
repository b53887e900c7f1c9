using System.Net;
using System.Net.Sockets;
using Batch.Testing;
using MimeKit;
using SmtpServer.Protocol;

namespace Batch.Post.Tests.Mail;

/// <summary>Sending through a real server on this machine.</summary>
public sealed class PostmanTests
{
    private const string Password = "sand-and-7-gulls";

    private static readonly SmtpResponse Busy = new(SmtpReplyCode.InsufficientStorage, "come back later");
    private static readonly SmtpResponse Never = new(SmtpReplyCode.TransactionFailed, "not wanted");
    private static readonly ImmutableArray<TimeSpan> Quick = [TimeSpan.FromMilliseconds(20), TimeSpan.FromMilliseconds(20)];

    [Fact]
    public void Every_letter_arrives_once_whole_and_the_ledger_says_so()
    {
        using var server = new LoopbackServer();
        using var folder = new TemporaryFolder();
        var deliveries = Send(server, folder, SomeLetter.Post("rim", "sor", "tes"));
        Assert.All(deliveries, delivery => Assert.Equal((DeliveryKind.Sent, false), (delivery.Kind, delivery.MayComeTwice)));
        Assert.Equal(["rim@harrow-sound.example", "sor@harrow-sound.example", "tes@harrow-sound.example"], server.Taken.Select(mail => mail.MessageId));
        Assert.All(server.Taken, mail =>
        {
            var message = MimeMessage.Load(new MemoryStream(mail.Bytes));
            Assert.Contains("\n.a line that begins with a dot", message.TextBody?.ReplaceLineEndings("\n"), StringComparison.Ordinal);
            Assert.Equal(SomeLetter.Noise(50_000), SomeLetter.Content((MimePart)message.Attachments.Single()));
        });
        Assert.All(Ledger(folder).Packets, packet => Assert.Equal(LedgerOutcome.Issued, packet.Outcome));
    }

    [Fact]
    public void A_server_that_is_busy_once_takes_the_letter_at_the_second_try()
    {
        using var server = new LoopbackServer((to, tries) => to.StartsWith("sor", StringComparison.Ordinal) && tries == 1 ? Busy : null);
        using var folder = new TemporaryFolder();
        var deliveries = Send(server, folder, SomeLetter.Post("rim", "sor", "tes"));
        Assert.All(deliveries, delivery => Assert.Equal((DeliveryKind.Sent, false), (delivery.Kind, delivery.MayComeTwice)));
        Assert.Equal(["rim", "tes", "sor"], server.Taken.Select(mail => mail.To[..3]));
    }

    [Fact]
    public void Before_each_pause_it_says_why_and_how_many_letters_are_left()
    {
        using var server = new LoopbackServer((to, _) => to.StartsWith("rim", StringComparison.Ordinal) ? null : Busy);
        using var folder = new TemporaryFolder();
        using var pen = LedgerPen.Open(folder.File("issued.jsonl"), SystemClock.Instance);
        var told = new List<(string Why, int Left, TimeSpan Pause)>();
        new Postman(Target(server), pen, Quick) { Waits = (why, left, pause) => told.Add((why, left, pause)) }
            .Send(SomeLetter.Post("rim", "sor", "tes"), new Silent(), CancellationToken.None);
        Assert.Equal(Quick, told.Select(pause => pause.Pause));
        Assert.All(told, pause => Assert.Equal(2, pause.Left));
        Assert.All(told, pause => Assert.Contains("come back later", pause.Why, StringComparison.Ordinal));
    }

    [Fact]
    public void A_server_that_stays_busy_leaves_the_letter_for_the_next_run()
    {
        using var server = new LoopbackServer((to, _) => to.StartsWith("sor", StringComparison.Ordinal) ? Busy : null);
        using var folder = new TemporaryFolder();
        var deliveries = Send(server, folder, SomeLetter.Post("rim", "sor"));
        Assert.Equal([DeliveryKind.Sent, DeliveryKind.NotSent], deliveries.Select(delivery => delivery.Kind));
        Assert.Contains("come back later", deliveries[1].Text, StringComparison.Ordinal);
        Assert.Null(Ledger(folder).LastIssued("sor"));
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void One_person_refused_for_good_does_not_stop_the_others(bool beforeTheMessage)
    {
        using var server = new LoopbackServer((to, _) => IsSor(to) ? Never : null, refuses: to => beforeTheMessage && IsSor(to));
        using var folder = new TemporaryFolder();
        var deliveries = Send(server, folder, SomeLetter.Post("rim", "sor", "tes"));
        Assert.Equal([DeliveryKind.Sent, DeliveryKind.Refused, DeliveryKind.Sent], deliveries.Select(delivery => delivery.Kind));
        Assert.Matches("^5[0-9][0-9] ", deliveries[1].Text);
        Assert.Equal(2, server.Taken.Length);
        Assert.Equal(LedgerOutcome.Refused, Assert.Single(Ledger(folder).Of("sor")).Outcome);
    }

    [Fact]
    public void Nobody_there_is_said_and_nothing_is_noted_as_sent()
    {
        using var folder = new TemporaryFolder();
        var deliveries = Send(new MailTarget { Host = "127.0.0.1", Port = 1, IsLoopback = true }, folder, SomeLetter.Post("rim"));
        Assert.Equal(DeliveryKind.NotSent, Assert.Single(deliveries).Kind);
        Assert.Empty(Ledger(folder).Packets);
    }

    [SkippableFact]
    public void Without_encryption_nothing_is_sent_to_another_machine()
    {
        Skip.If(LoopbackServer.OutsideAddress is null, "this machine has no address but its own");
        using var server = new LoopbackServer();
        using var folder = new TemporaryFolder();
        var deliveries = Send(Outside(server), folder, SomeLetter.Post("rim", "sor"));
        Assert.All(deliveries, delivery => Assert.Equal(DeliveryKind.NotSent, delivery.Kind));
        Assert.Contains("STARTTLS", deliveries[0].Text, StringComparison.Ordinal);
        Assert.Empty(server.Taken);
    }

    [SkippableFact]
    public void A_certificate_that_nobody_vouches_for_is_refused_on_another_machine()
    {
        Skip.If(LoopbackServer.OutsideAddress is null, "this machine has no address but its own");
        using var server = new LoopbackServer(hasCertificate: true);
        using var folder = new TemporaryFolder();
        var delivery = Assert.Single(Send(Outside(server), folder, SomeLetter.Post("rim")));
        Assert.Equal(DeliveryKind.NotSent, delivery.Kind);
        Assert.Contains("certificate", delivery.Text, StringComparison.Ordinal);
        Assert.Empty(server.Taken);
    }

    [Fact]
    public void On_this_machine_that_certificate_will_do()
    {
        using var server = new LoopbackServer(hasCertificate: true);
        using var folder = new TemporaryFolder();
        Assert.Equal(DeliveryKind.Sent, Assert.Single(Send(server, folder, SomeLetter.Post("rim"))).Kind);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void A_server_that_asks_for_a_password_takes_the_right_one_over_an_encrypted_connection(bool isEncryptedFromStart)
    {
        using var server = new LoopbackServer(login: ("dispatch", Password), isEncryptedFromStart: isEncryptedFromStart);
        using var folder = new TemporaryFolder();
        var deliveries = Send(LoggedIn(server, Password) with { IsEncryptedFromStart = isEncryptedFromStart }, folder, SomeLetter.Post("rim", "sor"));
        Assert.All(deliveries, delivery => Assert.Equal((DeliveryKind.Sent, false), (delivery.Kind, delivery.MayComeTwice)));
        Assert.Equal(["rim@harrow-sound.example", "sor@harrow-sound.example"], server.Taken.Select(mail => mail.MessageId));
    }

    [Theory]
    [InlineData("wrong")]
    [InlineData("")]
    public void With_a_wrong_password_or_none_nothing_is_sent_and_nothing_is_noted_as_sent(string password)
    {
        using var server = new LoopbackServer(login: ("dispatch", Password));
        using var folder = new TemporaryFolder();
        var deliveries = Send(password.Length > 0 ? LoggedIn(server, password) : Target(server), folder, SomeLetter.Post("rim", "sor"));
        Assert.All(deliveries, delivery => Assert.Equal(DeliveryKind.NotSent, delivery.Kind));
        Assert.All(deliveries, delivery => Assert.DoesNotContain(Password, delivery.Text, StringComparison.Ordinal));
        Assert.Contains(password.Length > 0 ? "did not take user and password" : "asks for user and password; none was given", deliveries[0].Text,
            StringComparison.Ordinal);
        Assert.Empty(server.Taken);
        Assert.Null(Ledger(folder).LastIssued("rim"));
        Assert.All(Ledger(folder).Packets, packet => Assert.NotEqual(LedgerOutcome.Unknown, packet.Outcome));
        Assert.All(Send(LoggedIn(server, Password), folder, SomeLetter.Post("rim", "sor")),
            delivery => Assert.Equal((DeliveryKind.Sent, false), (delivery.Kind, delivery.MayComeTwice)));
    }

    [Fact]
    public void Stopping_finishes_the_letter_at_hand_and_leaves_the_rest_for_the_next_run()
    {
        using var stop = new CancellationTokenSource();
        using var server = new LoopbackServer((to, _) =>
        {
            if (IsSor(to)) stop.Cancel();
            return null;
        });
        using var folder = new TemporaryFolder();
        var deliveries = Send(Target(server), folder, SomeLetter.Post("rim", "sor", "tes"), stop.Token);
        Assert.Equal([DeliveryKind.Sent, DeliveryKind.Sent, DeliveryKind.NotSent], deliveries.Select(delivery => delivery.Kind));
        Assert.Equal(2, server.Taken.Length);
    }

    [Fact]
    public async Task A_letter_whose_end_was_given_and_whose_answer_was_never_heard_is_sent_again_under_the_same_name_and_says_so()
    {
        using var deaf = new TcpListener(IPAddress.Loopback, 0);
        deaf.Start();
        var once = Task.Run(() => HangUpAfterTheEnd(deaf));
        using var folder = new TemporaryFolder();
        var target = new MailTarget { Host = "127.0.0.1", Port = ((IPEndPoint)deaf.LocalEndpoint).Port, IsLoopback = true };
        using (var pen = LedgerPen.Open(folder.File("issued.jsonl"), SystemClock.Instance))
        {
            var cut = Assert.Single(new Postman(target, pen, []).Send(SomeLetter.Post("rim"), new Silent(), CancellationToken.None));
            Assert.Equal((DeliveryKind.NotSent, true), (cut.Kind, cut.MayComeTwice));
        }

        await once.WaitAsync(TimeSpan.FromSeconds(10));
        Assert.Equal(LedgerOutcome.Unknown, Assert.Single(Ledger(folder).Packets).Outcome);
        using var server = new LoopbackServer();
        var again = Assert.Single(Send(server, folder, SomeLetter.Post("rim")));
        Assert.Equal((DeliveryKind.Sent, true), (again.Kind, again.MayComeTwice));
        Assert.Equal("rim@harrow-sound.example", Assert.Single(server.Taken).MessageId);
    }

    private static bool IsSor(string to) => to.StartsWith("sor", StringComparison.Ordinal);

    private static void HangUpAfterTheEnd(TcpListener listener)
    {
        using var client = listener.AcceptTcpClient();
        using var reader = new StreamReader(client.GetStream());
        using var writer = new StreamWriter(client.GetStream()) { NewLine = "\r\n", AutoFlush = true };
        writer.WriteLine("220 here");
        var isMessage = false;
        while (reader.ReadLine() is { } line)
        {
            if (isMessage && line == ".") return;
            if (isMessage) continue;
            isMessage = line.StartsWith("DATA", StringComparison.OrdinalIgnoreCase);
            writer.WriteLine(isMessage ? "354 go on" : "250 yes");
        }
    }

    private static MailTarget LoggedIn(LoopbackServer server, string password) => Target(server) with { User = "dispatch", Password = password };

    private static MailTarget Target(LoopbackServer server) => new() { Host = "127.0.0.1", Port = server.Port, IsLoopback = true };

    private static MailTarget Outside(LoopbackServer server) =>
        MailTarget.Parse(string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{LoopbackServer.OutsideAddress}:{server.Port}"))
            ?? throw new InvalidOperationException("No server.");

    private static Ledger Ledger(TemporaryFolder folder) => Batch.Post.Ledger.Read(folder.File("issued.jsonl"));

    private static ImmutableArray<Delivery> Send(LoopbackServer server, TemporaryFolder folder, (LedgerPacket Packet, MailLetter Letter)[] post) =>
        Send(Target(server), folder, post);

    private static ImmutableArray<Delivery> Send(MailTarget target, TemporaryFolder folder, (LedgerPacket Packet, MailLetter Letter)[] post,
        CancellationToken stop = default)
    {
        using var pen = LedgerPen.Open(folder.File("issued.jsonl"), SystemClock.Instance);
        return new Postman(target, pen, Quick).Send(post, new Silent(), stop);
    }

    private sealed class Silent : IProgress<Delivery>
    {
        public void Report(Delivery value)
        {
        }
    }
}
