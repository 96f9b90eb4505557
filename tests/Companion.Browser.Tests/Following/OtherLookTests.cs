using Companion.Engine;
using Companion.Session.Events;

namespace Companion.Browser.Tests.Following;

/// <summary>A program that looks quite different: dark, on a canvas, in a face like handwriting that the network was never trained on.</summary>
public sealed class OtherLookTests(SharingBrowser browser) : WithFollowing(browser)
{
    [Fact]
    public async Task What_is_played_is_in_the_log_entry_by_entry()
    {
        var (program, presenter) = await FollowAsync(await OtherLookAsync());
        await BeginAsync(program, presenter);
        await program.PlayAsync("r1c3", "d", "4");
        await ExpectAsync(presenter, "r1c3", "4");
        await program.PlayAsync("", "Control+z");
        await ExpectAsync(presenter, "r1c3", "open, block marks 2");

        Event[] played =
        [
            new DigitPlaced(default, Cell.Parse("r5c5"), Digit.Of(5)),
            new BlockMarkChanged(default, CellSet.Of(Cell.Parse("r1c3"), Cell.Parse("r2c3")), Digit.Of(2), IsSet: true),
            new CellMarkChanged(default, CellSet.Of(Cell.Parse("r1c4")), Digit.Of(2), IsSet: true),
            new CellMarkChanged(default, CellSet.Of(Cell.Parse("r1c4")), Digit.Of(6), IsSet: true),
            new DigitPlaced(default, Cell.Parse("r1c3"), Digit.Of(4)),
            new EntryUndone(default),
        ];
        Assert.Equal(played, KeptLog.Entries(Companion.Folder));
    }
}
