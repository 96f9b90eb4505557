using System.Text.Json;
using System.Text.Json.Serialization;
using Companion.Engine.Proofs;

namespace Companion.Server.Wire;

/// <summary>A rule as its name, such as <c>xy-wing</c>.</summary>
internal sealed class RuleIdConverter : JsonConverter<RuleId>
{
    /// <inheritdoc/>
    public override RuleId Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        new(reader.GetString() ?? "");

    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter writer, RuleId value, JsonSerializerOptions options) =>
        writer.WriteStringValue(value.Value);
}
