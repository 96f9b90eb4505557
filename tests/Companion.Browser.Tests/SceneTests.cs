using Microsoft.Playwright;

namespace Companion.Browser.Tests;

/// <summary>The board's frame is placed by dragging, drawn while it is placed, and kept for each scene.</summary>
public sealed class SceneTests(Chromium chromium) : IAsyncLifetime
{
    private CompanionProcess _companion = null!;

    public async ValueTask InitializeAsync() => _companion = await CompanionProcess.StartAsync();

    public ValueTask DisposeAsync() => _companion.DisposeAsync();

    [Fact]
    public async Task A_dragged_corner_moves_the_board_of_that_scene_alone_and_is_kept()
    {
        await using var context = await chromium.Browser.NewContextAsync(new() { ViewportSize = new() { Width = 1280, Height = 720 } });
        var page = (await PresenterPage.OpenAsync(context, _companion)).Page;
        await page.GetByRole(AriaRole.Button, new() { Name = "Scenes" }).ClickAsync();
        await page.GetByLabel("New scene").FillAsync("close up");
        await page.GetByRole(AriaRole.Dialog).GetByRole(AriaRole.Button, new() { Name = "Add" }).ClickAsync();
        // Until the scene is there its overlay draws the board where the main scene has it.
        await Assertions.Expect(page.GetByRole(AriaRole.Button, new() { Name = "Place the board in close up" })).ToHaveCountAsync(1, new() { Timeout = 15_000 });
        var main = await OpenOverlayAsync(context, "main");
        var closeUp = await OpenOverlayAsync(context, "close up");
        var mainBefore = await PlaceOf(main);
        var before = await PlaceOf(closeUp);

        await page.GetByRole(AriaRole.Button, new() { Name = "Place the board in close up" }).ClickAsync();
        await Assertions.Expect(closeUp.Locator(".frame-outline")).ToHaveCountAsync(1);
        await Assertions.Expect(main.Locator(".frame-outline")).ToHaveCountAsync(0);
        // The dialog may still be finding its size: hovering waits until the grip stands still.
        await page.Locator(".grip.bottomRight").HoverAsync();
        var grip = (await page.Locator(".grip.bottomRight").BoundingBoxAsync())!;
        await page.Mouse.DownAsync();
        await page.Mouse.MoveAsync(grip.X - 60, grip.Y - 60, new() { Steps = 5 });
        await page.Mouse.UpAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Done" }).ClickAsync();

        await Assertions.Expect(closeUp.Locator(".frame-outline")).ToHaveCountAsync(0);
        var after = await PlaceOf(closeUp);
        Assert.Equal((before.X, before.Y), (after.X, after.Y));
        Assert.True(after.Width < 0.9 * before.Width && after.Height < 0.9 * before.Height, $"{after.Width} x {after.Height}");
        Assert.Equal((mainBefore.Width, mainBefore.Height), ((await PlaceOf(main)).Width, (await PlaceOf(main)).Height));

        await _companion.KillAndRestartAsync();
        await closeUp.ReloadAsync();
        await Assertions.Expect(closeUp.Locator(".board-place")).ToHaveCountAsync(1);
        Assert.Equal(after.Width, (await PlaceOf(closeUp)).Width);
    }

    private async Task<IPage> OpenOverlayAsync(IBrowserContext context, string scene)
    {
        var page = await context.NewPageAsync();
        await page.GotoAsync(_companion.Overlay(Uri.EscapeDataString(scene)).ToString());
        await Assertions.Expect(page.Locator(".board-place")).ToHaveCountAsync(1);
        return page;
    }

    private static async Task<LocatorBoundingBoxResult> PlaceOf(IPage overlay) =>
        (await overlay.Locator(".board-place").BoundingBoxAsync())!;
}
