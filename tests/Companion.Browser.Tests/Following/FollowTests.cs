using System.Text.RegularExpressions;
using Companion.Engine;
using Companion.Session.Events;
using Microsoft.Playwright;

namespace Companion.Browser.Tests.Following;

/// <summary>One page plays in a program, the panel follows it by the browser's own screen capture.</summary>
public sealed class FollowTests(SharingBrowser browser) : WithFollowing(browser)
{
    private const string AllEnded = "() => window.shown.length > 0 && window.shown.every(track => track.readyState === 'ended')";

    [Fact]
    public async Task What_is_played_in_a_program_is_in_the_log_entry_by_entry_with_marks_and_undo()
    {
        var (program, presenter) = await FollowAsync();

        await BeginAsync(program, presenter);
        await program.PlayAsync("r9c7", "d", "1");
        await ExpectAsync(presenter, "r9c7", "1");
        await program.PlayAsync("", "Control+z");
        await ExpectAsync(presenter, "r9c7", "open");
        await program.PlayAsync("r9c7", "3");
        await ExpectAsync(presenter, "r9c7", "3");
        await program.PlayAsync("", "Control+z");
        await ExpectAsync(presenter, "r9c7", "open");
        await program.PlayAsync("r1c4", "c", "2");
        await ExpectAsync(presenter, "r1c4", "open, cell mark 6");

        Event[] played =
        [
            new DigitPlaced(default, Cell.Parse("r5c5"), Digit.Of(5)),
            new BlockMarkChanged(default, CellSet.Of(Cell.Parse("r1c3"), Cell.Parse("r2c3")), Digit.Of(2), IsSet: true),
            new CellMarkChanged(default, CellSet.Of(Cell.Parse("r1c4")), Digit.Of(2), IsSet: true),
            new CellMarkChanged(default, CellSet.Of(Cell.Parse("r1c4")), Digit.Of(6), IsSet: true),
            new DigitPlaced(default, Cell.Parse("r9c7"), Digit.Of(1)),
            new EntryUndone(default),
            new DigitPlaced(default, Cell.Parse("r9c7"), Digit.Of(3)),
            new EntryUndone(default),
            new CellMarkChanged(default, CellSet.Of(Cell.Parse("r1c4")), Digit.Of(2), IsSet: false),
        ];
        Assert.Equal(played, KeptLog.Entries(Companion.Folder));
    }

    [Fact]
    public async Task A_list_that_stands_is_finished_and_counts()
    {
        var (program, presenter) = await FollowAsync();
        await program.PlayAsync("r1c4", "c", "2", "6");
        await ExpectAsync(presenter, "r1c4", "open, cell mark 2 6");

        await Assertions.Expect(presenter.Page.Locator("[role=gridcell].writing")).ToHaveCountAsync(0, new() { Timeout = Patience });
    }

    [Fact]
    public async Task When_it_is_stopped_the_screen_is_given_back_and_nothing_more_is_sent()
    {
        var (program, presenter) = await FollowAsync();
        var posted = 0;
        presenter.Page.Request += (_, request) => posted += request.Url.Contains("/screen", StringComparison.Ordinal) ? 1 : 0;
        await program.PlayAsync("r5c5", "d", "5");
        await ExpectAsync(presenter, "r5c5", "5");
        Assert.NotEqual(0, posted);

        await presenter.Page.GetByRole(AriaRole.Button, new() { Name = "Stop following" }).ClickAsync();
        Assert.True(await presenter.Page.EvaluateAsync<bool>(AllEnded));
        await Assertions.Expect(presenter.Page.Locator(".sign.screen")).ToHaveCountAsync(0);
        posted = 0;
        await program.PlayAsync("r9c7", "1");
        await presenter.Page.WaitForTimeoutAsync(700); // it would have been sent within a tenth of a second

        Assert.Equal(0, posted);
        await ExpectAsync(presenter, "r9c7", "open");
    }

