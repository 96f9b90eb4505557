using System.Text.RegularExpressions;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Companion.Browser.Tests;

/// <summary>The presenter keys a recording, begins another show, edits chapters and replays what was kept.</summary>
public sealed class ShowTests(Chromium chromium) : WithCompanion(chromium)
{
    [Fact]
    public async Task A_show_is_recorded_kept_and_replayed_while_another_one_is_on_air()
    {
        var presenter = await PresenterPage.OpenAsync(Context, Companion);
        await presenter.LoadAsync(Examples.Easy);
        await presenter.PressAsync("g");
        await Assertions.Expect(presenter.Page.Locator(".status .recording")).ToContainTextAsync("Recording 0:0");
        await presenter.TypeAsync("r5c5", "5");
        await presenter.ExpectAsync("r5c5", "5");
        await presenter.PressAsync("g");
        await Assertions.Expect(presenter.Page.Locator(".status .recording")).ToContainTextAsync("Recording pauses");

        await presenter.PressAsync("s");
        var dialog = presenter.Page.Locator(".shows-dialog");
        await dialog.GetByLabel("New show").FillAsync("Second evening");
        await dialog.GetByRole(AriaRole.Button, new() { Name = "Begin …" }).ClickAsync();
        await Assertions.Expect(dialog.Locator(".confirm")).ToContainTextAsync("nothing stays on air");
        await dialog.GetByRole(AriaRole.Button, new() { Name = "Begin the new show" }).ClickAsync();
        await Assertions.Expect(dialog.Locator(".shows > li")).ToHaveCountAsync(2);
        await Assertions.Expect(dialog.Locator(".shows > li").First).ToContainTextAsync("Second evening");
        await Assertions.Expect(dialog.Locator(".shows > li").First).ToContainTextAsync("goes on now");
        await ExpectAccessibleAsync(presenter.Page);

        var replay = await Context.RunAndWaitForPageAsync(() => dialog.Locator(".shows > li").Last.GetByRole(AriaRole.Link).ClickAsync());
        await Assertions.Expect(replay.Locator(".place")).ToContainTextAsync(new Regex("^1 of "));
        await Assertions.Expect(replay.Locator("h1")).Not.ToHaveTextAsync("Lanterns, No. 1");
        await replay.Keyboard.PressAsync("End");
        await Assertions.Expect(replay.Locator("h1")).ToHaveTextAsync("Lanterns, No. 1");
        await Assertions.Expect(replay.Locator(".place")).ToContainTextAsync("recorded at 0:0");
        await ExpectAccessibleAsync(replay);
        await replay.Keyboard.PressAsync("Home");
        await replay.Keyboard.PressAsync("+");
        await replay.Keyboard.PressAsync("w");
        await replay.Keyboard.PressAsync(" ");
        await Assertions.Expect(replay.Locator("h1")).ToHaveTextAsync("Lanterns, No. 1", new() { Timeout = 30_000 });
        await replay.Keyboard.PressAsync("h");
        await Assertions.Expect(replay.Locator(".replay-controls")).ToHaveCountAsync(0);

        // The live stage has the new show's empty board all the while.
        var stage = await Context.NewPageAsync();
        await stage.GotoAsync(Companion.Stage.ToString());
        await Assertions.Expect(stage.Locator(".stage-board")).ToBeVisibleAsync();
        await Assertions.Expect(stage.Locator("h1")).ToHaveCountAsync(0);
        await Assertions.Expect(stage.Locator(".replay-controls")).ToHaveCountAsync(0);
    }

    [Fact]
    public async Task Chapters_are_edited_and_kept()
    {
        var presenter = await PresenterPage.OpenAsync(Context, Companion);
        await presenter.PressAsync("s");
        var dialog = presenter.Page.Locator(".shows-dialog");
        await dialog.GetByRole(AriaRole.Button, new() { Name = "Chapters" }).ClickAsync();
        await Assertions.Expect(dialog.Locator(".chapters > li")).ToHaveCountAsync(1);
        await dialog.GetByRole(AriaRole.Button, new() { Name = "Split" }).ClickAsync();
        await dialog.GetByLabel("Title").Last.FillAsync("The wing");
        await dialog.GetByRole(AriaRole.Spinbutton).FillAsync("90");
        await dialog.GetByRole(AriaRole.Button, new() { Name = "Save chapters" }).ClickAsync();
        await Assertions.Expect(dialog).ToContainTextAsync("Edited by you");
        await Assertions.Expect(dialog.GetByLabel("Title").Last).ToHaveValueAsync("The wing");
        await ExpectAccessibleAsync(presenter.Page);
        await presenter.PressAsync("Escape");

        await presenter.PressAsync("s");
        await dialog.GetByRole(AriaRole.Button, new() { Name = "Chapters" }).ClickAsync();
        await Assertions.Expect(dialog).ToContainTextAsync("Edited by you");
        var saved = await presenter.Page.RunAndWaitForDownloadAsync(() => dialog.GetByRole(AriaRole.Button, new() { Name = "Save as a file" }).ClickAsync());
        Assert.Equal("show-1-chapters.txt", saved.SuggestedFilename);
        Assert.StartsWith("0:00 ", await File.ReadAllTextAsync(await saved.PathAsync(), TestContext.Current.CancellationToken), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_show_file_goes_out_and_comes_back()
    {
        var presenter = await PresenterPage.OpenAsync(Context, Companion);
        await presenter.PressAsync("s");
        var dialog = presenter.Page.Locator(".shows-dialog");
        var saved = await presenter.Page.RunAndWaitForDownloadAsync(() => dialog.GetByRole(AriaRole.Button, new() { Name = "Export" }).ClickAsync());
        var file = await saved.PathAsync();

        await dialog.GetByLabel("Import a show file").SetInputFilesAsync(file);
        await Assertions.Expect(dialog.Locator(".shows > li")).ToHaveCountAsync(2);
        await Assertions.Expect(dialog.Locator(".shows > li").First).ToContainTextAsync("imported");
        await File.WriteAllTextAsync(file, "A shopping list.", TestContext.Current.CancellationToken);
        await dialog.GetByLabel("Import a show file").SetInputFilesAsync(file);
        await Assertions.Expect(dialog.Locator(".said")).ToContainTextAsync("no show file");
    }

    private static async Task ExpectAccessibleAsync(IPage page)
    {
        var result = await page.RunAxe();
        Assert.DoesNotContain(result.Violations, violation => violation.Impact is "serious" or "critical");
    }
}
