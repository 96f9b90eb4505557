using Companion.Server.CommandLine;
using Companion.Server.Data;
using Companion.Server.Settings;
using Microsoft.Playwright;
using SkiaSharp;

namespace Companion.Browser.Tests.Stills;

/// <summary>A deduction that the presenter takes on air grade by grade, with an overlay of each size that is looked at.</summary>
internal sealed class AirShow : IAsyncDisposable
{
    // In pixels, with some of the plate.
    private const int PlateEdge = 5;

    private readonly CompanionProcess _companion;
    private readonly IBrowserContext _desk;
    private readonly IReadOnlyList<IPage> _pages;
    private readonly PresenterPage _presenter;

    private AirShow(CompanionProcess companion, IBrowserContext desk, PresenterPage presenter, IReadOnlyList<IPage> pages) =>
        (_companion, _desk, _presenter, _pages) = (companion, desk, presenter, pages);

    /// <summary>What is on air now, as the log has it.</summary>
    public StillScene Scene { get; private set; } = null!;

    /// <summary>What each overlay shows now, and the inside of its caption's plate.</summary>
    public IReadOnlyList<(SKBitmap Screen, SKRectI Caption)> Screens { get; private set; } = [];

    public static async Task<AirShow> OpenAsync(
        Chromium chromium, CompanionProcess companion, string rule, IEnumerable<(int Width, int Height)> sizes)
    {
        var desk = await chromium.Browser.NewContextAsync(new() { ViewportSize = new() { Width = 1280, Height = 720 } });
        var presenter = await PresenterPage.OpenAsync(desk, companion);
        await presenter.LoadAsync(Examples.WithRectangle);
        var pages = new List<IPage>();
        foreach (var (width, height) in sizes)
        {
            var page = await chromium.Browser.NewPageAsync(new() { ViewportSize = new() { Width = width, Height = height } });
            await page.GotoAsync(companion.Overlay().ToString());
            await Assertions.Expect(page.Locator(".board-place")).ToHaveCountAsync(1);
            pages.Add(page);
        }

        var option = presenter.Page.Locator($"[role=option][data-id^='{rule} ']").First;
        await option.ClickAsync();
        await Assertions.Expect(option).ToHaveAttributeAsync("aria-selected", "true");
        await presenter.Cell("r1c1").FocusAsync();
        return new(companion, desk, presenter, pages);
    }

    /// <summary>Puts the next grade on air and waits until every overlay shows it.</summary>
    public async Task NextAsync()
    {
        var before = Scene?.OnAir?.Caption;
        await _presenter.PressAsync("n");
        var ladder = LadderFile.Read(DataFolder.Find(_companion.Folder));
        do
        {
            await Task.Delay(20, TestContext.Current.CancellationToken);
            Scene = StillScene.OfSession(_companion.Folder, ladder, ShippedFiles.Wording(ladder));
        }
        while (Scene.OnAir is null || Scene.OnAir.Caption == before);

        var screens = new List<(SKBitmap, SKRectI)>();
        foreach (var page in _pages)
        {
            await Assertions.Expect(page.Locator(".caption")).ToHaveTextAsync(Scene.OnAir.Caption);
            var plate = (await page.Locator(".caption").BoundingBoxAsync())!;
            var inside = SKRectI.Ceiling(SKRect.Create(plate.X, plate.Y, plate.Width, plate.Height));
            inside.Inflate(-PlateEdge, -PlateEdge);
            screens.Add((SKBitmap.Decode(await page.ScreenshotAsync(new() { OmitBackground = true })), inside));
        }

        Screens = screens;
    }

    public async ValueTask DisposeAsync()
    {
        foreach (var page in _pages)
            await page.CloseAsync();
        await _desk.DisposeAsync();
    }
}
