using Companion.Engine;
using Companion.Engine.Proofs;
using Companion.Engine.Rules;
using Companion.Session.Proving;
using Companion.Session.Views;

namespace Companion.Session.Tests.Proving;

public sealed class CellQuestionTests
{
    private readonly PlayedSession _session = PlayedSession.Of(Puzzles.Easy);

    [Fact]
    public void An_open_cell_is_asked_about_on_the_board_as_it_stands()
    {
        Assert.Equal("Row two column two is six. It follows by a hidden single.", Ask("r2c2=6").Text);
        Assert.Equal(
            "Row five column six is four. It follows in three steps, the hardest a hidden single. A naked single does it alone.",
            Ask("r5c6=4").Text);
        Assert.Equal("Row two column two cannot be four. It follows by a hidden single.", Ask("r2c2=4").Text);
        Assert.Equal("hidden single", Assert.Single(Ask("r2c2=4").Steps).Name);
    }

    [Fact]
    public void A_digit_that_stands_is_told_by_its_entry_though_more_is_known_since()
    {
        _session.Place("r2c2", 6).Attribute().Place("r3c1", 2);

        Assert.Equal("Row two column two is six. It follows by a hidden single.", Ask("r2c2=6").Text);
        Assert.Equal("hidden single", Assert.Single(Ask("r2c2=6").Steps).Name);
    }

    [Fact]
    public void A_digit_whose_entry_is_not_attributed_yet_is_proved_at_once()
    {
        _session.Place("r2c2", 6);

        Assert.Equal("Row two column two is six. It follows by a hidden single.", Ask("r2c2=6").Text);
    }

    [Fact]
    public void What_a_strike_took_out_is_proved_from_the_digits()
    {
        _session.Strike("r2c2", 4);

        Assert.Equal("Row two column two cannot be four. It follows by a hidden single.", Ask("r2c2=4").Text);
    }

    [Theory]
    [InlineData("r1c3=3", "Row one column three is three: it was given.")]
    [InlineData("r1c3=4", "Row one column three is three, so it is not four.")]
    [InlineData("r1c1=6", "Row one column one cannot be six: it sees row one column seven, which is.")]
    public void What_the_digits_show_needs_no_steps(string asked, string text)
    {
        Assert.Equal(text, Ask(asked).Text);
        Assert.Empty(Ask(asked).Steps);
    }

    [Fact]
    public void From_a_board_that_disagrees_with_the_solution_nothing_is_proved()
    {
        _session.Place("r1c1", 5);

        Assert.Equal("5 in r1c1 disagrees with the only solution, so that nothing proves it: undo it or take it out.", Ask("r1c1=5").Text);
        Assert.StartsWith("The board disagrees with the only solution", Ask("r2c2=6").Text, StringComparison.Ordinal);

        _session.Place("r2c2", 6);
        Assert.StartsWith("The board before this entry disagreed", Ask("r2c2=6").Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Before_a_puzzle_there_is_nothing_to_ask() =>
        Assert.Equal("Load a puzzle first.", Ask("r1c1=5", new PlayedSession()).Text);

    [Theory]
    [MemberData(nameof(ReplayTests.FewSeeds), MemberType = typeof(ReplayTests))]
    public void Any_question_has_an_answer_in_any_session(int seed)
    {
        var random = new Random(seed);
        RandomSession.Of(seed, commands: 60, afterEach: session => Assert.NotEmpty(
            Ask(new Candidate(Cell.At(random.Next(Cell.Count)), Digit.Of(random.Next(1, 10))).ToString(), session).Text));
    }

    private WhyView Ask(string asked, PlayedSession? session = null) => CellQuestion.Answer(
        (session ?? _session).State,
        Candidate.Parse(asked),
        (board, target) => Attribution.Of(board, target, Ladder.Standard),
        ShippedVoice.Voice);
}
