using Companion.Engine.Proofs;
using Companion.Session.Commands;
using Companion.Session.Events;
using Companion.Session.State;
using Companion.Session.Views;

namespace Companion.Session.Tests.Cues;

/// <summary>What comes of deductions on the cue list: taken on air, or passed.</summary>
public sealed class TakingTests
{
    private const string Single = "hidden-single 6 single r2c2 in b1 places r2c2=6";
    private const string Pointing = "pointing 8 locked r7c8 r9c8 in b9 removes r1c8=8 r2c8=8";

    private readonly PlayedSession _session = PlayedSession.Of(Puzzles.Easy);

    [Fact]
    public void A_deduction_goes_on_air_at_its_grade_and_the_cue_is_done()
    {
        _session.Do(Cue(Single, Grade.Which), new TurnCue(1, 1, CueStage.Go), new TakeCue(1, 2));

        Assert.Equal((Single, Grade.Which), (_session.State.OnAir!.Deduction.ToString(), _session.State.OnAir.Grade));
        Assert.Equal(CueStage.Done, _session.State.Cues[1]!.Stage);
        Assert.Equal("This cue is done: have it stand by again first.", _session.Refused(new TakeCue(1, 3)));
    }

    [Fact]
    public void From_there_it_goes_on_grade_by_grade_whatever_stood_by_before()
    {
        _session.Do(new StandBy(Named(Pointing)), Cue(Single, Grade.What), new TakeCue(1, 1), new NextGrade());
        Assert.Equal((Single, Grade.Which), (_session.State.OnAir?.Deduction.ToString(), _session.State.OnAir?.Grade));

        _session.Do(new PreviousGrade(), new PreviousGrade());
        Assert.Equal(Grade.Where, _session.State.OnAir?.Grade);
    }

    [Fact]
    public void Taken_with_all_of_it_it_counts_as_said()
    {
        _session.Do(Cue(Pointing, Grade.Why), new TakeCue(1, 1));

        Assert.Equal(Pointing, Assert.Single(_session.State.Used).Deduction.ToString());
        Assert.Equal([typeof(StoodBy), typeof(PutOnAir), typeof(CueTurned)], _session.Log.TakeLast(3).Select(happened => happened.GetType()));
    }

    [Fact]
    public void A_deduction_that_was_carried_out_is_kept_and_says_so_until_an_undo_opens_it_again()
    {
        _session.Do(Cue(Single, Grade.What));
        Assert.Null(Passed());

        _session.Place("r2c2", 6);
        Assert.Equal("has been carried out", Passed());
        Assert.Equal("This deduction has been carried out: choose another one, or mark the cue done.", _session.Refused(new TakeCue(1, 1)));

        _session.Undo();
        Assert.Null(Passed());
        _session.Do(new TakeCue(1, 1));
    }

    [Fact]
    public void A_deduction_whose_cells_were_filled_otherwise_is_passed()
    {
        _session.Do(Cue(Pointing, Grade.What)).Place("r7c8", 1);

        Assert.Equal("has been passed", Passed());
    }

    [Fact]
    public void A_deduction_whose_support_came_back_no_longer_holds()
    {
        _session.Strike("r2c2", 8).Do(new MarkUsed(Named(Pointing)));
        _session.Do(Cue("hidden-single 8 single r2c7 in r2 places r2c7=8", Grade.What));
        Assert.Null(Passed());

        _session.Strike("r2c2", 8);
        Assert.Equal("no longer holds on this board", Passed());
    }

    [Fact]
    public void A_deduction_that_was_said_says_so()
    {
        _session.Do(Cue(Pointing, Grade.What), new MarkUsed(Named(Pointing)));

        Assert.Equal("has been said or used", Passed());
    }

    [Fact]
    public void Another_puzzle_passes_all_deductions_and_keeps_the_list()
    {
        _session.Do(Cue(Single, Grade.What), new CueText("Thanks"), new LoadPuzzle(Puzzles.Hard, "", "", ""));

        Assert.Equal("belongs to a puzzle that was loaded before", Passed());
        Assert.Equal(2, _session.State.Cues.CallOuts.Count);
    }

    [Fact]
    public void Sweeping_takes_off_what_is_done_and_what_is_passed_and_nothing_else()
    {
        _session.Do(
            Cue(Single, Grade.What), Cue(Pointing, Grade.What), new CueText("Thanks"), new CueText("Said"), new TurnCue(4, 1, CueStage.Done));
        _session.Place("r2c2", 6).Do(new SweepCues());

        Assert.Equal([2, 3], _session.State.Cues.CallOuts.Select(callOut => callOut.Id));
        Assert.Empty(_session.Try(new SweepCues()).Events);
    }

    [Fact]
    public void The_view_has_the_words_as_far_as_the_grade_goes_and_their_length()
    {
        _session.Do(new CueText("Six words are in this one"), Cue(Single, Grade.What), Cue(Single, Grade.Why));

        var (text, what, why) = (View[0], View[1], View[2]);
        var hints = ShippedVoice.Voice.Wording.HintsFor(_session.Scanned!.Known!, Named(Single));
        Assert.Equal(("Six words are in this one", 6 / 2.5, null), (text.Text, text.Seconds, text.Deduction));
        Assert.Equal((hints.What.Words.Spoken, hints.Why.Words.Spoken), (what.Text, why.Text));
        Assert.Equal(hints.Why.Words.TimeToSay().TotalSeconds, why.Seconds);
        Assert.Equal((Single, Grade.What, "r2c2"), (what.Deduction!.Id, what.Deduction.Grade, string.Join(' ', what.Deduction.Cells)));
    }

    [Fact]
    public void What_is_passed_keeps_the_words_that_it_was_listed_with()
    {
        _session.Do(Cue(Single, Grade.Why));
        var before = View[0].Text;

        _session.Place("r2c2", 6);

        Assert.Equal(before, View[0].Text);
    }

    private IReadOnlyList<CallOutView> View => CueViews.Of(_session.State, ShippedVoice.Voice).CallOuts;

    private string? Passed() => View[0].Deduction!.Passed;

    private Deduction Named(string id) => _session.Scan().Named(_session.State, id)!;

    private CueDeduction Cue(string id, Grade grade) => new(Named(id), grade);
}
