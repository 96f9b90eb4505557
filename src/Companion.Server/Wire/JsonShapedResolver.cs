using System.Text.Json;
using MessagePack;
using MessagePack.Formatters;

namespace Companion.Server.Wire;

/// <summary>
/// MessagePack in the same shape as JSON: what <see cref="WireJson"/> would write as an object becomes a map with the same names. One
/// description of the wire serves both protocols, and a page cannot tell them apart.
/// </summary>
/// <param name="options">The shape.</param>
internal sealed class JsonShapedResolver(JsonSerializerOptions options) : IFormatterResolver
{
    /// <inheritdoc/>
    public IMessagePackFormatter<T> GetFormatter<T>() => new JsonShapedFormatter<T>(options);
}
