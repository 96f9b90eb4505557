using Companion.Engine;
using Companion.Session.Commands;
using Companion.Session.Events;

namespace Companion.Session.Tests.Entries;

public sealed class PuzzleTests
{
    private readonly PlayedSession _session = new();

    [Fact]
    public void Before_the_first_puzzle_entries_are_refused()
    {
        const string Reason = "Load a puzzle first.";

        Assert.Equal(Reason, _session.Refused(new PlaceDigit(Cell.Parse("r1c1"), Digit.Of(4))));
        Assert.Equal(Reason, _session.Refused(new ToggleCellMark(CellSet.All, Digit.Of(4))));
        Assert.Equal(Reason, _session.Refused(new Undo()));
        Assert.Equal(Reason, _session.Refused(new NextGrade()));
        Assert.Equal(Reason, _session.Scan().Blocked);
    }

    [Fact]
    public void A_puzzle_is_loaded_as_81_characters_with_its_credit()
    {
        _session.Do(new LoadPuzzle(Puzzles.Easy, " Evening ", "Somebody", "https://example.org/1"));

        var loaded = Assert.IsType<PuzzleLoaded>(Assert.Single(_session.Log));
        Assert.Equal(Puzzle.Parse(Puzzles.Easy).Board.ToString(), loaded.Grid);
        Assert.Equal(new("Evening", "Somebody", "https://example.org/1"), _session.State.Grid.Credit);
        Assert.Null(_session.State.History.Last);
    }

    [Fact]
    public void What_is_no_grid_is_refused() => Assert.Equal(
        "A grid has 81 cells and this has 2: give 81 characters or nine lines of nine.",
        _session.Refused(new LoadPuzzle("12", "", "", "")));

    [Fact]
    public void A_puzzle_with_several_solutions_is_refused() => Assert.Contains(
        "more than one solution",
        _session.Refused(new LoadPuzzle(Puzzles.Easy.Replace('9', '.'), "", "", "")),
        StringComparison.Ordinal);

    [Fact]
    public void Every_reason_is_given()
    {
        var reasons = _session.Refused(
            new LoadPuzzle($"??{new string('.', 79)}", "two\nlines", new string('x', 121), "ftp://example.org"));

        Assert.Contains("'?' at character 1", reasons, StringComparison.Ordinal);
        Assert.Contains("'?' at character 2", reasons, StringComparison.Ordinal);
        Assert.Contains("one line each", reasons, StringComparison.Ordinal);
        Assert.Contains("120 characters", reasons, StringComparison.Ordinal);
        Assert.Contains("http://", reasons, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_many_reasons_a_few_are_given_and_the_rest_is_counted() => Assert.EndsWith(
        "And 78 more reasons like these.",
        _session.Refused(new LoadPuzzle(new string('?', 82), "", "", "")),
        StringComparison.Ordinal);

    [Theory]
    [InlineData("javascript:alert(1)")]
    [InlineData("/relative")]
    [InlineData("data:text/html,x")]
    public void A_link_is_an_http_address_or_empty(string link) => Assert.Equal(
        "A link starts with http:// or https:// and has at most 500 characters: correct it or leave it empty.",
        _session.Refused(new LoadPuzzle(Puzzles.Easy, "", "", link)));

    [Fact]
    public void A_new_puzzle_clears_the_grid_the_air_and_what_stands_by()
    {
        _session.Do(new LoadPuzzle(Puzzles.Easy, "", "", "")).Place("r1c1", 4).List("r1c2", "58");
        var deduction = _session.Scan().Open[0].Deduction;
        _session.Do(new StandBy(deduction), new NextGrade(), new LoadPuzzle(Puzzles.Hard, "", "", ""));

        Assert.Empty(_session.State.Grid.Written);
        Assert.Empty(_session.State.Writing);
        Assert.Null(_session.State.OnAir);
        Assert.Null(_session.State.Standby);
    }
}
