using System.Text.Json;
using System.Text.Json.Serialization;

namespace Batch.Post.Ledgers;

/// <summary>An instant that may be null. A converter of its own: a program compiled ahead cannot put one together while it runs.</summary>
internal sealed class OptionalInstantJson : JsonConverter<Instant?>
{
    private static readonly InstantJson Known = new();

    public override Instant? Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        reader.TokenType == JsonTokenType.Null ? null : Known.Read(ref reader, typeof(Instant), options);

    public override void Write(Utf8JsonWriter writer, Instant? value, JsonSerializerOptions options)
    {
        if (value is { } known) Known.Write(writer, known, options);
        else writer.WriteNullValue();
    }
}
