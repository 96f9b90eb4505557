using Companion.Session.Commands;
using Companion.Session.Entries;
using Companion.Session.Events;
using Companion.Session.Recording;
using Companion.Session.State;

namespace Companion.Session.Shows;

/// <summary>Decides where one show ends and another begins.</summary>
internal static class ShowRequests
{
    private const int LongestTitle = 120;

    public static Decision Begin(SessionState state, BeginShow begin, DateTimeOffset now) =>
        FaultOf(begin.Title) is { } fault
            ? Decision.Refuse(fault)
            : Decision.Of([.. Beginning(state, begin.Title.Trim(), now)]);

    // Who ends a show and loads a puzzle goes on with another show.
    public static Decision Load(SessionState state, LoadPuzzle load, DateTimeOffset now)
    {
        var loaded = PuzzleRequests.Load(load, now);
        return state.IsOver && loaded.Refusal is null ? Decision.Of([.. Beginning(state, "", now), .. loaded.Events]) : loaded;
    }

    public static Decision Reopen(SessionState state, ReopenShow reopen, DateTimeOffset now)
    {
        if (FaultOf(reopen.Title) is { } fault)
            return Decision.Refuse(fault);
        var begun = new ShowBegun(now, reopen.Title.Trim(), state.Entries, state.Loadings);
        var shift = state.Entries - (reopen.Events is [ShowBegun first, ..] ? first.Entries : 0);
        List<Event> events = [.. Ending(state, now), begun, .. GoingOn(reopen.Events).Select(happened => Shifted(happened, shift))];
        var reached = events.Aggregate(state, Evolver.Evolve);
        return Decision.Of([.. events, .. OffAir(reached, events[^1].At, now), .. CarriedSettings.Of(state, reached, now)]);
    }

    private static IEnumerable<Event> Beginning(SessionState state, string title, DateTimeOffset now)
    {
        var begun = new ShowBegun(now, title, state.Entries, state.Loadings);
        return [.. Ending(state, now), begun, .. CarriedSettings.Of(state, Evolver.Evolve(state, begun), now)];
    }

    // A recording belongs to its show.
    private static IEnumerable<Event> Ending(SessionState state, DateTimeOffset now) =>
        state.Recording.Phase is RecordingPhase.Running or RecordingPhase.Paused ? [new RecordingStopped(now)] : [];

    // Who goes on with a show takes its end back; the recording that ended with it is over all the same.
    private static IEnumerable<Event> GoingOn(IReadOnlyCollection<Event> events)
    {
        var isRecorded = events.Any(happened => happened is RecordingStarted);
        return events.Where(happened => happened is not ShowBegun && (isRecorded || happened is not ShowEnded))
            .Select(happened => happened is ShowEnded ? new RecordingStopped(happened.At) : happened);
    }

    // An attribution is all that names an entry by its number.
    private static Event Shifted(Event happened, int shift) =>
        happened is EntryAttributed found ? found with { Entry = found.Entry + shift } : happened;

    // What the show left on air, allowed or running when it was left is not so any more. A recording that nobody stopped is over with
    // the last thing that happened: nobody knows more.
    private static IEnumerable<Event> OffAir(SessionState state, DateTimeOffset last, DateTimeOffset now)
    {
        if (state.Standby is not null || state.CalledStandby.Count > 0)
            yield return new StoodDown(now);
        if (state.OnAir is not null || state.CalledOnAir.Count > 0 || state.Asks.Code is not null)
            yield return new AirCleared(now);
        if (state.ShownFrame is not null)
            yield return new FrameShown(now, null);
        if (state.CoHostMayAir)
            yield return new CoHostOnAirAllowed(now, Allowed: false);
        if (state.Recording.Phase is RecordingPhase.Running or RecordingPhase.Paused)
            yield return new RecordingStopped(last);
    }

    private static string? FaultOf(string title) => title.Trim() switch
    {
        { Length: > LongestTitle } => $"A show's title may have {LongestTitle} characters: shorten it.",
        var trimmed when trimmed.Any(char.IsControl) => "A show's title is one line: take out line breaks and tabs.",
        _ => null,
    };
}
