using Companion.Engine.Proofs;
using Companion.Session.Commands;
using Companion.Session.Events;
using Companion.Session.State;

namespace Companion.Session.Air;

/// <summary>Decides on standing by, going on air and what counts as said.</summary>
internal static class AirRequests
{
    public static Decision StandBy(SessionState state, StandBy standBy, DateTimeOffset now) =>
        standBy.Deduction.Equals(state.Standby?.Deduction) ? Decision.Nothing : Decision.Of(new StoodBy(now, standBy.Deduction));

    public static Decision StandDown(SessionState state, DateTimeOffset now) =>
        state.Standby is null && state.CalledStandby.Count == 0 ? Decision.Nothing : Decision.Of(new StoodDown(now));

    public static Decision Next(SessionState state, DateTimeOffset now)
    {
        if (state.CalledStandby.Count > 0)
            return Decision.Of(new CallsPutOnAir(now, state.CalledStandby));
        if (state.Standby?.Deduction is { } standby && !standby.Equals(state.OnAir?.Deduction))
            return Decision.Of(new PutOnAir(now, standby, Grade.Where));
        if (state.OnAir is not { } cue)
            return Decision.Refuse("Nothing stands by: choose a deduction first.");
        return cue.Grade == Grade.Why
            ? Decision.Refuse("All of it is on air: clear it, or let another deduction stand by.")
            : Decision.Of(new PutOnAir(now, cue.Deduction, cue.Grade + 1));
    }

    public static Decision Previous(SessionState state, DateTimeOffset now) => state.OnAir switch
    {
        null when state.CalledOnAir.Count > 0 => Decision.Of(new AirCleared(now)),
        null => Decision.Refuse("Nothing is on air: there is no grade to go back to."),
        { Grade: Grade.Where } => Decision.Of(new AirCleared(now)),
        var cue => Decision.Of(new PutOnAir(now, cue.Deduction, cue.Grade - 1)),
    };

    // Never refused: whoever asks for a clear overlay has one.
    public static Decision Clear(SessionState state, DateTimeOffset now) =>
        state.OnAir is null && state.CalledOnAir.Count == 0 && state.Asks.Code is null ? Decision.Nothing : Decision.Of(new AirCleared(now));

    public static Decision Use(SessionState state, MarkUsed used, DateTimeOffset now) =>
        state.Used.Contains(Grounded.On(state.Grid, used.Deduction))
            ? Decision.Refuse("This deduction counts as known already.")
            : Decision.Of(new DeductionUsed(now, used.Deduction));

    public static Decision Allow(SessionState state, AllowCoHostOnAir allow, DateTimeOffset now) =>
        state.CoHostMayAir == allow.Allowed ? Decision.Nothing : Decision.Of(new CoHostOnAirAllowed(now, allow.Allowed));
}
