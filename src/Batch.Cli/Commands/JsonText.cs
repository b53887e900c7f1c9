using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace Batch.Cli.Commands;

/// <summary>JSON for the terminal: indented, letters of any language as they are.</summary>
internal static class JsonText
{
    private static readonly JsonWriterOptions Options = new() { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>One object.</summary>
    /// <param name="write">Writes what is in it.</param>
    public static string Of(Action<Utf8JsonWriter> write)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, Options))
        {
            json.WriteStartObject();
            write(json);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.ToArray());
    }
}
