using Companion.Engine;
using Companion.Engine.Proofs;
using Companion.Session.Asks.Answers;
using Companion.Session.Commands;

namespace Companion.Session.Tests.Asks;

/// <summary>Viewers get hints grade by grade, no faster than they can read them and no further than the presenter allows.</summary>
public sealed class HintTests
{
    [Fact]
    public void Each_ask_goes_one_grade_further()
    {
        var show = AskedShow.Of(Puzzles.Easy);

        Assert.Equal(["@ann: Look at block 1"], show.Types("ann", "!hint"));
        show.Wait(60);
        Assert.Equal(["@ann: Look for a hidden single"], show.Types("ann", "!hint"));
        show.Wait(60);
        Assert.Equal(["@ann: Hidden single: 6 in block 1"], show.Types("ann", "!hint"));
        show.Wait(60);
        Assert.Equal(
            [
                "@ann: Hidden single: 6 in block 1 → r2c2 is 6",
                "Every house needs every digit, so a digit with a single place left in a house has to go there.",
            ],
            show.Types("ann", "!hint"));
        show.Wait(60);
        Assert.Equal(["@ann: You have had all of this step"], show.Types("ann", "!hint"));
    }

    [Fact]
    public void Every_viewer_begins_at_the_first_grade_and_begins_again_with_the_next_deduction()
    {
        var show = AskedShow.Of(Puzzles.Easy);
        show.Types("ann", "!hint 2");

        Assert.Equal(["@bob: Look at block 1"], show.Types("bob", "!hint"));
        show.Place("r2c2", 6).Wait(60);
        Assert.Equal(["@ann: Look at block 1"], show.Types("ann", "!hint"));
    }

    [Fact]
    public void A_grade_that_is_named_is_given_at_once_and_again()
    {
        var show = AskedShow.Of(Puzzles.Easy);

        Assert.Equal(["@ann: Hidden single: 6 in block 1"], show.Types("ann", "!hint 3"));
        Assert.Equal(["@ann: Look at block 1"], show.Types("ann", "!hint 1"));
        Assert.Equal(["@ann: Hidden single: 6 in block 1"], show.Types("ann", "!hint 3"));
        show.Wait(60);
        Assert.StartsWith("@ann: Hidden single: 6 in block 1 → r2c2", show.Types("ann", "!hint")[0], StringComparison.Ordinal);
    }

    [Fact]
    public void The_next_grade_comes_when_the_last_can_have_been_read_and_one_is_told_once_to_wait()
    {
        var show = AskedShow.Of(Puzzles.Easy);
        show.Types("ann", "!hint");

        // "Have a look at block one." has six words, at 150 a minute 2.4 s.
        Assert.Equal(["@ann: Take your time with that one; there is more in 3 s"], show.Types("ann", "!hint"));
        Assert.Empty(show.Types("ann", "!hint"));
        Assert.Empty(show.Wait(2.3).Types("ann", "!hint 4"));
        Assert.Equal(["@ann: Look for a hidden single"], show.Wait(0.2).Types("ann", "!hint"));
    }

    [Fact]
    public void The_pause_between_grades_can_be_set()
    {
        var show = AskedShow.Of(Puzzles.Easy, AskedShow.AtOnce with { GradePauseSeconds = 30 });
        show.Types("ann", "!hint");

        Assert.Equal(["@ann: Take your time with that one; there is more in 1 s"], show.Wait(29.5).Types("ann", "!hint"));
        Assert.Equal(["@ann: Look for a hidden single"], show.Wait(0.5).Types("ann", "!hint"));
    }

    [Fact]
    public void Hints_go_as_far_as_the_presenter_allows()
    {
        var show = AskedShow.Of(Puzzles.Easy).Do(new LimitAsks(new(Open: true, Grade.What, QuietOnAir: false)));

        Assert.Equal(["@ann: Look for a hidden single"], show.Types("ann", "!hint 4"));
        Assert.Equal(["@ann: Hints go as far as grade 2 for now"], show.Types("ann", "!hint"));
        Assert.Equal(["@ann: Look at block 1"], show.Types("ann", "!hint 1"));

        show.Do(new LimitAsks(new(Open: true, Grade.Which, QuietOnAir: false))).Wait(60);
        Assert.Equal(["@ann: Hidden single: 6 in block 1"], show.Types("ann", "!hint"));
    }

    [Fact]
    public void A_hint_about_a_cell_is_about_the_easiest_deduction_that_touches_it()
    {
        var show = AskedShow.Of(Puzzles.Easy);

        // Nothing easier touches it: all singles of this board are elsewhere.
        Assert.Equal(["@ann: Look for an XY-wing"], show.Types("ann", "!hint r1c2 2"));
        Assert.Equal(["@ann: Look for a hidden single"], show.Types("ann", "!hint r2c2 2"));
        Assert.Equal(["@ann: r1c3 has its digit; !why r1c3 tells why"], show.Types("ann", "!hint r1c3"));
        Assert.Equal(["@ann: I can see nothing new that touches r1c2"], AskedShow.Of(Puzzles.Hard).Types("ann", "!hint r1c2"));
    }

