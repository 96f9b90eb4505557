using Companion.Session.Commands;
using Companion.Session.Events;
using Companion.Session.State;

namespace Companion.Session.Cues;

/// <summary>Decides on what is written on the cue list, changed in it and taken off it.</summary>
internal static class CueRequests
{
    public static Decision Cue(SessionState state, CueDeduction cue, DateTimeOffset now)
    {
        var isListed = state.Cues.CallOuts.OfType<DeductionCallOut>().Any(other =>
            other.Stage != CueStage.Done && other.Grade == cue.Grade
            && other.Chosen.Grounded.Loading == state.Grid.Loading && other.Deduction.Equals(cue.Deduction));
        return isListed
            ? Decision.Refuse("This is on the cue list already: choose another grade, or another deduction.")
            : Add(state, new DeductionCued(now, state.Cues.Made + 1, cue.Deduction, cue.Grade));
    }

    public static Decision Cue(SessionState state, CueText cue, DateTimeOffset now) => CueWords.Read(cue.Text, out var text) is { } fault
        ? Decision.Refuse(fault)
        : Add(state, new TextCued(now, state.Cues.Made + 1, text));

    public static Decision Reword(SessionState state, RewordCue reword, DateTimeOffset now)
    {
        if (CueWords.Read(reword.Text, out var text) is { } fault)
            return Decision.Refuse(fault);
        return state.Cues[reword.Id] switch
        {
            TextCallOut old when old.Text == text => Decision.Nothing,
            TextCallOut old => IfSeen(old, reword.Version, new CueReworded(now, reword.Id, text)),
            null => Gone,
            _ => Decision.Refuse("The words of a deduction come from its grade: choose another grade."),
        };
    }

    public static Decision Regrade(SessionState state, RegradeCue regrade, DateTimeOffset now) => state.Cues[regrade.Id] switch
    {
        DeductionCallOut old when old.Grade == regrade.Grade => Decision.Nothing,
        DeductionCallOut old => IfSeen(old, regrade.Version, new CueRegraded(now, regrade.Id, regrade.Grade)),
        null => Gone,
        _ => Decision.Refuse("A talking point has no grade: change its words."),
    };

    public static Decision Move(SessionState state, MoveCue move, DateTimeOffset now)
    {
        if (state.Cues[move.Id] is null || (move.After is { } after && state.Cues[after] is null))
            return Gone;
        return state.Cues.Move(move.Id, move.After) == state.Cues ? Decision.Nothing : Decision.Of(new CueMoved(now, move.Id, move.After));
    }

    public static Decision Turn(SessionState state, TurnCue turn, DateTimeOffset now) => state.Cues[turn.Id] switch
    {
        null => Gone,
        var old when old.Stage == turn.Stage => Decision.Nothing,
        var old => IfSeen(old, turn.Version, new CueTurned(now, turn.Id, turn.Stage)),
    };

    // It stands by as well, as whatever goes on air has done: the next grade is then one of this deduction. It may show less than
    // is on air of the same deduction, as the co-host meant it.
    public static Decision Take(SessionState state, TakeCue take, DateTimeOffset now) => state.Cues[take.Id] switch
    {
        null => Gone,
        DeductionCallOut { Stage: CueStage.Done } => Decision.Refuse("This cue is done: have it stand by again first."),
        DeductionCallOut cue when Fate.On(state)(cue.Chosen) is { } why =>
            Decision.Refuse($"This deduction {why}: choose another one, or mark the cue done."),
        DeductionCallOut cue => IfSeen(
            cue,
            take.Version,
            new StoodBy(now, cue.Deduction),
            new PutOnAir(now, cue.Deduction, cue.Grade),
            new CueTurned(now, cue.Id, CueStage.Done)),
        _ => Decision.Refuse("A talking point is said and not shown: mark it done."),
    };

    // Off the list is off the list, whoever was first.
    public static Decision Remove(SessionState state, RemoveCue remove, DateTimeOffset now) => state.Cues[remove.Id] is { } old
        ? IfSeen(old, remove.Version, new CuesRemoved(now, new([remove.Id])))
        : Decision.Nothing;

    public static Decision Sweep(SessionState state, DateTimeOffset now)
    {
        var fate = Fate.On(state);
        var over = state.Cues.CallOuts
            .Where(cue => cue.Stage == CueStage.Done || (cue is DeductionCallOut { Chosen: var chosen } && fate(chosen) is not null))
            .Select(cue => cue.Id).ToList();
        return over.Count == 0 ? Decision.Nothing : Decision.Of(new CuesRemoved(now, new([.. over])));
    }

    private static Decision Gone => Decision.Refuse("Somebody took this off the cue list just now: look again.");

    private static Decision Add(SessionState state, Event cued) => state.Cues.CallOuts.Count < CueList.Most
        ? Decision.Of(cued)
        : Decision.Refuse($"The cue list is full at {CueList.Most}: take something off it.");

    private static Decision IfSeen(CallOut callOut, int version, params ReadOnlySpan<Event> events) => callOut.Version == version
        ? Decision.Of(events)
        : Decision.Refuse("Somebody changed this just now: look again.");
}
