using Companion.Engine.Rules;
using Companion.Session.Planning;
using Companion.Session.State;

namespace Companion.Server.Live.Loop;

/// <summary>Forecasts the featured rules.</summary>
/// <param name="ladder">The whole ladder.</param>
internal sealed class OutlookWorker(Ladder ladder) : IWorker<Outlook>
{
    private Outlook? _previous;

    /// <inheritdoc/>
    public IEnumerable<Outlook> WorkOut(SessionState state, CancellationToken cancel)
    {
        _previous = Outlook.Of(state, ladder, _previous, cancel);
        yield return _previous;
    }
}
