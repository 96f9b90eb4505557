using Companion.Server.Access;
using Companion.Server.Data;
using Companion.Server.Live.Asks;
using Companion.Server.Live.Audience;
using Companion.Server.Live.Audience.Door;
using Companion.Server.Live.Loop;
using Companion.Server.Settings;
using Companion.Session.Audience;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.SignalR.Protocol;
using Microsoft.Extensions.DependencyInjection;

namespace Companion.Server.Tests.Running;

/// <summary>The whole server on a real port of this machine, with a data folder of its own.</summary>
internal sealed class RunningCompanion : IAsyncDisposable
{
    private readonly WebApplication _app;
    private readonly IDisposable? _folder;

    private RunningCompanion(WebApplication app, IDisposable? folder) => (_app, _folder) = (app, folder);

    public Uri Address => new(_app.Urls.Single(url => url.StartsWith("http:", StringComparison.Ordinal)));

    /// <summary>Where other machines reach it.</summary>
    public Uri AddressForOthers => new(_app.Urls.Single(url => url.StartsWith("https:", StringComparison.Ordinal)));

    public KeyRing Keys => _app.Services.GetRequiredService<KeyRing>();

    public Snapshot Session => _app.Services.GetRequiredService<SessionLoop>().Current;

    /// <summary>The parts of the server.</summary>
    public IServiceProvider Services => _app.Services;

    /// <summary>Where viewers' asks come in.</summary>
    public AskDesk Asks => _app.Services.GetRequiredService<AskDesk>();

    /// <summary>Who is there of the audience.</summary>
    public Crowd Crowd => _app.Services.GetRequiredService<Crowd>();

    /// <summary>What the hubs can speak.</summary>
    public IEnumerable<IHubProtocol> Protocols => _app.Services.GetServices<IHubProtocol>();

    /// <summary>Starts on a folder that stays, or on one that goes with the server.</summary>
    public static async Task<RunningCompanion> Start(
        string? folder = null, Action<WebApplicationBuilder>? adjust = null, ServerSettings? settings = null)
    {
        var own = folder is null ? new TemporaryFolder() : null;
        var app = Program.Build(DataFolder.Open(folder ?? own!.Path), settings ?? new ServerSettings { Port = 0 }, adjust);
        await app.StartAsync(TestContext.Current.CancellationToken);
        return new(app, own);
    }

    /// <summary>A browser's HTTP client that has the given page of ours open.</summary>
    public HttpClient Browser()
    {
        var browser = new HttpClient { BaseAddress = Address };
        browser.DefaultRequestHeaders.Add("Origin", Address.GetLeftPart(UriPartial.Authority));
        return browser;
    }

    /// <summary>A panel of a role, connected.</summary>
    public Task<OpenPage> OpenDesk(AccessRole role = AccessRole.Presenter, bool speaksMessagePack = false) =>
        OpenPage.Open(this, HubPaths.Of(role), role, speaksMessagePack);

    /// <summary>An overlay page of a scene, connected.</summary>
    public Task<OpenPage> OpenOverlay(string scene = "main", bool speaksMessagePack = false) =>
        OpenPage.Open(this, $"{HubPaths.Overlay}?page=overlay&scene={scene}", AccessRole.Overlay, speaksMessagePack);

    /// <summary>A stage page, connected.</summary>
    public Task<OpenPage> OpenStage(bool speaksMessagePack = false) =>
        OpenPage.Open(this, $"{HubPaths.Overlay}?page=stage", AccessRole.Overlay, speaksMessagePack);

    /// <summary>A viewer's page, connected.</summary>
    public Task<OpenPage> OpenAudience(bool speaksMessagePack = false) =>
        OpenPage.Open(this, HubPaths.Audience, AccessRole.Viewer, speaksMessagePack);

    /// <summary>A viewer's page that was opened without a key, connected.</summary>
    public Task<OpenPage> OpenAudienceWithoutKey(string viewer = "") =>
        OpenPage.Open(Address, $"{HubPaths.Audience}?viewer={viewer}", key: null);

    /// <summary>Waits until the audience's page is open to these; null for those of the settings, as it is from the start.</summary>
    public Task IsOpenTo(AudienceDoor? door) =>
        Until(() => door is null || _app.Services.GetRequiredService<IAudienceBoards>().Current.Door == door);

    /// <summary>Waits for something that comes about beside what was asked for.</summary>
    public static async Task Until(Func<bool> isSo)
    {
        while (!isSo())
            await Task.Delay(10, TestContext.Current.CancellationToken);
    }

    public async ValueTask DisposeAsync()
    {
        await _app.DisposeAsync();
        _folder?.Dispose();
    }
}
