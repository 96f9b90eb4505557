namespace Companion.Session.Audience;

/// <summary>Who may open the audience's page. The default value lets nobody in.</summary>
public enum AudienceDoor
{
    /// <summary>Nobody.</summary>
    Closed,

    /// <summary>Whoever has its link, which carries the audience's key.</summary>
    ByLink,

    /// <summary>Everybody who reaches the companion, without a key.</summary>
    Open,
}
