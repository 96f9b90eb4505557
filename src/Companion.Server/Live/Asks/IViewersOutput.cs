using Companion.Session.Views;

namespace Companion.Server.Live.Asks;

/// <summary>Where is shown what comes of viewers' asks.</summary>
internal interface IViewersOutput
{
    /// <summary>Takes the newest view. Never waits.</summary>
    /// <param name="view">The view.</param>
    void Show(ViewersView view);
}