    [Fact]
    public void Hints_go_no_higher_than_the_rule_at_which_the_presenter_stops_the_ladder()
    {
        var show = AskedShow.Of(Puzzles.Easy).Do(new StopLadder(new("naked-single")));

        Assert.Equal(["@ann: I can see nothing new that touches r1c2"], show.Types("ann", "!hint r1c2"));
        Assert.Equal(["@ann: Look for a hidden single"], show.Types("ann", "!hint 2"));
    }

    // "Hidden single: 6 in block 1" keeps the cell back. To whoever named the cell it would tell all.
    [Fact]
    public void Who_names_the_cell_of_a_hidden_single_is_not_told_its_digit_before_grade_4()
    {
        var show = AskedShow.Of(Puzzles.Easy);

        Assert.Equal(["@ann: Look for a hidden single"], show.Types("ann", "!hint r2c2 3"));
        show.Wait(60);
        Assert.StartsWith("@ann: Hidden single: 6 in block 1 → r2c2 is 6", show.Types("ann", "!hint r2c2")[0], StringComparison.Ordinal);

        show.Do(new LimitAsks(new(Open: true, Grade.Which, QuietOnAir: false)));
        Assert.Equal(["@bob: Look for a hidden single"], show.Types("bob", "!hint r2c2 4"));
        show.Wait(60);
        Assert.Equal(["@bob: Hints go as far as grade 2 for now"], show.Types("bob", "!hint r2c2"));
    }

    [Fact]
    public void What_was_told_and_is_not_marked_comes_before_what_builds_on_it()
    {
        var show = AskedShow.Of(Puzzles.Demo);
        var told = TellAllThatCanBeSeen(show);
        var words = ShippedVoice.Voice.Wording;
        var first = Assert.Single(show.Types("ann", "!hint 3"));
        const string Says = "@ann: First a step that was told before and that no mark shows yet. ";

        Assert.StartsWith(Says, first, StringComparison.Ordinal);
        Assert.Contains(told, deduction => first == Says + words.HintsFor(Board.Blank, deduction).Which.Words.Written);

        // When all of it is had, the next one comes: in the end the one that builds on them.
        var last = "";
        for (var asked = 0; asked < 40 && !last.Contains("all of this step", StringComparison.Ordinal); asked++)
            last = show.Wait(120).Types("ann", "!hint")[0];
        var found = show.Answers.Select(answer => answer.Answered.Answer).OfType<HintGiven>().ToList();
        Assert.False(found[^1].IsMissingStep);
        Assert.DoesNotContain(Assert.IsType<WhyHint>(found[^1].Hint).Deduction, told);
    }

    [Fact]
    public void After_a_wrong_digit_nothing_is_hinted_at_that_the_solution_contradicts()
    {
        var (hints, misled) = (0, 0);
        foreach (var (cell, digit) in PlayedSession.Of(Puzzles.Easy).Scan().Known!.Candidates.Where((_, index) => index % 9 == 0))
        {
            var show = AskedShow.Of(Puzzles.Easy).Do(new PlaceDigit(cell, digit));
            var solution = show.Session.State.Grid.Puzzle!.Solution;
            misled += show.Session.Scan().Open.Count(found => !IsTrue(found.Deduction, solution));
            for (var viewer = 0; viewer < Cell.Count; viewer += 7)
                show.Types($"viewer{viewer}", $"!hint {Cell.At(viewer)} 4");
            foreach (var given in show.Answers.Select(answer => answer.Answered.Answer).OfType<HintGiven>())
            {
                hints++;
                Assert.True(IsTrue(((WhyHint)given.Hint).Deduction, solution), given.ToString());
            }
        }

        Assert.True(hints > 40 && misled > 20, $"{hints} hints, {misled} deductions that mislead: too few to show anything.");

        static bool IsTrue(Deduction deduction, Solution solution) =>
            deduction.Places.All(solution.Holds) && !deduction.Removes.Any(solution.Holds);
    }

    // Fills in every single, then tells and does not mark whatever viewers can follow, until what is left builds on that.
    private static List<Deduction> TellAllThatCanBeSeen(AskedShow show)
    {
        var told = new List<Deduction>();
        while (show.Session.Scan().Open.FirstOrDefault(found => found.Support.Unseen.IsEmpty) is { } seen)
        {
            if (seen.Deduction.Places.IsEmpty)
            {
                told.Add(seen.Deduction);
                show.Do(new MarkUsed(seen.Deduction));
            }
            else
            {
                show.Do(new PlaceDigit(seen.Deduction.Places.First().Cell, seen.Deduction.Places.First().Digit));
            }
        }

        Assert.NotEmpty(show.Session.Scan().Open);
        return told;
    }
}
