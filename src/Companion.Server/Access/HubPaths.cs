namespace Companion.Server.Access;

/// <summary>Where the hubs are, and which of them a role's key opens.</summary>
internal static class HubPaths
{
    /// <summary>Where all hubs are.</summary>
    public const string All = "/hubs";

    /// <summary>The hub of the presenter and the co-hosts.</summary>
    public const string Desk = "/hubs/desk";

    /// <summary>The hub of the overlay and the stage.</summary>
    public const string Overlay = "/hubs/overlay";

    /// <summary>The audience's hub.</summary>
    public const string Audience = "/hubs/audience";

    /// <summary>The hub that a role's key opens.</summary>
    /// <param name="role">Whose key.</param>
    public static string Of(AccessRole role) => role switch
    {
        AccessRole.Presenter or AccessRole.CoHost => Desk,
        AccessRole.Overlay => Overlay,
        AccessRole.Viewer => Audience,
        _ => throw new ArgumentOutOfRangeException(nameof(role), role, "There is no such role."),
    };
}
