namespace Companion.Server.Access;

/// <summary>What a key must be good for.</summary>
internal static class Policies
{
    /// <summary>The presenter's.</summary>
    public const string Presenter = "presenter";

    /// <summary>A co-host's.</summary>
    public const string CoHost = "co-host";

    /// <summary>The overlay's.</summary>
    public const string Overlay = "overlay";
}
