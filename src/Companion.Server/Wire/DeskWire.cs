using System.Collections.Immutable;
using Companion.Engine;
using Companion.Server.Access;
using Companion.Server.Chat;
using Companion.Server.Live.Loop;
using Companion.Session.State;
using Companion.Session.Views;

namespace Companion.Server.Wire;

/// <summary>What a panel is sent at once after each entry: <see cref="DeskView"/> with pictures, and whose panel it is.</summary>
/// <param name="Sequence">See <see cref="DeskView"/>, as for all but the following.</param>
/// <param name="Role">Presenter or co-host.</param>
/// <param name="Credit">Title, setter and link.</param>
/// <param name="Cells">The 81 cells.</param>
/// <param name="Writing">Cells being written.</param>
/// <param name="Undo">What an undo would take back.</param>
/// <param name="Redo">What a redo would make again.</param>
/// <param name="Watch">Warnings.</param>
/// <param name="Proof">How the last entry that says something new follows.</param>
/// <param name="Standby">What stands by, with its picture.</param>
/// <param name="OnAir">What is on air, with the picture of all of it.</param>
/// <param name="CalledStandby">The cells that viewers call, standing by.</param>
/// <param name="CalledOnAir">The cells that viewers call, on air.</param>
/// <param name="CoHostMayAir">Whether co-hosts may put things on air.</param>
/// <param name="Scenes">The scenes.</param>
/// <param name="ShownFrame">The scene whose frame is shown.</param>
/// <param name="Featured">The rules that the puzzle is to show.</param>
/// <param name="Chat">How the chat is doing, or null where there is none.</param>
/// <param name="ShowTitle">What the show is called; may be empty.</param>
/// <param name="IsOver">Whether the show was ended, so that the next puzzle begins another.</param>
/// <param name="Recording">How the recording is doing.</param>
/// <param name="ScanOf">The number of the state that open deductions must be of to belong to this board.</param>
public sealed record DeskWire(
    long Sequence,
    AccessRole Role,
    Credit Credit,
    ImmutableArray<DeskCell> Cells,
    ImmutableArray<Cell> Writing,
    string? Undo,
    string? Redo,
    ImmutableArray<WatchNote> Watch,
    EntryProof? Proof,
    CueWire? Standby,
    CueWire? OnAir,
    CalledWire? CalledStandby,
    CalledWire? CalledOnAir,
    bool CoHostMayAir,
    ImmutableArray<SceneView> Scenes,
    string? ShownFrame,
    ImmutableArray<FeaturedRule> Featured,
    ChatStatus? Chat,
    string ShowTitle,
    bool IsOver,
    RecordingWire Recording,
    long ScanOf)
{
    internal static DeskWire Of(Snapshot snapshot, AccessRole role, Voice voice)
    {
        var state = snapshot.State;
        var view = PanelViews.Desk(state, snapshot.Scan, snapshot.Outlook, voice);
        return new(
            view.Sequence,
            role,
            view.Credit,
            view.Cells,
            view.Writing,
            view.Undo,
            view.Redo,
            view.Watch,
            view.Proof,
            CueWire.Of(view.Standby, state.Standby, voice),
            CueWire.Of(view.OnAir, state.OnAir?.Chosen, voice),
            CalledWire.Of(view.CalledStandby, voice),
            CalledWire.Of(view.CalledOnAir, voice),
            view.CoHostMayAir,
            view.Scenes,
            view.ShownFrame,
            view.Featured,
            snapshot.Chat,
            state.ShowTitle,
            state.IsOver,
            RecordingWire.Of(state.Recording),
            snapshot.ScanOf);
    }
}
