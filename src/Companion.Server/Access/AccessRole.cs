namespace Companion.Server.Access;

/// <summary>Who holds a key. Each has one of its own, and what it opens.</summary>
public enum AccessRole
{
    /// <summary>Opens the panel, for everything.</summary>
    Presenter,

    /// <summary>Opens the panel, for looking on, and for putting things on air where the presenter allows it.</summary>
    CoHost,

    /// <summary>Opens the overlay and the stage, which only show.</summary>
    Overlay,

    /// <summary>Opens the audience's page where the presenter has it opened by its link.</summary>
    Viewer,
}
