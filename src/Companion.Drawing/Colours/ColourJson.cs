using System.Text.Json;
using System.Text.Json.Serialization;

namespace Companion.Drawing.Colours;

internal sealed class ColourJson : JsonConverter<Colour>
{
    public override Colour Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        Colour.TryParse(reader.GetString(), out var colour)
            ? colour
            : throw new JsonException($"'{reader.GetString()}' is not a colour such as #0072B2.");

    public override void Write(Utf8JsonWriter writer, Colour value, JsonSerializerOptions options) =>
        writer.WriteStringValue(value.ToString());
}
