using Companion.Engine;
using Companion.Session.Asks;
using Companion.Session.Ladders;
using Companion.Session.Planning;
using Companion.Session.Proving;
using Companion.Session.Recording;

namespace Companion.Session.State;

/// <summary>
/// All that a session knows. Made by <see cref="Evolver"/> from the events alone, so that a replayed log gives an equal state.
/// Immutable, compared by value.
/// </summary>
public sealed record SessionState
{
    private SessionState()
    {
    }

    /// <summary>Before the first event: no puzzle, nothing on air.</summary>
    public static SessionState Initial { get; } = new();

    /// <summary>How many events led here.</summary>
    public long Sequence { get; init; }

    /// <summary>The number of the event that began the show; 0 for the first one, which began with the log.</summary>
    public long Show { get; init; }

    /// <summary>What the presenter calls the show; may be empty.</summary>
    public string ShowTitle { get; init; } = "";

    /// <summary>Whether the show was ended: the next puzzle begins another one.</summary>
    public bool IsOver { get; init; }

    /// <summary>The clock of the show's recording.</summary>
    public RecordingClock Recording { get; init; } = RecordingClock.None;

    /// <summary>How many entries were made, undos and redos among them.</summary>
    public int Entries { get; init; }

    /// <summary>How many puzzles were loaded.</summary>
    public int Loadings { get; init; }

    /// <summary>What the presenter has written.</summary>
    public Grid Grid { get; init; } = Grid.Blank;

    /// <summary>Cells whose candidate lists are being written and do not count yet.</summary>
    public CellSet Writing { get; init; }

    /// <summary>What can be undone and made again.</summary>
    public History History { get; init; } = History.Empty;

    /// <summary>Deductions said, shown in full or used, of every puzzle loaded, in order.</summary>
    public ValueArray<Grounded> Used { get; init; }

    /// <summary>The proofs of entries, in the order in which they were found; of entries that were taken back as well.</summary>
    public ValueArray<Attributed> Attributions { get; init; }

    /// <summary>What stands by, or null.</summary>
    public Chosen? Standby { get; init; }

    /// <summary>What is on air, or null.</summary>
    public Cue? OnAir { get; init; }

    /// <summary>The cells that viewers called when they were made to stand by; none where they do not.</summary>
    public ValueArray<CalledCell> CalledStandby { get; init; }

    /// <summary>The cells that viewers called, as they are on air; none where they are not.</summary>
    public ValueArray<CalledCell> CalledOnAir { get; init; }

    /// <summary>What co-hosts have written down for the presenter to say.</summary>
    public CueList Cues { get; init; } = CueList.Empty;

    /// <summary>Whether co-hosts may put things on air; at first they may not.</summary>
    public bool CoHostMayAir { get; init; }

    /// <summary>What is set about viewers who ask.</summary>
    public AskRules Asks { get; init; } = AskRules.AsSet;

    /// <summary>What of the ladder is looked for.</summary>
    public LadderCut LadderCut { get; init; } = LadderCut.None;

    /// <summary>What is planned, one for each loading of a puzzle for which anything is; in the order of the loadings.</summary>
    public ValueArray<ShowPlan> Plans { get; init; }

    /// <summary>What is planned for the puzzle on the board.</summary>
    public ShowPlan Plan => Plans.FirstOrDefault(plan => plan.Loading == Grid.Loading) ?? new(Grid.Loading, default);

    /// <summary>The notes of each puzzle of this show that has any; the puzzle whose notes changed last comes last.</summary>
    public ValueArray<PuzzleNotes> NotesOfPuzzles { get; init; }

    /// <summary>The notes of the puzzle on the board.</summary>
    public PuzzleNotes Notes
    {
        get
        {
            var givens = Grid.Puzzle?.Board.ToString() ?? "";
            return NotesOfPuzzles.FirstOrDefault(notes => notes.Givens == givens) ?? new(givens, default);
        }
    }

    /// <summary>The scenes of the broadcast.</summary>
    public Scenes Scenes { get; init; } = Scenes.Initial;

    /// <summary>The scene whose frame is shown on its overlay while it is being placed, or null.</summary>
    public string? ShownFrame { get; init; }

    /// <summary>The state with another plan for the puzzle on the board.</summary>
    internal SessionState With(ShowPlan plan) => this with
    {
        Plans = new([.. Plans.Where(other => other.Loading != plan.Loading).Append(plan).OrderBy(each => each.Loading)]),
    };

    /// <summary>The state with other notes of a puzzle.</summary>
    internal SessionState With(PuzzleNotes notes) => this with
    {
        NotesOfPuzzles = new(
        [
            .. NotesOfPuzzles.Where(other => other.Givens != notes.Givens),
            .. notes.Notes.Count > 0 ? [notes] : Array.Empty<PuzzleNotes>(),
        ]),
    };
}
