using System.Text;
using Ical.Net;

namespace Batch.Post.Tests.Calendars;

/// <summary>Calendar files, read back by another library and by Debian's python3-icalendar.</summary>
public sealed class CalendarFileTests
{
    private static readonly Instant MadeAt = Instant.FromUtc(2026, 12, 3, 15, 0);

    [Fact]
    public void Every_line_ends_with_CR_LF_and_is_at_most_75_octets_of_whole_characters()
    {
        var file = Write(Event() with { Summary = string.Concat(Enumerable.Repeat("Zoë 😀 ", 40)) });
        var text = new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(file);
        Assert.EndsWith("END:VCALENDAR\r\n", text, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', text.Replace("\r\n", "", StringComparison.Ordinal));
        Assert.All(text.Split("\r\n"), line =>
        {
            Assert.InRange(Encoding.UTF8.GetByteCount(line), 0, 75);
            Assert.DoesNotContain(line.EnumerateRunes(), rune => rune == Rune.ReplacementChar);
        });
        Assert.Contains(text.Split("\r\n"), line => Encoding.UTF8.GetByteCount(line) >= 72);
    }

    [Theory]
    [InlineData("a; b, c \\ d", "a; b, c \\ d")]
    [InlineData("first\r\nsecond\nthird", "first\nsecond\nthird")]
    [InlineData("bell\u0007 and tab\tend", "bell and tab end")]
    [InlineData("END:VEVENT\r\nBEGIN:VEVENT", "END:VEVENT\nBEGIN:VEVENT")]
    public void Any_text_comes_back_as_it_was_written(string written, string read)
    {
        var item = Assert.Single(Read(Write(Event() with { Summary = written, Description = written, Location = written })).Events);
        Assert.Equal(read, item.Summary);
        Assert.Equal(read, item.Description);
        Assert.Equal(read, item.Location);
    }

    [Fact]
    public void Uid_sequence_status_and_method_are_read_back()
    {
        var file = Read(Write(Event() with { Sequence = 3, IsCancelled = true }));
        var item = Assert.Single(file.Events);
        Assert.Equal(("PUBLISH", "T1-1@harrow-sound.example", 3, "CANCELLED"), (file.Method, item.Uid, item.Sequence, item.Status));
        Assert.Equal("mailto:ops@harrow-sound.example", item.Organizer?.Value?.ToString());
        Assert.Equal(MadeAt.ToDateTimeUtc(), item.DtStamp?.AsUtc);
    }

    [Fact]
    public void Without_an_address_of_the_operator_no_method_is_named()
    {
        var text = Encoding.UTF8.GetString(CalendarFile.Write("RIM", "Harrow", "", CalendarMethod.Publish, MadeAt, [Event()]));
        Assert.DoesNotContain("METHOD", text, StringComparison.Ordinal);
        Assert.DoesNotContain("ORGANIZER", text, StringComparison.Ordinal);
    }

    [Fact]
    public void The_name_of_the_organizer_cannot_break_out_of_its_quotation_marks()
    {
        var text = Encoding.UTF8.GetString(
            CalendarFile.Write("RIM", "Harrow\"\r\nSUMMARY:x", "ops@harrow-sound.example", CalendarMethod.Publish, MadeAt, [Event()]));
        Assert.Contains("ORGANIZER;CN=\"Harrow'SUMMARY:x\":mailto:", text.Replace("\r\n ", "", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("America/New_York", "2026-12-07T14:30:00Z")]
    [InlineData("America/New_York", "2026-07-07T14:30:00Z")]
    [InlineData("Asia/Kathmandu", "2026-12-07T14:30:00Z")]
    [InlineData("Europe/Dublin", "2026-12-07T14:30:00Z")]
    [InlineData("Europe/Dublin", "2026-07-07T14:30:00Z")]
    [InlineData("Australia/Lord_Howe", "2026-12-07T14:30:00Z")]
    [InlineData("Africa/Casablanca", "2026-02-20T14:30:00Z")]
    [InlineData("America/New_York", "2026-11-01T05:30:00Z")]
    [InlineData("America/New_York", "2026-11-01T06:30:00Z")]
    [InlineData("UTC", "2026-12-07T14:30:00Z")]
    public void A_reader_that_knows_only_the_file_finds_the_same_instants(string zone, string at)
    {
        var start = At(zone, at);
        var item = Event() with { Start = start, End = start.PlusHours(3) };
        var text = Encoding.UTF8.GetString(Write(item));
        Assert.Equal(start.ToInstant(), InstantByFile(text, "DTSTART"));
        Assert.Equal(item.End.ToInstant(), InstantByFile(text, "DTEND"));
    }

    [Fact]
    public void Another_library_finds_the_same_instants()
    {
        var item = Assert.Single(Read(Write(Event())).Events);
        Assert.Equal(Event().Start.ToDateTimeUtc(), item.Start?.AsUtc);
        Assert.Equal(Event().End.ToDateTimeUtc(), item.End?.AsUtc);
    }

    [Fact]
    public void A_reader_that_keeps_the_highest_sequence_follows_an_update_and_a_cancellation()
    {
        var first = Event();
        var later = first with { Sequence = 1, Start = first.Start.PlusHours(1), End = first.End.PlusHours(1) };
        var cancel = later with { Sequence = 2, IsCancelled = true };
        var kept = new Dictionary<string, Ical.Net.CalendarComponents.CalendarEvent>(StringComparer.Ordinal);
        foreach (var file in new[] { Write(first), Write(later),
            CalendarFile.Write("RIM", "Harrow", "ops@harrow-sound.example", CalendarMethod.Cancel, MadeAt, [cancel]), Write(first) })
        {
            foreach (var item in Read(file).Events)
            {
                Assert.NotNull(item.Uid);
                if (!kept.TryGetValue(item.Uid, out var held) || item.Sequence >= held.Sequence) kept[item.Uid] = item;
            }
        }

        var left = Assert.Single(kept).Value;
        Assert.Equal("CANCELLED", left.Status);
        Assert.Equal(later.Start.ToDateTimeUtc(), left.Start?.AsUtc);
    }

    [SkippableFact]
    public void Debians_reader_accepts_the_file_and_finds_the_same()
    {
        const string Script =
            """
            import sys, icalendar
            calendar = icalendar.Calendar.from_ical(sys.stdin.buffer.read())
            for item in calendar.walk('VEVENT'):
                utc = item['DTSTART'].dt.astimezone(__import__('datetime').timezone.utc)
                print(item['UID'], item['SEQUENCE'], item['STATUS'], utc.strftime('%Y-%m-%dT%H:%M:%SZ'), item['SUMMARY'], len(calendar.walk('VTIMEZONE')), sep='|')
            """;
        Skip.IfNot(PythonReader.IsInstalled, "python3-icalendar is not installed");
        var read = PythonReader.Run(Script, Write(Event() with { Sequence = 2, IsCancelled = true, Summary = "Zoë; 😀, " + new string('é', 80) }));
        Assert.Equal($"T1-1@harrow-sound.example|2|CANCELLED|2026-12-07T19:30:00Z|Zoë; 😀, {new string('é', 80)}|2\n", read);
    }

    private static CalendarEvent Event() => new()
    {
        Uid = "T1-1@harrow-sound.example",
        Sequence = 0,
        Start = At("America/New_York", "2026-12-07T19:30:00Z"),
        End = At("Asia/Kathmandu", "2026-12-07T22:00:00Z"),
        Summary = "T1/1 XAND-XBEL",
    };

    private static ZonedDateTime At(string zone, string at) => NodaTime.Text.InstantPattern.General.Parse(at).Value.InZone(DateTimeZoneProviders.Tzdb[zone]);

    private static byte[] Write(CalendarEvent item) =>
        CalendarFile.Write("Flights of RIM", "Harrow Sound", "ops@harrow-sound.example", CalendarMethod.Publish, MadeAt, [item]);

    private static Calendar Read(byte[] file) => Calendar.Load(Encoding.UTF8.GetString(file)) ?? throw new InvalidOperationException("No calendar.");

    /// <summary>
    /// The instant of a property of the event by the offsets that the file itself gives: those of the last stretch whose beginning the clock has reached.
    /// </summary>
    private static Instant InstantByFile(string text, string property)
    {
        var line = text[text.IndexOf("BEGIN:VEVENT", StringComparison.Ordinal)..].Split("\r\n")
            .First(line => line.StartsWith(property, StringComparison.Ordinal));
        var value = line[(line.LastIndexOf(':') + 1)..];
        if (value.EndsWith('Z')) return NodaTime.Text.InstantPattern.CreateWithInvariantCulture("uuuuMMdd'T'HHmmss'Z'").Parse(value).Value;
        var zone = Assert.Single(Calendar.Load(text)!.TimeZones, zone => line.Contains("TZID=" + zone.TzId + ":", StringComparison.Ordinal));
        var stretch = zone.TimeZoneInfos.OrderBy(Begins).Last(info => Local(value) >= Begins(info));
        return Local(value).InZoneStrictly(DateTimeZone.ForOffset(Offset.FromTimeSpan(stretch.OffsetTo?.Offset ?? default))).ToInstant();
    }

    private static LocalDateTime Begins(Ical.Net.VTimeZoneInfo info) => LocalDateTime.FromDateTime(info.Start?.Value ?? default);

    private static LocalDateTime Local(string value) => NodaTime.Text.LocalDateTimePattern.CreateWithInvariantCulture("uuuuMMdd'T'HHmmss").Parse(value).Value;
}
