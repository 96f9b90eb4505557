using Companion.Engine.Proofs;
using Companion.Session.Commands;

namespace Companion.Session.Tests.Asks;

/// <summary>Asks about the board as it stands.</summary>
public sealed class BoardAskTests
{
    [Fact]
    public void Why_tells_what_was_open_before_the_digit_was_placed()
    {
        var show = AskedShow.Of(Puzzles.Easy).Place("r2c2", 6).Place("r1c6", 1);

        Assert.Equal(
            [
                "@ann: Hidden single: 6 in block 1 → r2c2 is 6",
                "Every house needs every digit, so a digit with a single place left in a house has to go there.",
            ],
            show.Types("ann", "!why r2c2"));
        Assert.Equal(["@ann: r1c3 is a given"], show.Types("ann", "!why r1c3"));
        Assert.Equal(["@ann: r1c1 is still open"], show.Types("ann", "!why r1c1"));
    }

    [Fact]
    public void Why_tells_the_last_step_of_the_proof_that_the_session_keeps_and_how_many_lead_up_to_it()
    {
        // r1c2 is 8: no single deduction gives it at the start, a proof of several does.
        var show = AskedShow.Of(Puzzles.Easy).Place("r1c2", 8);
        Assert.Equal(["@ann: I have no short reason for r1c2"], show.Types("ann", "!why r1c2"));

        show.Attribute();

        var proved = Assert.IsType<Attribution.Proved>(Assert.Single(show.Session.State.Attributions).Attribution);
        Assert.True(proved.Steps.Length > 1);
        var said = show.Types("ann", "!why r1c2");
        Assert.Equal(2, said.Length);
        Assert.StartsWith($"@ann: Steps before it: {proved.Steps.Length - 1}. Then ", said[0], StringComparison.Ordinal);
        Assert.EndsWith("→ r1c2 is 8", said[0], StringComparison.Ordinal);
    }

    // Both have no deduction behind them, and nobody is told which is wrong.
    [Fact]
    public void Why_says_the_same_of_a_right_digit_without_a_short_reason_and_of_a_wrong_one()
    {
        // r1c2 is 8 in the solution.
        var right = AskedShow.Of(Puzzles.Easy).Place("r1c2", 8);
        var wrong = AskedShow.Of(Puzzles.Easy).Place("r1c2", 5);

        Assert.Equal(["@ann: I have no short reason for r1c2"], right.Types("ann", "!why r1c2"));
        Assert.Equal(["@ann: I have no short reason for r1c2"], wrong.Types("ann", "!why r1c2"));
    }

    [Fact]
    public void Left_counts_what_stands_even_where_there_are_too_many()
    {
        var show = AskedShow.Of(Puzzles.Easy);
        var solution = show.Session.State.Grid.Puzzle!.Solution;
        foreach (var cell in Engine.CellSet.All.Where(cell => show.Session.State.Grid.DigitAt(cell) is null).SkipLast(1))
            show.Do(new PlaceDigit(cell, solution[cell]));
        Assert.Equal(["@ann: Still to place, digit × how many: 2 × 1"], show.Types("ann", "!left"));

        show.Place("r9c9", 1);
        Assert.Equal(["@ann: Still to place, digit × how many: 2 × 1"], show.Types("ann", "!left"));
        show.Place("r9c9", 2);
        Assert.Equal(["@ann: Every digit is placed"], show.Types("ann", "!left"));
        Assert.Equal(["@ann: I can see nothing new that follows from this board"], show.Types("ann", "!hint"));
    }

    [Theory]
    [InlineData("Lanterns", "Ann", "https://example.org/1", "“Lanterns”, by Ann: https://example.org/1")]
    [InlineData("Lanterns", "", "", "“Lanterns”")]
    [InlineData("", "Ann", "", "This puzzle has no title, by Ann")]
    [InlineData("", "", "https://example.org/1", "This puzzle has no title: https://example.org/1")]
    public void Puzzle_names_title_setter_and_link(string title, string setter, string link, string says) => Assert.Equal(
        [$"@ann: {says}"], new AskedShow().Do(new LoadPuzzle(Puzzles.Easy, title, setter, link)).Types("ann", "!puzzle"));

    [Fact]
    public void A_call_is_counted_and_not_answered_in_the_chat()
    {
        var show = AskedShow.Of(Puzzles.Easy);

        Assert.Empty(show.Types("ann", "!call r2c2 6"));
        Assert.Empty(show.Types("bob", "!call r2c2 7"));
        Assert.Empty(show.Wait(60).Answers);
        Assert.Equal(2, Assert.Single(show.Enquiries.View.Calls).Viewers);
    }
}
