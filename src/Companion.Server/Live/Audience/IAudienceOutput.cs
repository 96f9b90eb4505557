using Companion.Session.Audience;

namespace Companion.Server.Live.Audience;

/// <summary>Somebody who is told each view of the audience, one after the other by their numbers.</summary>
internal interface IAudienceOutput
{
    /// <summary>Takes the newest view. Never waits.</summary>
    /// <param name="view">The view.</param>
    void Show(AudienceView view);
}
