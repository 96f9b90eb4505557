using Companion.Engine;
using Companion.Session.Commands;
using Companion.Session.Views;

namespace Companion.Session.Tests.Watch;

public sealed class WrongDigitTests
{
    private readonly PlayedSession _session = PlayedSession.Of(Puzzles.Easy);

    [Fact]
    public void A_digit_that_disagrees_with_the_only_solution_is_named_with_its_entry()
    {
        _session.Place("r2c2", 6).Place("r5c5", 3).Place("r1c6", 1);

        var note = _session.Note(WatchKind.WrongDigit);

        Assert.Equal("3 in r5c5 disagrees with the only solution: take it out.", note.Text);
        Assert.Equal("r5c5", note.Cells());
        Assert.Equal(1, note.Entries);
        Assert.Equal(PlayedSession.Start.AddSeconds(2), note.Since);
    }

    [Fact]
    public void What_followed_from_it_is_named_and_what_follows_without_it_is_not()
    {
        // r2c3, r2c5 and r8c3 are 4 or 7. The wrong 7 in r8c3 makes r2c3 a 4, and that makes r2c5 a 7.
        // 6 in r2c2 is a hidden single with and without it.
        _session.Place("r1c6", 1).Place("r8c3", 7).Place("r2c3", 4).Place("r2c2", 6).Place("r2c5", 7);

        Assert.Equal(
            [
                "7 in r8c3 disagrees with the only solution: take it out, "
                + "and look again at what followed from it: 4 in r2c3 and 7 in r2c5.",
                "4 in r2c3 disagrees with the only solution: take it out, and look again at what followed from it: 7 in r2c5.",
                "7 in r2c5 disagrees with the only solution: take it out.",
            ],
            _session.Texts(WatchKind.WrongDigit));
    }

    [Fact]
    public void A_strike_or_a_list_can_follow_from_it_too()
    {
        _session.Place("r8c3", 7).Strike("r2c3", 7).List("r2c5", "7").Settle();

        Assert.Contains(
            "what followed from it: strike 7 in r2c3", _session.Texts(WatchKind.WrongDigit)[0], StringComparison.Ordinal);
    }

    [Fact]
    public void What_was_taken_back_since_is_not_named()
    {
        _session.Place("r8c3", 7).Place("r2c3", 4).Undo();

        Assert.Equal(["7 in r8c3 disagrees with the only solution: take it out."], _session.Texts(WatchKind.WrongDigit));
    }

    [Fact]
    public void The_right_digit_is_never_named()
    {
        foreach (var cell in CellSet.All - _session.State.Grid.Filled)
        {
            var right = _session.State.Grid.Puzzle!.Solution[cell];
            foreach (var digit in Digit.All.Without(right))
            {
                _session.Do(new PlaceDigit(cell, digit));
                var text = _session.Texts(WatchKind.WrongDigit)[0];
                Assert.Equal($"{digit} in {cell} disagrees with the only solution: take it out.", text);
                _session.Undo();
            }
        }
    }

    [Fact]
    public void The_oldest_wrong_digit_comes_first() => Assert.Equal(
        ["r5c5", "r1c1"],
        _session.Place("r5c5", 3).Place("r1c1", 5).Warnings()
            .Where(note => note.Kind == WatchKind.WrongDigit).Select(Notes.Cells));

    [Fact]
    public void Right_digits_have_no_warning() => Assert.Empty(_session.Place("r2c2", 6).Texts(WatchKind.WrongDigit));
}
