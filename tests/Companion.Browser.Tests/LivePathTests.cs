using Microsoft.Playwright;

namespace Companion.Browser.Tests;

/// <summary>From the presenter's key to the pixels of the overlay, in a real browser on a real server.</summary>
public sealed class LivePathTests(Chromium chromium) : WithCompanion(chromium)
{
    [Fact]
    public async Task A_typed_puzzle_opens_deductions_and_a_typed_digit_changes_them()
    {
        var presenter = await PresenterPage.OpenAsync(Context, Companion);
        await presenter.LoadAsync(Examples.Easy);
        var single = presenter.Deductions.Filter(new() { HasText = "r5c5" }).And(presenter.Page.Locator("[data-id^='naked-single']"));
        await Assertions.Expect(single).ToHaveCountAsync(1);

        await presenter.TypeAsync("r5c5", "5");

        await presenter.ExpectAsync("r5c5", "5");
        await Assertions.Expect(single).ToHaveCountAsync(0);

        await presenter.PressAsync("Control+z");
        await presenter.ExpectAsync("r5c5", "open");
        await Assertions.Expect(single).ToHaveCountAsync(1);
    }

    [Fact]
    public async Task What_is_put_on_air_is_drawn_by_every_overlay_and_cleared_by_one_key()
    {
        var presenter = await PresenterPage.OpenAsync(Context, Companion);
        await presenter.LoadAsync(Examples.Easy);
        var overlay = await OpenOverlayAsync("main");
        var other = await OpenOverlayAsync("main");
        await StandByAsync(presenter, "naked-single 5 single r5c5");
        Assert.Equal(0, (await Pixels.OfAsync(overlay)).Painted);

        await presenter.PressAsync("n");
        await WaitForShapesAsync(overlay);
        await WaitForShapesAsync(other);

        var drawn = await Pixels.OfAsync(overlay);
        Assert.True(drawn.Painted > 1000, $"{drawn.Painted} pixels are painted");

        // The frame of a scene is centred and square at first, the caption stands low beside it: the rest of the page is free, and
        // so is block 1.
        Assert.Equal(0, drawn.PaintedIn(0, 0, 0.2, 0.7));
        Assert.Equal(0, drawn.PaintedIn(0.8, 0, 1, 1));
        Assert.Equal(0, drawn.PaintedIn(0.25, 0.06, 0.38, 0.33));
        Assert.False(drawn.Differs(await Pixels.OfAsync(other)));

        await presenter.PressAsync("n");
        await presenter.PressAsync("n");
        await presenter.PressAsync("n");
        await Assertions.Expect(overlay.Locator(".lozenge")).ToHaveCountAsync(1);
        Assert.True((await Pixels.OfAsync(overlay)).Differs(drawn));

        await presenter.PressAsync("Escape");
        await Assertions.Expect(overlay.Locator(".shapes > *")).ToHaveCountAsync(0);
        Assert.Equal(0, (await Pixels.OfAsync(overlay)).Painted);
    }

    [Fact]
    public async Task Back_takes_the_grades_back_to_off_air()
    {
        var presenter = await PresenterPage.OpenAsync(Context, Companion);
        await presenter.LoadAsync(Examples.Easy);
        var overlay = await OpenOverlayAsync("main");
        await StandByAsync(presenter, "naked-single 5 single r5c5");

        await presenter.PressAsync("n");
        await presenter.PressAsync("n");
        await Assertions.Expect(presenter.OnAir.GetByText("Grade 2 of 4")).ToBeVisibleAsync();
        await presenter.PressAsync("p");
        await Assertions.Expect(presenter.OnAir.GetByText("Grade 1 of 4")).ToBeVisibleAsync();
        await presenter.PressAsync("p");
        await Assertions.Expect(overlay.Locator(".shapes > *")).ToHaveCountAsync(0);
    }

    [Fact]
    public async Task A_reload_mid_way_finds_everything_as_it_was()
    {
        var presenter = await PresenterPage.OpenAsync(Context, Companion);
        await presenter.LoadAsync(Examples.Easy);
        var overlay = await OpenOverlayAsync("main");
        await presenter.TypeAsync("r5c2", "x", "9");
        await presenter.ExpectAsync("r5c2", "open, struck 9");
        await StandByAsync(presenter, "naked-single 5 single r5c5");
        await presenter.PressAsync("n");
        await WaitForShapesAsync(overlay);
        var before = await Pixels.OfAsync(overlay);

        await presenter.Page.ReloadAsync();
        await overlay.ReloadAsync();

        await presenter.ExpectAsync("r5c2", "open, struck 9");
        await Assertions.Expect(presenter.OnAir.GetByText("Grade 1 of 4")).ToBeVisibleAsync();
        await WaitForShapesAsync(overlay);
        Assert.False(before.Differs(await Pixels.OfAsync(overlay)));
    }

