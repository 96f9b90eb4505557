using Companion.Session.Views;

namespace Companion.Server.Live.Audience;

/// <summary>What any viewer can be told without asking.</summary>
public interface IAudienceClient
{
    /// <summary>Which puzzle it is.</summary>
    /// <param name="view">The view.</param>
    Task Viewer(ViewerView view);
}
