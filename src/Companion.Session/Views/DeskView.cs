using System.Collections.Immutable;
using Companion.Engine;
using Companion.Session.State;

namespace Companion.Session.Views;

/// <summary>What the presenter and the co-hosts see at once after each entry: board, warnings, what is on air.</summary>
/// <param name="Sequence">Number of the state it shows; grows by each event.</param>
/// <param name="Credit">Title, setter and link of the puzzle.</param>
/// <param name="Cells">The 81 cells, row by row.</param>
/// <param name="Writing">Cells whose candidate lists are being written and do not count yet.</param>
/// <param name="Undo">What an undo would take back, in a few words; null where there is nothing.</param>
/// <param name="Redo">What a redo would make again; null where there is nothing.</param>
/// <param name="Watch">Warnings, most urgent first.</param>
/// <param name="Proof">How the last entry that says something new follows, or null.</param>
/// <param name="Standby">What stands by, or null.</param>
/// <param name="OnAir">What is on air, or null.</param>
/// <param name="CoHostMayAir">Whether co-hosts may put things on air.</param>
/// <param name="Scenes">The scenes with the board's place in each.</param>
/// <param name="ShownFrame">The scene whose frame is being shown on its overlay, or null.</param>
/// <param name="Featured">The rules that the puzzle is to show.</param>
public sealed record DeskView(
    long Sequence,
    Credit Credit,
    ImmutableArray<DeskCell> Cells,
    ImmutableArray<Cell> Writing,
    string? Undo,
    string? Redo,
    ImmutableArray<WatchNote> Watch,
    EntryProof? Proof,
    CueView? Standby,
    CueView? OnAir,
    bool CoHostMayAir,
    ImmutableArray<SceneView> Scenes,
    string? ShownFrame,
    ImmutableArray<FeaturedRule> Featured)
{
    /// <summary>The cells that stand by to be shown as called by viewers; none where they do not.</summary>
    public ValueArray<CalledCell> CalledStandby { get; init; }

    /// <summary>The cells on air that viewers call; none where they are not.</summary>
    public ValueArray<CalledCell> CalledOnAir { get; init; }
}
