using System.Text.Json;
using System.Text.Json.Serialization;
using NodaTime.Text;

namespace Batch.Post.Ledgers;

/// <summary>Instants as <c>2026-12-07T14:30:00Z</c>.</summary>
internal sealed class InstantJson : JsonConverter<Instant>
{
    public override Instant Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        InstantPattern.ExtendedIso.Parse(reader.GetString() ?? "") is { Success: true } read ? read.Value : throw new JsonException("An instant was expected.");

    public override void Write(Utf8JsonWriter writer, Instant value, JsonSerializerOptions options) =>
        writer.WriteStringValue(InstantPattern.ExtendedIso.Format(value));
}
