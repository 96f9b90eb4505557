using System.Text.Json;
using System.Text.Json.Serialization;

namespace Companion.Session.Tests.Views;

/// <summary>A view as text, every public property of it, with the engine's small values written as people read them.</summary>
internal static class PlainJson
{
    private static readonly JsonSerializerOptions Options = new()
    {
        Converters = { new AsText() },
        Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>
    /// The view as JSON, with the properties of the type that a value has and not of the type that it is declared as.
    /// </summary>
    public static string Of(object view) => JsonSerializer.Serialize(view, view.GetType(), Options);

    // Cells, digits, houses, regions and sets of them know each other in circles.
    private sealed class AsText : JsonConverterFactory
    {
        public override bool CanConvert(Type typeToConvert) =>
            typeToConvert == typeof(Engine.Proofs.Hint)
            || (typeToConvert.IsValueType && typeToConvert.Namespace == typeof(Engine.Cell).Namespace)
            || typeToConvert == typeof(Engine.Proofs.Region);

        public override JsonConverter CreateConverter(Type typeToConvert, JsonSerializerOptions options) =>
            typeToConvert == typeof(Engine.Proofs.Hint)
                ? new AsItself()
                : (JsonConverter)Activator.CreateInstance(typeof(Writer<>).MakeGenericType(typeToConvert))!;
    }

    private sealed class AsItself : JsonConverter<Engine.Proofs.Hint>
    {
        public override Engine.Proofs.Hint Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
            throw new NotSupportedException();

        public override void Write(Utf8JsonWriter writer, Engine.Proofs.Hint value, JsonSerializerOptions options) =>
            JsonSerializer.Serialize(writer, value, value.GetType(), options);
    }

    private sealed class Writer<T> : JsonConverter<T>
    {
        public override T Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
            throw new NotSupportedException();

        public override void Write(Utf8JsonWriter writer, T value, JsonSerializerOptions options) =>
            writer.WriteStringValue(value!.ToString());
    }
}
