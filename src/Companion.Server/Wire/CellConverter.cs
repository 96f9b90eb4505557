using System.Text.Json;
using System.Text.Json.Serialization;
using Companion.Engine;

namespace Companion.Server.Wire;

/// <summary>A cell as its name, <c>r4c7</c>.</summary>
internal sealed class CellConverter : JsonConverter<Cell>
{
    /// <inheritdoc/>
    public override Cell Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        Cell.TryParse(reader.GetString(), out var cell) ? cell : throw new JsonException("A cell is a text such as r4c7.");

    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter writer, Cell value, JsonSerializerOptions options) =>
        writer.WriteStringValue(value.ToString());
}
