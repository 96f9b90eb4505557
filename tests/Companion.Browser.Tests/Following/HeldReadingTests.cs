using Companion.Engine;
using Companion.Session.Events;
using Microsoft.Playwright;

namespace Companion.Browser.Tests.Following;

/// <summary>What is on the screen and not entered before the presenter says so.</summary>
public sealed class HeldReadingTests(SharingBrowser browser) : WithFollowing(browser)
{
    [Fact]
    public async Task What_nobody_can_read_waits_with_its_picture_and_one_key_enters_it()
    {
        var (program, presenter) = await FollowAsync();
        await presenter.Page.EvaluateAsync("document.activeElement?.blur()");
        await program.ScribbleAsync("r5c5", "%");

        var asked = Asked(presenter);
        await Assertions.Expect(asked).ToContainTextAsync("r5c5 is hard to read", new() { Timeout = Patience });
        await ExpectSignAsync(presenter, "Reading unsure");
        var colours = await asked.Locator("canvas").EvaluateAsync<int>(
            "canvas => new Set(new Uint32Array(canvas.getContext('2d').getImageData(0, 0, 64, 64).data.buffer)).size");
        Assert.True(colours > 2, $"The picture of the cell has {colours} colours.");
        await ExpectAsync(presenter, "r5c5", "open");

        await presenter.PressAsync("5");
        await ExpectAsync(presenter, "r5c5", "5");
        await Assertions.Expect(asked).ToHaveCountAsync(0);
        await ExpectSignAsync(presenter, "Following the screen");
    }

    [Fact]
    public async Task What_the_presenter_has_said_once_is_read_the_next_time()
    {
        var (program, presenter) = await FollowAsync();
        await presenter.Page.EvaluateAsync("document.activeElement?.blur()");
        await program.ScribbleAsync("r5c5", "Ψ");
        await Assertions.Expect(Asked(presenter)).ToContainTextAsync("r5c5 is hard to read", new() { Timeout = Patience });
        await presenter.PressAsync("5");
        await ExpectAsync(presenter, "r5c5", "5");

        await program.ScribbleAsync("r9c3", "Ψ");
        await ExpectAsync(presenter, "r9c3", "5");
        await Assertions.Expect(Asked(presenter)).ToHaveCountAsync(0);
        Assert.Equal(
            [new DigitPlaced(default, Cell.Parse("r5c5"), Digit.Of(5)), new DigitPlaced(default, Cell.Parse("r9c3"), Digit.Of(5))],
            KeptLog.Entries(Companion.Folder));
    }

    [Fact]
    public async Task A_digit_that_stands_in_its_row_already_waits_and_is_gone_when_it_is_taken_back()
    {
        var (program, presenter) = await FollowAsync();
        await program.PlayAsync("r5c5", "d", "3"); // r5c6 is a given 3
        await Assertions.Expect(Asked(presenter)).ToContainTextAsync("r5c5 reads as 3, which stands in one of its houses already", new() { Timeout = Patience });
        await program.PlayAsync("r1c3", "4"); // what is possible goes on
        await ExpectAsync(presenter, "r1c3", "4");
        await ExpectAsync(presenter, "r5c5", "open");

        await program.PlayAsync("r5c5", "Backspace");
        await Assertions.Expect(Asked(presenter)).ToHaveCountAsync(0, new() { Timeout = Patience });
        await ExpectSignAsync(presenter, "Following the screen");
        Assert.Equal([new DigitPlaced(default, Cell.Parse("r1c3"), Digit.Of(4))], KeptLog.Entries(Companion.Folder));
    }

    [Fact]
    public async Task A_given_that_changes_waits_and_is_never_entered()
    {
        var (program, presenter) = await FollowAsync();
        await program.WriteGivenAsync(0, "4"); // r1c1 was given as 5
        await Assertions.Expect(Asked(presenter)).ToContainTextAsync("r1c1 was given as 5 and reads as 4", new() { Timeout = Patience });
        await program.WriteGivenAsync(0, "5");
        await Assertions.Expect(Asked(presenter)).ToHaveCountAsync(0, new() { Timeout = Patience });

        Assert.Empty(KeptLog.Entries(Companion.Folder));
        await ExpectAsync(presenter, "r1c1", "5, given");
    }

    [Fact]
    public async Task What_was_entered_by_hand_stays_until_the_screen_is_taken_by_its_key()
    {
        var (_, presenter) = await FollowAsync();
        await presenter.TypeAsync("r5c5", "5");
        await ExpectAsync(presenter, "r5c5", "5");
        var apart = presenter.Page.GetByRole(AriaRole.Region, new() { Name = "Screen and board differ" });
        await Assertions.Expect(apart).ToContainTextAsync("r5c5", new() { Timeout = Patience });

        await presenter.PressAsync("i");
        await ExpectAsync(presenter, "r5c5", "open");
        await Assertions.Expect(apart).ToHaveCountAsync(0, new() { Timeout = Patience });
    }
}
