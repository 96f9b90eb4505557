using System.Text.Json;
using System.Text.Json.Serialization;

namespace Companion.Server.Wire;

/// <summary>A set as the array of its members, in the set's order. Sets are only sent.</summary>
/// <typeparam name="TSet">The set.</typeparam>
/// <typeparam name="TMember">What it holds.</typeparam>
internal sealed class SetConverter<TSet, TMember> : JsonConverter<TSet>
    where TSet : IEnumerable<TMember>
{
    /// <inheritdoc/>
    public override TSet Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        throw new NotSupportedException("Sets are sent and never taken.");

    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter writer, TSet value, JsonSerializerOptions options)
    {
        writer.WriteStartArray();
        foreach (var member in value)
            JsonSerializer.Serialize(writer, member, options);
        writer.WriteEndArray();
    }
}
