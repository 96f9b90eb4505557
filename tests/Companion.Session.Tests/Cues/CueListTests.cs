using Companion.Engine.Proofs;
using Companion.Session.Commands;
using Companion.Session.State;

namespace Companion.Session.Tests.Cues;

public sealed class CueListTests
{
    private const string Changed = "Somebody changed this just now: look again.";
    private const string Gone = "Somebody took this off the cue list just now: look again.";

    private readonly PlayedSession _session = PlayedSession.Of(Puzzles.Easy);
    private readonly Deduction _single;

    public CueListTests()
    {
        _single = _session.Scan().Named(_session.State, "hidden-single 6 single r2c2 in b1 places r2c2=6")!;
        _session.Do(new CueText("Welcome"), new CueDeduction(_single, Grade.What), new CueText("  Who set \n it "));
    }

    [Fact]
    public void Call_outs_are_listed_in_the_order_in_which_they_come() => IsListed("""
        1 listed "Welcome" v1
        2 listed hidden-single r2c2 as far as what v1
        3 listed "Who set it" v1
        """);

    [Fact]
    public void A_call_out_is_moved_behind_another_or_to_the_head()
    {
        _session.Do(new MoveCue(3, null), new MoveCue(1, 2));

        IsListed("""
            3 listed "Who set it" v1
            2 listed hidden-single r2c2 as far as what v1
            1 listed "Welcome" v1
            """);
    }

    [Theory]
    [InlineData(1, null)]
    [InlineData(2, 1)]
    [InlineData(2, 2)]
    public void A_move_to_where_it_stands_is_none(int id, int? after) => Assert.Empty(_session.Try(new MoveCue(id, after)).Events);

    [Fact]
    public void A_call_out_comes_to_stand_by_goes_and_is_done_and_can_come_back()
    {
        _session.Do(new TurnCue(1, 1, CueStage.StandBy), new TurnCue(2, 1, CueStage.StandBy), new TurnCue(1, 2, CueStage.Go));
        IsListed("""
            1 go "Welcome" v3
            2 stand by hidden-single r2c2 as far as what v2
            3 listed "Who set it" v1
            """);

        _session.Do(new TurnCue(1, 3, CueStage.Done), new TurnCue(2, 2, CueStage.Listed));
        IsListed("""
            1 done "Welcome" v4
            2 listed hidden-single r2c2 as far as what v3
            3 listed "Who set it" v1
            """);
    }

    [Fact]
    public void Words_and_grades_are_changed_by_those_who_have_seen_the_newest()
    {
        _session.Do(new RewordCue(1, 1, "Good evening"), new RegradeCue(2, 1, Grade.Why));

        Assert.Equal(Changed, _session.Refused(new RewordCue(1, 1, "Good morning")));
        Assert.Equal(Changed, _session.Refused(new RegradeCue(2, 1, Grade.Where)));
        Assert.Equal(Changed, _session.Refused(new TurnCue(2, 1, CueStage.Go)));
        Assert.Equal(Changed, _session.Refused(new TakeCue(2, 1)));
        Assert.Equal(Changed, _session.Refused(new RemoveCue(2, 1)));
        IsListed("""
            1 listed "Good evening" v2
            2 listed hidden-single r2c2 as far as why v2
            3 listed "Who set it" v1
            """);
    }

    [Fact]
    public void Two_who_want_the_same_are_both_content()
    {
        foreach (var command in new Command[] { new TurnCue(1, 1, CueStage.Go), new RewordCue(3, 1, "Thanks"), new RegradeCue(2, 1, Grade.Why), new RemoveCue(1, 2) })
        {
            _session.Do(command);
            Assert.Empty(_session.Do(command).Try(command).Events);
        }

        IsListed("""
            2 listed hidden-single r2c2 as far as why v2
            3 listed "Thanks" v2
            """);
    }

    [Fact]
    public void What_somebody_took_off_the_list_is_gone_for_all()
    {
        _session.Do(new RemoveCue(1, 1));

        Assert.Equal(Gone, _session.Refused(new RewordCue(1, 1, "Good evening")));
        Assert.Equal(Gone, _session.Refused(new RegradeCue(1, 1, Grade.Why)));
        Assert.Equal(Gone, _session.Refused(new TurnCue(1, 1, CueStage.Go)));
        Assert.Equal(Gone, _session.Refused(new TakeCue(1, 1)));
        Assert.Equal(Gone, _session.Refused(new MoveCue(1, 2)));
        Assert.Equal(Gone, _session.Refused(new MoveCue(2, 1)));
    }

    [Fact]
    public void No_number_is_given_twice()
    {
        _session.Do(new RemoveCue(3, 1), new CueText("Thanks"));

        Assert.Equal([1, 2, 4], _session.State.Cues.CallOuts.Select(callOut => callOut.Id));
    }

    [Fact]
    public void Each_kind_has_its_own_contents()
    {
        Assert.Equal(
            "The words of a deduction come from its grade: choose another grade.", _session.Refused(new RewordCue(2, 1, "Six")));
        Assert.Equal("A talking point has no grade: change its words.", _session.Refused(new RegradeCue(1, 1, Grade.Why)));
        Assert.Equal("A talking point is said and not shown: mark it done.", _session.Refused(new TakeCue(1, 1)));
    }

    [Theory]
    [InlineData("", "A talking point has words: write some.")]
    [InlineData(" \t\n ", "A talking point has words: write some.")]
    [InlineData("a\u0007b", "A talking point is one line of plain text: take the control characters out.")]
    public void Words_are_one_line_of_plain_text(string text, string refusal)
    {
        Assert.Equal(refusal, _session.Refused(new CueText(text)));
        Assert.Equal(refusal, _session.Refused(new RewordCue(1, 1, text)));
    }

    [Fact]
    public void Words_and_the_list_have_an_end()
    {
        Assert.Equal(
            "A talking point has at most 400 characters: make two of it.", _session.Refused(new CueText(new('a', 401))));
        for (var count = 3; count < CueList.Most; count++)
            _session.Do(new CueText($"Point {count}"));

        Assert.Equal("The cue list is full at 100: take something off it.", _session.Refused(new CueText("One more")));
        Assert.Equal(
            "The cue list is full at 100: take something off it.", _session.Refused(new CueDeduction(_single, Grade.Why)));
    }

    [Fact]
    public void The_same_deduction_is_listed_once_at_each_grade()
    {
        Assert.Equal(
            "This is on the cue list already: choose another grade, or another deduction.",
            _session.Refused(new CueDeduction(_single, Grade.What)));
        _session.Do(new CueDeduction(_single, Grade.Why), new TurnCue(2, 1, CueStage.Done), new CueDeduction(_single, Grade.What));

        Assert.Equal(5, _session.State.Cues.CallOuts.Count);
    }

    [Fact]
    public void Entries_and_undo_leave_the_list_alone()
    {
        var before = _session.State.Cues;

        _session.Place("r2c2", 6).Undo().Redo();

        Assert.Equal(before, _session.State.Cues);
    }

    private void IsListed(string expected) => Assert.Equal(expected, CueDrawing.Of(_session.State.Cues));
}
