using Companion.Session.Audience;

namespace Companion.Server.Live.Audience;

/// <summary>Where the audience's views come from: the session of this program, or another one that it follows.</summary>
internal interface IAudienceBoards
{
    /// <summary>The newest view.</summary>
    AudienceView Current { get; }

    /// <summary>Why nobody can be let in now, in one plain sentence; null as a rule.</summary>
    string? Away => null;
}
