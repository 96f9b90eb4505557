using Companion.Engine;
using Companion.Engine.Proofs;
using Companion.Session.Cues;
using Companion.Session.Entries;
using Companion.Session.Events;
using Companion.Session.Planning;
using Companion.Session.State;

namespace Companion.Session;

/// <summary>Turns events into states. Pure, and never throws on a log that <see cref="Decider"/> led to.</summary>
public static class Evolver
{
    /// <summary>The state after an event.</summary>
    /// <param name="state">The state before it.</param>
    /// <param name="happened">The event.</param>
    public static SessionState Evolve(SessionState state, Event happened)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(happened);
        var next = happened switch
        {
            ShowBegun begun => Begin(state, begun),
            RecordingStarted or RecordingPaused or RecordingResumed or RecordingStopped =>
                state with { Recording = state.Recording.After(happened) },
            PuzzleLoaded loaded => Load(state, loaded),
            EntryUndone => Undo(state),
            EntryRedone => Redo(state),
            MarksSettled => state with { Writing = CellSet.Empty },
            StoodBy by => state with { Standby = Chosen.In(state, by.Deduction), CalledStandby = default },
            CallsStoodBy by => state with { Standby = null, CalledStandby = by.Cells },
            StoodDown => state with { Standby = null, CalledStandby = default },
            PutOnAir put => Show(state, put),
            CallsPutOnAir put => state with { OnAir = null, CalledOnAir = put.Cells, CalledStandby = default },
            AirCleared => state with { OnAir = null, CalledOnAir = default, Asks = state.Asks with { Code = null } },
            DeductionUsed used => Use(state, Grounded.On(state.Grid, used.Deduction)),
            CoHostOnAirAllowed allowed => state with { CoHostMayAir = allowed.Allowed },
            FramePlaced placed => state with { Scenes = state.Scenes.Place(placed.Scene, placed.Frame) },
            SceneForgotten forgotten => Forget(state, forgotten.Scene),
            EntryAttributed found => state with { Attributions = state.Attributions.Add(new(found.Entry, found.Attribution)) },
            FrameShown shown => state with { ShownFrame = shown.Scene },
            LadderStopped stopped => state with { LadderCut = state.LadderCut with { Last = stopped.Last } },
            FamilySwitched switched => state with { LadderCut = state.LadderCut.With(new(switched.Family, switched.IsOn)) },
            RulesFeatured featured => state.With(state.Plan with { Featured = featured.Featured }),
            StepNoted noted => state.With(state.Notes.With(new StepNote(noted.Places, noted.Removes, noted.Text))),
            NotesRecalled recalled => state.With(state.Notes with { Notes = recalled.Notes }),
            AsksLimited limited => state with { Asks = state.Asks with { Limits = limited.Limits } },
            DelaySet set => state with { Asks = state.Asks with { Delay = set.Delay } },
            DelayCodeShown shown => state with { Asks = state.Asks with { Code = shown.Code } },
            DelayCodeHidden => state with { Asks = state.Asks with { Code = null } },
            AudienceDoorSet set => state with { Asks = state.Asks with { Door = set.Door } },
            DeductionCued or TextCued or CueReworded or CueRegraded or CueMoved or CueTurned or CuesRemoved =>
                state with { Cues = CueEffects.Apply(state, happened) },
            // Nothing that is shown depends on it: it is for looking back.
            CellsFoundFirst => state,
            ShowEnded => state with
            {
                IsOver = true,
                Recording = state.Recording.After(happened),
                CalledStandby = default,
                CalledOnAir = default,
                Asks = state.Asks with { ShowsEnded = state.Asks.ShowsEnded + 1 },
            },
            _ => Enter(state, happened),
        };
        return next with { Sequence = state.Sequence + 1 };
    }

    private static SessionState Enter(SessionState state, Event entry)
    {
        var (grid, writing) = EntryEffects.Apply(state.Grid, state.Writing, entry);
        return Make(state, entry) with { Grid = grid, Writing = writing };
    }

    private static SessionState Begin(SessionState state, ShowBegun begun) => SessionState.Initial with
    {
        Sequence = state.Sequence,
        Show = state.Sequence + 1,
        ShowTitle = begun.Title,
        Entries = begun.Entries,
        Loadings = begun.Loadings,
    };

    // Before the first puzzle there is nothing that an undo could go back to.
    private static SessionState Load(SessionState state, PuzzleLoaded loaded)
    {
        var next = state.Grid.Puzzle is null ? state : Make(state, loaded);
        var loading = state.Loadings + 1;
        var credit = new Credit(loaded.Title, loaded.Setter, loaded.Link);
        return OffAir(next) with
        {
            Loadings = loading,
            Grid = Grid.Of(Puzzle.Parse(loaded.Grid), loading, credit),
            Writing = CellSet.Empty,
        };
    }

    private static SessionState Make(SessionState state, Event entry)
    {
        var number = state.Entries + 1;
        var step = new Step(number, entry, EntryLabels.Of(entry), state.Grid, state.Writing);
        return state with { Entries = number, History = state.History.Make(step) };
    }

    private static SessionState Undo(SessionState state) =>
        state.History.Last is { } last ? GoTo(state, last, state.History.Undo(state.Grid, state.Writing)) : state;

    private static SessionState Redo(SessionState state) =>
        state.History.Next is { } next ? GoTo(state, next, state.History.Redo(state.Grid, state.Writing)) : state;

    // What is on air belongs to the puzzle: it stays through the entries of one, and goes with it.
    private static SessionState GoTo(SessionState state, Step step, History history)
    {
        var kept = step.Grid.Loading == state.Grid.Loading ? state : OffAir(state);
        return kept with { Grid = step.Grid, Writing = step.Writing, History = history, Entries = state.Entries + 1 };
    }

    private static SessionState OffAir(SessionState state) =>
        state with { Standby = null, OnAir = null, CalledStandby = default, CalledOnAir = default };

    // Whoever sees why has been told all of it.
    private static SessionState Show(SessionState state, PutOnAir put)
    {
        // A grade further is about the same board as the grade before.
        var chosen = new[] { state.OnAir?.Chosen, state.Standby }
            .FirstOrDefault(chosen => put.Deduction.Equals(chosen?.Deduction)) ?? Chosen.In(state, put.Deduction);
        var next = state with { OnAir = new(chosen, put.Grade), CalledOnAir = default };
        return put.Grade == Grade.Why ? Use(next, chosen.Grounded) : next;
    }

    private static SessionState Use(SessionState state, Grounded used) =>
        state.Used.Contains(used) ? state : state with { Used = state.Used.Add(used) };

    private static SessionState Forget(SessionState state, string scene) => state with
    {
        Scenes = state.Scenes.Forget(scene),
        ShownFrame = state.ShownFrame == scene ? null : state.ShownFrame,
    };
}
