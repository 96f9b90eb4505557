using System.Text.Json;
using System.Text.Json.Serialization;
using Companion.Engine;

namespace Companion.Server.Wire;

/// <summary>A digit as a number, 1 to 9.</summary>
internal sealed class DigitConverter : JsonConverter<Digit>
{
    /// <inheritdoc/>
    public override Digit Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        reader.GetInt32() is var value and >= 1 and <= Digit.Count
            ? Digit.Of(value)
            : throw new JsonException("A digit is a number from 1 to 9.");

    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter writer, Digit value, JsonSerializerOptions options) =>
        writer.WriteNumberValue(value.Value);
}
