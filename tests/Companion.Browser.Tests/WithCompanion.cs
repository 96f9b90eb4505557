using Microsoft.Playwright;

namespace Companion.Browser.Tests;

/// <summary>Each test has a companion of its own, and a browser window of 1280 by 720 pixels.</summary>
public abstract class WithCompanion(Chromium chromium) : IAsyncLifetime
{
    /// <summary>The companion.</summary>
    protected CompanionProcess Companion { get; private set; } = null!;

    /// <summary>The window, which shares no cookie with another.</summary>
    protected IBrowserContext Context { get; private set; } = null!;

    /// <inheritdoc/>
    public async ValueTask InitializeAsync()
    {
        Companion = await CompanionProcess.StartAsync();
        Context = await chromium.Browser.NewContextAsync(new() { ViewportSize = new() { Width = 1280, Height = 720 } });
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        GC.SuppressFinalize(this);
        await Context.DisposeAsync();
        await Companion.DisposeAsync();
    }
}
