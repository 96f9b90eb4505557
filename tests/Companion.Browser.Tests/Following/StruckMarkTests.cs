using Companion.Engine;
using Companion.Session.Events;

namespace Companion.Browser.Tests.Following;

/// <summary>Lines that the presenter draws through marks: what they strike is out of the board as if it were struck by hand.</summary>
public sealed class StruckMarkTests(SharingBrowser browser) : WithFollowing(browser)
{
    private static readonly CellSet Corners = CellSet.Of(Cell.Parse("r1c3"), Cell.Parse("r2c3"));
    private static readonly CellSet Lists = CellSet.Of(Cell.Parse("r1c4"), Cell.Parse("r1c6"), Cell.Parse("r3c4"));

    private static readonly Event[] Marked =
    [
        new BlockMarkChanged(default, Corners, Digit.Of(2), IsSet: true),
        new CellMarkChanged(default, Lists, Digit.Of(2), IsSet: true),
        new CellMarkChanged(default, Lists, Digit.Of(6), IsSet: true),
    ];

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task A_line_through_a_mark_is_an_entry_and_is_undone_or_taken_out_again(bool looksOther)
    {
        var (program, presenter) = await FollowAsync(looksOther ? await OtherLookAsync() : null);
        await program.PlayAsync("r1c3 r2c3", "x", "2");
        await ExpectAsync(presenter, "r1c3", "open, block marks 2");
        await program.PlayAsync("r1c4 r1c6 r3c4", "c", "2");
        await ExpectAsync(presenter, "r3c4", "open, cell mark 2");
        await program.PlayAsync("", "6");
        await ExpectAsync(presenter, "r3c4", "open, cell mark 2 6");

        await program.PlayAsync("r1c4", "s", "2");
        await ExpectAsync(presenter, "r1c4", "open, cell mark 2 6, struck 2");
        await program.PlayAsync("", "Control+z");
        await ExpectAsync(presenter, "r1c4", "open, cell mark 2 6");
        await program.PlayAsync("r1c3", "2");
        await ExpectAsync(presenter, "r1c3", "open, block marks 2, struck 2");
        await program.PlayAsync("r1c4", "6");
        await ExpectAsync(presenter, "r1c4", "open, cell mark 2 6, struck 6");
        await program.PlayAsync("r1c3", "2"); // an undo would take the other line out
        await ExpectAsync(presenter, "r1c3", "open, block marks 2");

        Event[] played =
        [
            .. Marked,
            Line("r1c4", 2),
            new EntryUndone(default),
            Line("r1c3", 2),
            Line("r1c4", 6),
            Line("r1c3", 2, isStruck: false),
        ];
        Assert.Equal(played, KeptLog.Entries(Companion.Folder));
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task A_line_that_is_there_from_the_beginning_is_entered_after_the_marks_and_another_may_follow(bool looksOther)
    {
        // The only line on the board: it is not asked for, as comparing and the network both see it.
        var (program, presenter) = await FollowAsync(
            looksOther ? await OtherLookAsync() : null,
            async program =>
            {
                await program.PlayAsync("r1c3 r2c3", "x", "2");
                await program.PlayAsync("r1c4 r1c6 r3c4", "c", "2", "6");
                await program.PlayAsync("r1c4", "s", "6");
            });
        await ExpectAsync(presenter, "r1c3", "open, block marks 2");
        await ExpectAsync(presenter, "r1c4", "open, cell mark 2 6, struck 6");

        await program.PlayAsync("r2c3", "2");
        await ExpectAsync(presenter, "r2c3", "open, block marks 2, struck 2");
        await program.PlayAsync("", "Control+z");
        await ExpectAsync(presenter, "r2c3", "open, block marks 2");
        await program.PlayAsync("", "Control+z");
        await ExpectAsync(presenter, "r1c4", "open, cell mark 2 6");

        Event[] played = [.. Marked, Line("r1c4", 6), Line("r2c3", 2), new EntryUndone(default), new EntryUndone(default)];
        Assert.Equal(played, KeptLog.Entries(Companion.Folder));
    }

    private static StrikeChanged Line(string cell, int digit, bool isStruck = true) =>
        new(default, CellSet.Of(Cell.Parse(cell)), Digit.Of(digit), isStruck);
}
