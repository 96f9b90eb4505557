using System.Text.Json;
using System.Text.Json.Serialization;
using Companion.Engine.Proofs;

namespace Companion.Server.Wire;

/// <summary>A grade as a number, 1 to 4.</summary>
internal sealed class GradeConverter : JsonConverter<Grade>
{
    /// <inheritdoc/>
    public override Grade Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        (Grade)reader.GetInt32() is var grade && Enum.IsDefined(grade) ? grade : throw new JsonException("A grade is a number from 1 to 4.");

    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter writer, Grade value, JsonSerializerOptions options) =>
        writer.WriteNumberValue((int)value);
}
