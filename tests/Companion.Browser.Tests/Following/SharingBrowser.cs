using Microsoft.Playwright;

namespace Companion.Browser.Tests.Following;

/// <summary>A Chromium that shows the solving page to whoever asks for a screen, as if the presenter had chosen it.</summary>
public sealed class SharingBrowser : IAsyncLifetime
{
    // Remembers what was shown, so that a test can see whether it is still.
    private const string Remember = """
        window.shown = [];
        const real = navigator.mediaDevices?.getDisplayMedia.bind(navigator.mediaDevices);
        if (real) navigator.mediaDevices.getDisplayMedia = async (wishes) => {
          const stream = await real(wishes);
          window.shown.push(...stream.getTracks());
          return stream;
        };
        """;

    private IPlaywright? _playwright;
    private IBrowser _browser = null!;

    public async ValueTask InitializeAsync()
    {
        // Of all that is waited for; on a busy machine a companion takes its time to begin.
        Assertions.SetDefaultExpectTimeout(WithFollowing.Patience);
        _playwright = await Playwright.CreateAsync();
        _browser = await _playwright.Chromium.LaunchAsync(
            ChromiumExecutable.Options(_playwright, $"--auto-select-tab-capture-source-by-title={SolvingPage.Title}"));
    }

    public async ValueTask DisposeAsync()
    {
        await _browser.DisposeAsync();
        _playwright?.Dispose();
    }

    /// <summary>A window with the panel's size.</summary>
    public async Task<IBrowserContext> OpenAsync(int width = 1280, int height = 720, ColorScheme scheme = ColorScheme.Light)
    {
        var context = await _browser.NewContextAsync(new() { ViewportSize = new() { Width = width, Height = height }, ColorScheme = scheme });
        await context.AddInitScriptAsync(Remember);
        return context;
    }
}
