using Companion.Engine.Proofs;
using Companion.Session.Asks;
using Companion.Session.Audience;
using Companion.Session.Commands;
using Companion.Session.State;

namespace Companion.Session.Tests.Audience;

/// <summary>A session that an audience looks on, on a clock that moves when it is told to.</summary>
internal sealed class AudienceShow
{
    private readonly AudienceFeed _feed;

    public AudienceShow(string puzzle, int delay = 15, AudienceDoor door = AudienceDoor.Open)
    {
        (Session, _feed) = (PlayedSession.Of(puzzle), new(new() { DelaySeconds = delay }, door));
        Keep();
    }

    public PlayedSession Session { get; }

    public DateTimeOffset Now { get; private set; } = PlayedSession.Start;

    /// <summary>All that was shown so far, with the time.</summary>
    public List<(DateTimeOffset At, SessionState State)> Shown { get; } = [];

    public AudienceView View => _feed.At(Now);

    public DateTimeOffset? ChangesAt => _feed.ChangesAt(Now);

    /// <summary>A state as viewers see it who are not behind.</summary>
    public static AudienceView SeenAtOnce(SessionState state)
    {
        var feed = new AudienceFeed(new() { DelaySeconds = 0 }, AudienceDoor.Open);

        // Whatever the presenter has set about viewers, they see this state.
        var open = new AskRules(new(Open: true, Grade.Why, QuietOnAir: true), null, state.Asks.Code, state.Asks.ShowsEnded);
        feed.Show(state with { Asks = open }, PlayedSession.Start);
        return feed.At(PlayedSession.Start);
    }

    public AudienceShow Do(params Command[] commands)
    {
        foreach (var command in commands)
            Assert.Null(Try(command).Refusal);
        return this;
    }

    public Decision Try(Command command)
    {
        var decision = Session.Try(command);
        if (!decision.Events.IsEmpty)
            Keep();
        return decision;
    }

    public AudienceShow Wait(double seconds)
    {
        Now += TimeSpan.FromSeconds(seconds);
        return this;
    }

    private void Keep()
    {
        Shown.Add((Now, Session.State));
        _feed.Show(Session.State, Now);
    }
}
