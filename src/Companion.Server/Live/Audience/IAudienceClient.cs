using Companion.Session.Audience;

namespace Companion.Server.Live.Audience;

/// <summary>What a viewer's page can be told without asking. Each is a whole view; a lost one is healed by the next.</summary>
public interface IAudienceClient
{
    /// <summary>The board of some time ago, and how far viewers may ask.</summary>
    /// <param name="view">The view.</param>
    Task Board(AudienceView view);
}
