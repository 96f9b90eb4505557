using System.Collections.Immutable;

namespace Companion.Server.Access;

/// <summary>Where the hubs are. Each role that has rights of its own has a path of its own, to which its cookie alone is sent.</summary>
internal static class HubPaths
{
    /// <summary>Where all hubs are.</summary>
    public const string All = "/hubs";

    /// <summary>The desk's hub for the presenter.</summary>
    public const string Presenter = "/hubs/presenter";

    /// <summary>The desk's hub for the co-hosts.</summary>
    public const string Desk = "/hubs/desk";

    /// <summary>The hub of the overlay and the stage.</summary>
    public const string Overlay = "/hubs/overlay";

    /// <summary>The audience's hub.</summary>
    public const string Audience = "/hubs/audience";

    /// <summary>Behind the path of a role's hub: where its pages replay stored shows. The cookie of the hub is sent there too.</summary>
    public const string Replay = "/replay";

    /// <summary>Whether a role's key opens a hub: that of the role, or one behind it.</summary>
    /// <param name="role">Whose key.</param>
    /// <param name="hub">The path of the hub.</param>
    public static bool IsOf(AccessRole role, string hub) => hub == Of(role) || hub == Of(role) + Replay;
    /// <summary>Where the presenter's panel posts pictures of its grid; under its hub, whose cookie is sent there.</summary>
    public const string Screen = Presenter + "/screen";

    /// <summary>Where the presenter's panel posts a whole picture in which to look for a grid.</summary>
    public const string ScreenGrid = Screen + "/grid";

    /// <summary>All of them, in the order of the roles that open them.</summary>
    public static ImmutableArray<string> Each { get; } = [Presenter, Desk, Overlay, Audience];

    /// <summary>The hub that a role's key opens.</summary>
    /// <param name="role">Whose key.</param>
    public static string Of(AccessRole role) => role switch
    {
        AccessRole.Presenter => Presenter,
        AccessRole.CoHost => Desk,
        AccessRole.Overlay => Overlay,
        AccessRole.Viewer => Audience,
        _ => throw new ArgumentOutOfRangeException(nameof(role), role, "There is no such role."),
    };
}
