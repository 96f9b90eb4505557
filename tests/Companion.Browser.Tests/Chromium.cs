using Companion.Browser.Tests;
using Microsoft.Playwright;

[assembly: AssemblyFixture(typeof(Chromium))]

namespace Companion.Browser.Tests;

/// <summary>One Chromium for all tests; without one every test fails with the way out.</summary>
public sealed class Chromium : IAsyncLifetime
{
    private IPlaywright? _playwright;

    public IBrowser Browser { get; private set; } = null!;

    public async ValueTask InitializeAsync()
    {
        _playwright = await Playwright.CreateAsync();
        Browser = await _playwright.Chromium.LaunchAsync(ChromiumExecutable.Options(_playwright));
    }

    public async ValueTask DisposeAsync()
    {
        await Browser.DisposeAsync();
        _playwright?.Dispose();
    }
}
