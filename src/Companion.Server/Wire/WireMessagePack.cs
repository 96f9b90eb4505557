using MessagePack;

namespace Companion.Server.Wire;

/// <summary>The MessagePack options of the hubs.</summary>
internal static class WireMessagePack
{
    /// <summary>The options: the shape of JSON, and care with what comes in.</summary>
    public static MessagePackSerializerOptions Options { get; } = MessagePackSerializerOptions.Standard
        .WithResolver(new JsonShapedResolver(WireJson.Options))
        .WithSecurity(MessagePackSecurity.UntrustedData);
}
