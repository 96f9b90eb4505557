using Companion.Session.State;

namespace Companion.Session.Asks.Delays;

/// <summary>
/// What was shown of late, so that viewers can be answered from the board that they see. A puzzle loaded and an entry taken back
/// come through it as late as all else.
/// </summary>
public sealed class DelayLine
{
    /// <summary>
    /// How many states are kept. A key held down makes some 30 entries a second, and the longest delay is a minute.
    /// </summary>
    public const int Longest = 4096;

    private readonly LinkedList<(DateTimeOffset At, SessionState State)> _shown = new();

    /// <summary>Keeps a state.</summary>
    /// <param name="state">The state.</param>
    /// <param name="at">When it was shown; not before the one before it.</param>
    public void Show(SessionState state, DateTimeOffset at)
    {
        _shown.AddLast((at, state));

        // The last one that is older than the longest delay is what the slowest viewer sees.
        var oldest = at - TimeSpan.FromSeconds(Delay.MostSeconds);
        while (_shown.Count > Longest || _shown.First?.Next is { } second && second.Value.At <= oldest)
            _shown.RemoveFirst();
    }

    /// <summary>
    /// What could be seen at a moment: the last state shown until then. Null where that is not known: nothing had been shown, or
    /// too much has been since.
    /// </summary>
    public SessionState? At(DateTimeOffset moment)
    {
        for (var shown = _shown.Last; shown is not null; shown = shown.Previous)
        {
            if (shown.Value.At <= moment)
                return shown.Value.State;
        }

        return null;
    }

    /// <summary>When the first state was shown that could not be seen at a moment yet, or null where there is none.</summary>
    public DateTimeOffset? After(DateTimeOffset moment)
    {
        DateTimeOffset? first = null;
        for (var shown = _shown.Last; shown?.Value.At > moment; shown = shown.Previous)
            first = shown.Value.At;
        return first;
    }
}
