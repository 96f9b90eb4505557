using Companion.Engine;
using Companion.Engine.Planning;
using Companion.Engine.Proofs;
using Companion.Engine.Rules;
using Companion.Session.Boards;
using Companion.Session.Commands;


namespace Companion.Session.Tests.Planning;

/// <summary>Plays a session towards a featured rule, and past it.</summary>
internal static class FeaturedPlay
{
    private static readonly RuleId Wing = new("xy-wing");

    /// <summary>Features these rules, late.</summary>
    public static PlayedSession Feature(this PlayedSession session, params RuleId[] rules)
    {
        session.Try(new FeatureRules(new([.. rules.Select(rule => new Feature(rule))])));
        return session;
    }

    /// <summary>Enters what a deduction concludes.</summary>
    public static PlayedSession Carry(this PlayedSession session, Deduction step)
    {
        foreach (var (cell, digit) in step.Places)
            session.Do(new PlaceDigit(cell, digit));
        foreach (var (cell, digit) in step.Removes)
        {
            if (session.State.Grid.DigitAt(cell) is null && !session.State.Grid.Struck.Contains(new(cell, digit)))
                session.Do(new ToggleStrike(CellSet.Of(cell), digit));
        }

        return session;
    }

    /// <summary>Enters the easier steps that lead to an XY-wing.</summary>
    public static PlayedSession OpenWing(this PlayedSession session)
    {
        while (Forecast(session) is { IsOpen: false } forecast)
            session.Carry(forecast.Before[0]);
        return session;
    }

    /// <summary>Enters right digits in reading order until no XY-wing is ahead any more.</summary>
    public static PlayedSession PassWing(this PlayedSession session)
    {
        while (Forecast(session).First is not null || WayFrom(session).Any(board => Ladder.Standard[Wing].IsOpenOn(board)))
            session.PlaceNext();
        return session;
    }

    /// <summary>Enters the right digit in the first open cell.</summary>
    public static PlayedSession PlaceNext(this PlayedSession session)
    {
        var cell = (CellSet.All - session.State.Grid.Filled).First;
        return session.Do(new PlaceDigit(cell, session.State.Grid.Puzzle!.Solution[cell]));
    }

    private static IEnumerable<Board> WayFrom(PlayedSession session) =>
        Route.From(KnownBoard.Of(session.State).Value!, Ladder.Standard).Rounds.Select(round => round.Board);

    private static Forecast Forecast(PlayedSession session) => Engine.Planning.Forecast.Of(
        KnownBoard.Of(session.State).Value!, session.State.Grid.Puzzle!.Solution, Ladder.Standard, Wing);
}