    [Fact]
    public async Task When_the_program_is_closed_the_screen_is_lost_and_that_is_said()
    {
        var (program, presenter) = await FollowAsync();
        await program.Page.CloseAsync();

        await ExpectSignAsync(presenter, "Screen lost");
    }

    [Fact]
    public async Task By_keys_alone_a_screen_is_chosen_its_corners_moved_and_followed()
    {
        var program = await SolvingPage.OpenAsync(Context, Examples.Easy);
        var presenter = await PresenterPage.OpenAsync(Context, Companion);
        await presenter.LoadAsync(Examples.Easy);
        await presenter.PressAsync("m");
        await FocusAsync(presenter, "Choose a screen");
        await presenter.PressAsync("Enter");
        await ExpectFoundAsync(presenter);

        var corner = presenter.Page.GetByRole(AriaRole.Button, new() { NameRegex = new Regex("^Upper left corner") });
        await corner.FocusAsync();
        var before = await corner.GetAttributeAsync("style");
        await presenter.PressAsync("ArrowRight");
        Assert.NotEqual(before, await corner.GetAttributeAsync("style"));
        await presenter.PressAsync("ArrowLeft");
        await FocusAsync(presenter, "Follow this grid");
        await presenter.PressAsync("Enter");

        await ExpectSignAsync(presenter, "Following the screen");
        await program.PlayAsync("r5c5", "d", "5");
        await ExpectAsync(presenter, "r5c5", "5");
    }

    [Fact]
    public async Task A_corner_that_is_dragged_by_the_mouse_lies_where_it_is_let_go()
    {
        await SolvingPage.OpenAsync(Context, Examples.Easy);
        var presenter = await PresenterPage.OpenAsync(Context, Companion);
        await presenter.PressAsync("m");
        await Button(presenter, "Choose a screen").ClickAsync();
        await ExpectFoundAsync(presenter);

        var corner = presenter.Page.GetByRole(AriaRole.Button, new() { NameRegex = new Regex("^Lower right corner") });
        var (x, y) = await MiddleAsync(corner);
        await presenter.Page.Mouse.MoveAsync(x, y);
        await presenter.Page.Mouse.DownAsync();
        await presenter.Page.Mouse.MoveAsync(x - 20, y - 10, new() { Steps = 4 });
        await presenter.Page.Mouse.UpAsync();
        var (movedX, movedY) = await MiddleAsync(corner);
        Assert.Equal((-20f, -10f), (movedX - x, movedY - y), (one, other) => Math.Abs(one.Item1 - other.Item1) < 1 && Math.Abs(one.Item2 - other.Item2) < 1);

        await presenter.Page.Mouse.MoveAsync(x, y);
        Assert.Equal((movedX, movedY), await MiddleAsync(corner));

        static async Task<(float X, float Y)> MiddleAsync(ILocator corner)
        {
            var box = (await corner.BoundingBoxAsync())!;
            return (box.X + box.Width / 2, box.Y + box.Height / 2);
        }
    }

    [Theory]
    [InlineData(ColorScheme.Light)]
    [InlineData(ColorScheme.Dark)]
    public async Task Axe_finds_no_serious_fault_in_the_dialog_and_in_what_waits(ColorScheme scheme)
    {
        await using var context = await Browser.OpenAsync(scheme: scheme);
        var program = await SolvingPage.OpenAsync(context, Examples.Easy);
        var presenter = await PresenterPage.OpenAsync(context, Companion);
        await presenter.LoadAsync(Examples.Easy);
        await presenter.Cues.WriteAsync("Thanks to the setter");
        await presenter.Cell("r1c1").FocusAsync();
        await presenter.PressAsync("m");
        await Button(presenter, "Choose a screen").ClickAsync();
        await ExpectFoundAsync(presenter);
        await ExpectNoSeriousFaultAsync(presenter.Page);

        await Button(presenter, "Follow this grid").ClickAsync();
        await program.ScribbleAsync("r5c5", "%");
        await Assertions.Expect(Asked(presenter)).ToBeVisibleAsync(new() { Timeout = Patience });
        await ExpectNoSeriousFaultAsync(presenter.Page);
    }
}
