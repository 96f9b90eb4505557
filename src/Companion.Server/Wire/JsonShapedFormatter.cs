using System.Text.Json;
using MessagePack;
using MessagePack.Formatters;

namespace Companion.Server.Wire;

/// <summary>Writes any value as the MessagePack form of its JSON, and reads it back the same way.</summary>
/// <typeparam name="T">The value's type.</typeparam>
/// <param name="shape">How the value looks in JSON.</param>
internal sealed class JsonShapedFormatter<T>(JsonSerializerOptions shape) : IMessagePackFormatter<T>
{
    /// <inheritdoc/>
    public void Serialize(ref MessagePackWriter writer, T value, MessagePackSerializerOptions options)
    {
        var bytes = JsonSerializer.SerializeToUtf8Bytes(value, shape);
        var reader = new Utf8JsonReader(bytes);
        reader.Read();
        Write(ref writer, JsonElement.ParseValue(ref reader));
    }

    /// <inheritdoc/>
    public T Deserialize(ref MessagePackReader reader, MessagePackSerializerOptions options)
    {
        using var text = new StringWriter();
        MessagePackSerializer.ConvertToJson(ref reader, text, options);
        return JsonSerializer.Deserialize<T>(text.ToString(), shape)!;
    }

    private static void Write(ref MessagePackWriter writer, JsonElement element)
    {
        switch (element.ValueKind)
        {
            case JsonValueKind.Object:
                writer.WriteMapHeader(element.GetPropertyCount());
                foreach (var member in element.EnumerateObject())
                {
                    writer.Write(member.Name);
                    Write(ref writer, member.Value);
                }

                break;
            case JsonValueKind.Array:
                writer.WriteArrayHeader(element.GetArrayLength());
                foreach (var member in element.EnumerateArray())
                    Write(ref writer, member);
                break;
            case JsonValueKind.String:
                writer.Write(element.GetString());
                break;
            case JsonValueKind.Number when element.TryGetInt64(out var whole):
                writer.Write(whole);
                break;
            case JsonValueKind.Number:
                writer.Write(element.GetDouble());
                break;
            case JsonValueKind.True or JsonValueKind.False:
                writer.Write(element.GetBoolean());
                break;
            default:
                writer.WriteNil();
                break;
        }
    }
}
