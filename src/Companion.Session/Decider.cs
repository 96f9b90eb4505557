using Companion.Session.Air;
using Companion.Session.Asks;
using Companion.Session.Audience;
using Companion.Session.Commands;
using Companion.Session.Cues;
using Companion.Session.Entries;
using Companion.Session.Events;
using Companion.Session.Ladders;
using Companion.Session.Planning;
using Companion.Session.Proving;
using Companion.Session.Recording;
using Companion.Session.Shows;
using Companion.Session.State;

namespace Companion.Session;

/// <summary>Turns commands into events. Pure: the same state, command and time give the same decision.</summary>
public static class Decider
{
    /// <summary>What comes of a command.</summary>
    /// <param name="state">The state that the command meets.</param>
    /// <param name="command">What is wanted. Whether the one who wants it may is the caller's question.</param>
    /// <param name="now">The session's clock.</param>
    /// <exception cref="ArgumentException">The command is of a kind that nobody decides.</exception>
    public static Decision Decide(SessionState state, Command command, DateTimeOffset now)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(command);
        return command switch
        {
            BeginShow begin => ShowRequests.Begin(state, begin, now),
            ReopenShow reopen => ShowRequests.Reopen(state, reopen, now),
            StartRecording => RecordingRequests.Start(state, now),
            PauseRecording => RecordingRequests.Pause(state, now),
            ResumeRecording => RecordingRequests.Resume(state, now),
            StopRecording => RecordingRequests.Stop(state, now),
            LoadPuzzle load => ShowRequests.Load(state, load, now),
            PlaceFrame place => SceneRequests.Place(state, place, now),
            ForgetScene forget => SceneRequests.Forget(state, forget, now),
            ShowFrame show => SceneRequests.Show(state, show, now),
            AllowCoHostOnAir allow => AirRequests.Allow(state, allow, now),
            StandDown => AirRequests.StandDown(state, now),
            ClearAir => AirRequests.Clear(state, now),
            StopLadder stop => LadderRequests.Stop(state, stop, now),
            SwitchFamily wanted => LadderRequests.Switch(state, wanted, now),
            LimitAsks limit => AskRequests.Limit(state, limit, now),
            SetDelay set => AskRequests.SetDelay(state, set, now),
            UseMeasuredDelay use => AskRequests.UseMeasured(state, use, now),
            ShowDelayCode show => AskRequests.ShowCode(show, now),
            HideDelayCode => AskRequests.HideCode(state, now),
            SetAudienceDoor set => DoorRequests.Set(state, set, now),
            CueText cue => CueRequests.Cue(state, cue, now),
            RewordCue reword => CueRequests.Reword(state, reword, now),
            RegradeCue regrade => CueRequests.Regrade(state, regrade, now),
            MoveCue move => CueRequests.Move(state, move, now),
            TurnCue turn => CueRequests.Turn(state, turn, now),
            TakeCue take => CueRequests.Take(state, take, now),
            RemoveCue remove => CueRequests.Remove(state, remove, now),
            SweepCues => CueRequests.Sweep(state, now),
            AttributeEntry found => ProofRequests.Attribute(state, found, now),
            NoteFoundFirst found => CallRequests.Note(state, found, now),
            EndShow => Decision.Of(new ShowEnded(now)),
            SettleMarks => MarkRequests.Settle(state, now),
            _ when state.Grid.Puzzle is null => Decision.Refuse("Load a puzzle first."),
            PlaceDigit place => DigitRequests.Place(state, place, now),
            EraseCells erase => DigitRequests.Erase(state, erase, now),
            ClearGrid => DigitRequests.Clear(state, now),
            ToggleBlockMark toggle => MarkRequests.Block(state, toggle, now),
            ToggleCellMark toggle => MarkRequests.List(state, toggle, now),
            ToggleStrike toggle => MarkRequests.Strike(state, toggle, now),
            Undo => HistoryRequests.Undo(state, now),
            Redo => HistoryRequests.Redo(state, now),
            FeatureRules wanted => PlanRequests.Feature(state, wanted, now),
            NoteStep note => PlanRequests.Note(state, note, now),
            RecallNotes recall => PlanRequests.Recall(state, recall, now),
            CueDeduction cue => CueRequests.Cue(state, cue, now),
            StandBy standBy => AirRequests.StandBy(state, standBy, now),
            StandByCalls standBy => CallRequests.StandBy(state, standBy, now),
            NextGrade => AirRequests.Next(state, now),
            PreviousGrade => AirRequests.Previous(state, now),
            MarkUsed used => AirRequests.Use(state, used, now),
            _ => throw new ArgumentException($"Nobody decides {command}.", nameof(command)),
        };
    }
}
