using Companion.Engine;
using Companion.Session.Commands;
using Companion.Session.Events;
using Companion.Session.Planning;
using Companion.Session.State;

namespace Companion.Session.Tests.Planning;

public sealed class StepNoteTests
{
    private readonly PlayedSession _session = PlayedSession.Of(Puzzles.Easy);

    [Fact]
    public void A_note_is_found_by_what_its_step_concludes()
    {
        _session.Do(Note("r2c2=6", "", " Say who \n set it. "));

        Assert.Equal("Say who set it.", NoteOf("r2c2=6", ""));
        Assert.Equal("", NoteOf("r2c2=5", ""));
        Assert.Equal("", NoteOf("", "r2c2=6"));
    }

    [Fact]
    public void It_stays_with_a_step_of_which_a_part_was_done()
    {
        _session.Do(Note("", "r1c8=8 r2c8=8", "Slowly"));

        Assert.Equal("Slowly", NoteOf("", "r2c8=8"));
        Assert.Equal("", NoteOf("", "r1c8=8 r2c8=8 r3c8=8"));
    }

    [Fact]
    public void It_is_changed_and_taken_away_though_a_part_of_its_step_was_done()
    {
        _session.Do(Note("", "r1c8=8 r2c8=8", "Slowly"), Note("", "r2c8=8", "Quickly"));
        Assert.Equal(("", "Quickly"), (NoteOf("", "r1c8=8 r2c8=8"), NoteOf("", "r2c8=8")));

        _session.Do(Note("", "r2c8=8", ""));
        Assert.Empty(_session.State.Notes.Notes);
        Assert.Empty(_session.Try(Note("", "r2c8=8", " ")).Events);
    }

    [Fact]
    public void Notes_belong_to_their_puzzle()
    {
        _session.Do(Note("r2c2=6", "", "Slowly"), new LoadPuzzle(Puzzles.Demo, "", "", ""));
        Assert.Equal("", NoteOf("r2c2=6", ""));

        _session.Undo();
        Assert.Equal("Slowly", NoteOf("r2c2=6", ""));
    }

    [Fact]
    public void The_same_puzzle_loaded_again_has_them_again()
    {
        _session.Do(Note("r2c2=6", "", "Slowly"), Load(Puzzles.Demo), Note("r3c2=6", "", "Of the other"), Load(Puzzles.Easy));
        Assert.Equal(("Slowly", ""), (NoteOf("r2c2=6", ""), NoteOf("r3c2=6", "")));

        _session.Do(Note("r2c2=6", "", "Quickly")).Undo().Undo();
        Assert.Equal("Quickly", NoteOf("r2c2=6", ""));
    }

    [Fact]
    public void Those_kept_with_the_puzzle_take_the_place_of_those_of_the_show_and_are_an_event_of_it()
    {
        _session.Do(Note("r2c2=6", "", "Slowly"));
        ValueArray<StepNote> kept = new([new(CandidateSet.Empty, CandidateSet.Parse("r1c8=8"), "Kept")]);

        _session.Do(new RecallNotes(kept));

        Assert.Equal(kept, _session.State.Notes.Notes);
        Assert.IsType<NotesRecalled>(_session.Log[^1]);
        Assert.Empty(_session.Try(new RecallNotes(kept)).Events);
        Assert.Equal(_session.State, PlayedSession.Replay(_session.Log));
    }

    [Fact]
    public void What_is_too_long_or_belongs_to_no_step_is_refused()
    {
        Assert.Equal("A note has at most 400 characters: shorten it.", _session.Refused(Note("r2c2=6", "", new string('x', 401))));
        Assert.Equal(
            "A note is one line of plain text: take the control characters out.", _session.Refused(Note("r2c2=6", "", "a\u0007b")));
        Assert.Equal(
            "A note belongs to a step that places or takes out something: choose one of the run sheet.",
            _session.Refused(Note("", "", "Slowly")));
    }

    private static LoadPuzzle Load(string grid) => new(grid, "", "", "");

    private string NoteOf(string places, string removes) =>
        _session.State.Notes.At(CandidateSet.Parse(places), CandidateSet.Parse(removes));

    private static NoteStep Note(string places, string removes, string text) =>
        new(CandidateSet.Parse(places), CandidateSet.Parse(removes), text);
}
