using Companion.Engine;
using Companion.Engine.Proofs;
using Companion.Session.Commands;
using Companion.Session.State;
using Companion.Session.Views;

namespace Companion.Session.Tests.Views;

public sealed class PanelViewTests
{
    private const string HiddenSingle6 = "hidden-single 6 single r2c2 in b1 places r2c2=6";
    private const string Pointing8 = "pointing 8 locked r7c8 r9c8 in b9 removes r1c8=8 r2c8=8";

    private readonly PlayedSession _session = PlayedSession.Of(Puzzles.Easy);

    private DeskView Desk => PanelViews.Desk(_session.State, _session.Scanned, null, ShippedVoice.Voice);

    private NextView Next => PanelViews.Next(_session.Scan(), ShippedVoice.Voice);

    [Fact]
    public void The_desk_shows_what_is_written_and_what_stands_on_the_known_board()
    {
        _session.Place("r2c2", 6).Block("r1c1 r1c2", 4).Strike("r1c2", 5).List("r1c4", "47");

        var cells = Desk.Cells;

        Assert.Equal(81, cells.Length);
        Assert.Equal(new DeskCell(Digit.Of(3), true, null, default, default, default), cells[2]);
        Assert.Equal(new DeskCell(Digit.Of(6), false, null, default, default, default), cells[10]);
        Assert.Equal(
            new DeskCell(null, false, null, DigitSet.Parse("4"), DigitSet.Parse("5"), DigitSet.Parse("478")), cells[1]);
        Assert.Equal(new DeskCell(null, false, DigitSet.Parse("47"), default, default, DigitSet.Parse("49")), cells[3]);
        Assert.Equal([Cell.Parse("r1c4")], Desk.Writing);
    }

    [Fact]
    public void The_desk_says_what_undo_and_redo_would_do()
    {
        Assert.Null(Desk.Undo);
        _session.Place("r2c2", 6).Place("r1c6", 1).Undo();

        Assert.Equal(("6 in r2c2", "1 in r1c6"), (Desk.Undo, Desk.Redo));
    }

    [Fact]
    public void The_desk_carries_credit_scenes_permission_and_sequence()
    {
        _session.Do(new AllowCoHostOnAir(true), new PlaceFrame("close", new(0, 0, 0.5, 0.5)), new ShowFrame("close"));

        Assert.Equal(new Credit("Title", "Setter", ""), Desk.Credit);
        Assert.Equal(["close", "main"], Desk.Scenes.Select(scene => scene.Name));
        Assert.Equal(("close", true, 4L), (Desk.ShownFrame, Desk.CoHostMayAir, Desk.Sequence));
    }

    [Fact]
    public void A_broken_grid_has_no_candidates() => Assert.All(
        PanelViews.Desk(_session.Place("r1c1", 3).State, null, null, ShippedVoice.Voice).Cells, cell => Assert.Empty(cell.Candidates));

    [Fact]
    public void What_stands_by_shows_the_grade_that_comes_next_and_what_is_on_air_its_own()
    {
        StandBy(HiddenSingle6);
        Assert.Equal(Grade.Where, Desk.Standby!.Grade);
        Assert.Null(Desk.OnAir);

        _session.Do(new NextGrade(), new NextGrade());
        Assert.Equal((Grade.Which, Grade.What), (Desk.Standby!.Grade, Desk.OnAir!.Grade));

        StandBy(Pointing8);
        Assert.Equal((Grade.Where, Grade.What), (Desk.Standby!.Grade, Desk.OnAir!.Grade));
    }

    [Fact]
    public void A_cue_has_the_words_of_all_four_grades()
    {
        StandBy(HiddenSingle6);

        var hints = ShippedVoice.Voice.Wording.HintsFor(_session.State.Standby!.Board, _session.State.Standby.Deduction);

        Assert.Equal(
            new HintTexts(hints.Where.Words.Spoken, hints.What.Words.Spoken, hints.Which.Words.Spoken, hints.Why.Words.Spoken),
            Desk.Standby!.Hints);
    }

    [Fact]
    public void A_hint_stays_the_same_while_the_presenter_goes_on()
    {
        StandBy(Pointing8);
        _session.Do(new NextGrade(), new NextGrade(), new NextGrade());
        var before = PublicViews.Overlay(_session.State, Scenes.Main, ShippedVoice.Voice).OnAir;

        _session.Strike("r7c8", 7).Place("r9c9", 2).Place("r7c9", 4);

        var after = PublicViews.Overlay(_session.State, Scenes.Main, ShippedVoice.Voice).OnAir;
        Assert.Equal(PlainJson.Of(before!), PlainJson.Of(after!));
    }

    [Fact]
    public void Next_lists_every_open_deduction_with_its_words_and_their_length()
    {
        var listed = Next.Deductions.Single(listed => listed.Id == Pointing8);

        Assert.Equal(_session.Scanned!.Open.Length, Next.Deductions.Length);
        Assert.Equal("pointing", listed.Rule.Value);
        Assert.Equal(CandidateSet.Parse("r1c8=8 r2c8=8"), listed.Removes);
        Assert.Contains("eight", listed.Sentence, StringComparison.Ordinal);
        Assert.Equal(listed.Sentence.Split(' ').Length / 2.5, listed.Seconds, precision: 6);
        Assert.Null(listed.First);
    }

    [Fact]
    public void What_viewers_cannot_follow_says_so_and_offers_the_missing_step_first()
    {
        _session.Strike("r2c2", 8).Do(new MarkUsed(Named(Pointing8)));

        var listed = Next.Deductions.Single(listed => listed.Id == "hidden-single 8 single r2c7 in r2 places r2c7=8");

        Assert.Equal(CandidateSet.Parse("r2c8=8"), listed.Unseen);
        Assert.Equal(Pointing8, listed.First);
        Assert.StartsWith("pointing r", listed.FirstName, StringComparison.Ordinal);
        StandBy(listed.First!);
        Assert.Equal(Pointing8, Desk.Standby!.Deduction.Id);
    }

    [Fact]
    public void Next_says_why_nothing_was_scanned()
    {
        _session.Place("r1c1", 3);

        Assert.Equal("3 stands twice in row 1, in r1c1 and r1c3: change one of them.", Next.Blocked);
        Assert.Empty(Next.Deductions);
    }

    private Deduction Named(string id) => _session.Scan().Named(_session.State, id)!;

    private void StandBy(string id) => _session.Do(new StandBy(Named(id)));
}
