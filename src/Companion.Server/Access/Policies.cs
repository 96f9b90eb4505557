namespace Companion.Server.Access;

/// <summary>What a key must be good for.</summary>
internal static class Policies
{
    /// <summary>The presenter's or a co-host's.</summary>
    public const string Desk = "desk";

    /// <summary>The overlay's.</summary>
    public const string Overlay = "overlay";

    /// <summary>A viewer's.</summary>
    public const string Viewer = "viewer";
}
