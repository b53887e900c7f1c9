using System.Diagnostics;
using System.Text;
using Batch.Testing;
using MimeKit;

namespace Batch.EndToEnd.Tests;

/// <summary>A run of the sample week as CSV, small enough to run often, whose packets are stood in for by bytes that are easily known again.</summary>
public sealed class PostRun : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    /// <param name="first">The run it begins as a copy of; null to make one.</param>
    /// <param name="typed">Typed into the cells of the sample before the run that is made.</param>
    public PostRun(First? first = null, params (string Cell, string Value)[] typed)
    {
        CsvCells.Copy(RepositoryRoot.PathOf("input-samples/csv"), Books);
        CsvCells.Type(Books, typed);
        if (first is null) Run();
        else Copy(first.Run.Out, Out);
    }

    public string Books => Path.Combine(_folder.Path, "books");

    public string Out => Path.Combine(_folder.Path, "out");

    public string Ledger => Path.Combine(_folder.Path, "out-issued.jsonl");

    /// <summary>Persons who get a packet.</summary>
    public string[] People =>
        [.. Directory.GetFiles(Path.Combine(Out, "calendar"), "*.ics").Select(file => Path.GetFileNameWithoutExtension(file)).Order(StringComparer.Ordinal)];

    /// <summary>Runs the books, and gives every person a packet.</summary>
    public string Run(string madeAt = SampleRun.MadeAt)
    {
        var (_, output, errors) =
            SampleRun.Run("run", Path.Combine(Books, "operator"), Path.Combine(Books, "week"), "--out", Out, "--no-pdf", "--made-at", madeAt);
        Assert.DoesNotContain("fault", errors, StringComparison.Ordinal);
        Directory.CreateDirectory(Path.Combine(Out, "packets"));
        foreach (var person in People) File.WriteAllBytes(Path.Combine(Out, "packets", person + ".pdf"), Packet(person));
        return output;
    }

    /// <summary>Types values into cells and runs again.</summary>
    public string Change(params (string Cell, string Value)[] changes)
    {
        CsvCells.Type(Books, changes);
        return Run();
    }

    public (int Status, string Output, string Errors) Send(params string[] options) => SampleRun.Run(["send", Out, .. options]);

    /// <summary>The real program in a process of its own.</summary>
    /// <param name="server">Where it sends to.</param>
    /// <param name="password">Set in the environment; null for none.</param>
    /// <param name="options">Further options.</param>
    public Process StartSending(LoopbackServer server, string? password = null, params string[] options)
    {
        var start = new ProcessStartInfo(
            Path.Combine(AppContext.BaseDirectory, OperatingSystem.IsWindows() ? "tripbatch.exe" : "tripbatch"))
        {
            UseShellExecute = false,
            RedirectStandardOutput = true,
            RedirectStandardError = true
        };
        string[] words = ["send", Out, "--smtp", "127.0.0.1:" + server.Port.ToString(System.Globalization.CultureInfo.InvariantCulture), .. options];
        foreach (var word in words) start.ArgumentList.Add(word);
        if (password is not null) start.Environment["TRIPBATCH_SMTP_PASSWORD"] = password;
        return Process.Start(start) ?? throw new InvalidOperationException("The program does not start.");
    }

    public MimeMessage Draft(string person, int revision = 1) =>
        MimeMessage.Load(Path.Combine(Out, "drafts", $"{person}-revision-{revision.ToString(System.Globalization.CultureInfo.InvariantCulture)}.eml"));

    public static byte[] Packet(string person) => Encoding.UTF8.GetBytes("%PDF stand-in for " + person + new string('z', 30_000));

    public static byte[] Content(MimeMessage message, string name)
    {
        using var bytes = new MemoryStream();
        message.Attachments.OfType<MimePart>().Single(part => part.FileName == name).Content?.DecodeTo(bytes);
        return bytes.ToArray();
    }

    public void Dispose() => _folder.Dispose();

    private static void Copy(string from, string to)
    {
        foreach (var file in Directory.EnumerateFiles(from, "*", SearchOption.AllDirectories))
        {
            var copy = Path.Combine(to, Path.GetRelativePath(from, file));
            Directory.CreateDirectory(Path.GetDirectoryName(copy) ?? to);
            File.Copy(file, copy);
        }
    }

    /// <summary>The run that all tests of a class begin with.</summary>
    public sealed class First : IDisposable
    {
        internal PostRun Run { get; } = new();

        public void Dispose() => Run.Dispose();
    }
}