    [Fact]
    public async Task A_killed_server_comes_back_with_the_session_and_the_pages_find_it_by_themselves()
    {
        var presenter = await PresenterPage.OpenAsync(Context, Companion);
        await presenter.LoadAsync(Examples.Easy);
        var overlay = await OpenOverlayAsync("main");
        await presenter.TypeAsync("r5c5", "5");
        await presenter.ExpectAsync("r5c5", "5");

        await Companion.KillAndRestartAsync();

        await Assertions.Expect(presenter.Page.GetByText("Connected", new() { Exact = true })).ToBeVisibleAsync(new() { Timeout = 20_000 });
        await presenter.ExpectAsync("r5c5", "5");
        await StandByAsync(presenter, "naked-single 2 single r5c2");
        await presenter.PressAsync("n");
        await WaitForShapesAsync(overlay);
        await presenter.PressAsync("Control+z");
        await presenter.ExpectAsync("r5c5", "open");
    }

    [Fact]
    public async Task Marks_are_entered_by_keyboard_alone_and_shown_on_the_stage()
    {
        var presenter = await PresenterPage.OpenAsync(Context, Companion);
        await presenter.LoadAsync(Examples.Easy);
        var stage = await Context.NewPageAsync();
        await stage.GotoAsync(Companion.Stage.ToString());
        await Assertions.Expect(stage.GetByText("Lanterns, No. 1")).ToBeVisibleAsync();

        await presenter.Cell("r1c1").FocusAsync();
        await presenter.Cell("r1c1").ClickAsync();
        await presenter.PressAsync("ArrowRight");
        await presenter.PressAsync("ArrowRight");
        await presenter.PressAsync("Shift+ArrowDown");
        await presenter.PressAsync("b");
        await presenter.PressAsync("2");
        await presenter.ExpectAsync("r1c3", "open, block marks 2");
        await presenter.ExpectAsync("r2c3", "open, block marks 2");

        await presenter.PressAsync("ArrowUp");
        await presenter.PressAsync("c");
        foreach (var key in new[] { "2", "4", "7", "Enter" })
            await presenter.PressAsync(key);
        await presenter.ExpectAsync("r1c3", "open, block marks 2, cell mark 2 4 7");
        await Assertions.Expect(stage.Locator("svg text", new() { HasTextRegex = new("^[247]$") })).Not.ToHaveCountAsync(0);

        for (var undo = 0; undo < 4; undo++)
            await presenter.PressAsync("Control+z");
        await presenter.ExpectAsync("r1c3", "open");
        await presenter.PressAsync("Control+y");
        await presenter.ExpectAsync("r1c3", "open, block marks 2");
    }

    [Fact]
    public async Task A_digit_is_entered_by_mouse_alone()
    {
        var presenter = await PresenterPage.OpenAsync(Context, Companion);
        await presenter.LoadAsync(Examples.Easy);
        await presenter.Cell("r5c5").ClickAsync();
        await presenter.Page.GetByRole(AriaRole.Group, new() { Name = "Digits" }).GetByRole(AriaRole.Button).Nth(4).ClickAsync();
        await presenter.ExpectAsync("r5c5", "5");
        await presenter.Page.GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await presenter.ExpectAsync("r5c5", "open");
    }

    [Fact]
    public async Task A_wrong_digit_is_pointed_out_privately_and_without_the_right_one()
    {
        var presenter = await PresenterPage.OpenAsync(Context, Companion);
        await presenter.LoadAsync(Examples.Easy);
        await presenter.TypeAsync("r1c3", "1");
        await Assertions.Expect(presenter.Watch.GetByText("r1c3").First).ToBeVisibleAsync();
    }

    [Fact]
    public async Task A_bad_grid_is_refused_with_every_reason()
    {
        var presenter = await PresenterPage.OpenAsync(Context, Companion);
        await presenter.PressAsync("l");
        await presenter.Page.Locator("textarea[name=grid]").FillAsync("55" + Examples.Easy[2..70] + "x");
        await presenter.Page.GetByRole(AriaRole.Button, new() { Name = "Load", Exact = true }).Last.ClickAsync();
        var reasons = presenter.Page.GetByRole(AriaRole.Alert);
        await Assertions.Expect(reasons).ToContainTextAsync("81 cells");
        await Assertions.Expect(reasons).ToContainTextAsync("'x'");
    }

    private async Task<IPage> OpenOverlayAsync(string scene)
    {
        var page = await Context.NewPageAsync();
        await page.GotoAsync(Companion.Overlay(scene).ToString());
        await Assertions.Expect(page.Locator(".board-place")).ToHaveCountAsync(1);
        return page;
    }

    private static async Task StandByAsync(PresenterPage presenter, string deduction)
    {
        var option = presenter.Page.Locator($"[role=option][data-id^='{deduction}']");
        await option.ClickAsync();
        await Assertions.Expect(option).ToHaveAttributeAsync("aria-selected", "true");
        await presenter.Cell("r1c1").FocusAsync();
    }

    private static Task WaitForShapesAsync(IPage overlay) =>
        Assertions.Expect(overlay.Locator(".shapes > *")).Not.ToHaveCountAsync(0);
}
