using Companion.Session.Asks;
using Companion.Session.Asks.Delays;
using Companion.Session.State;

namespace Companion.Session.Audience;

/// <summary>
/// What viewers are shown, one view after the other: never anything that happened later than the delay ago. What the presenter sets
/// about viewers holds at once. Knows no clock: times come in, and do not go back.
/// </summary>
/// <param name="settings">Delay and limits, as long as the presenter sets no others.</param>
/// <param name="door">Who may open the page, as long as the presenter says nothing else.</param>
/// <remarks>Not for several threads at once. Its memory is bounded.</remarks>
public sealed class AudienceFeed(AskSettings settings, AudienceDoor door)
{
    private readonly DelayLine _line = new();
    private AskRules _rules = AskRules.AsSet;
    private AudienceView _last = new(0, AudienceDoor.Closed, 0, settings.Limits, IsQuiet: false, null, null);

    private Delay Delay => _rules.Delay ?? settings.Delay;

    /// <summary>Keeps what is shown from now on.</summary>
    /// <param name="state">The state.</param>
    /// <param name="at">When it was shown.</param>
    public void Show(SessionState state, DateTimeOffset at)
    {
        ArgumentNullException.ThrowIfNull(state);
        _rules = state.Asks;
        _line.Show(state, at);
    }

    /// <summary>The view at a moment; the one before, where nothing in it differs.</summary>
    /// <param name="now">The moment.</param>
    public AudienceView At(DateTimeOffset now)
    {
        var view = Make(now);
        return view == _last ? _last : _last = view with { Sequence = _last.Sequence + 1 };
    }

    /// <summary>When the next state comes into sight, if nothing is shown or set until then; null where none is on its way.</summary>
    /// <param name="now">The moment.</param>
    public DateTimeOffset? ChangesAt(DateTimeOffset now) => _line.After(Delay.SeenAt(now)) + TimeSpan.FromSeconds(Delay.Seconds);

    private AudienceView Make(DateTimeOffset now)
    {
        var limits = _rules.Limits ?? settings.Limits;
        var view = new AudienceView(_last.Sequence, _rules.Door ?? door, Delay.Seconds, limits, IsQuiet: false, null, null);
        if (view.Door == AudienceDoor.Closed || _line.At(Delay.SeenAt(now)) is not { Grid: { Puzzle: not null } grid } seen)
            return view;
        return view with
        {
            IsQuiet = limits.QuietOnAir && seen.OnAir is not null,
            Credit = grid.Credit,
            Board = AudienceBoard.Of(grid),
        };
    }
}
