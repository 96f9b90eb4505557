using System.Text.Json;
using Companion.Server.Access;
using Companion.Server.Tests.Running;

namespace Companion.Server.Tests.Relay;

/// <summary>A show with a presenter's server and two audience servers, each a process of its own, and a Redis server between them.</summary>
internal sealed class Show : IAsyncDisposable
{
    // Long enough for a machine on which other things run; a test that needs it has failed.
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(40);

    private readonly TemporaryFolder _folder = new();
    private readonly TemporaryFolder _first = new();
    private readonly TemporaryFolder _second = new();

    private Show(RedisServer redis) => Redis = redis;

    public RedisServer Redis { get; }

    public CompanionProcess Presenter { get; private set; } = null!;

    public IReadOnlyList<CompanionProcess> AudienceServers { get; private set; } = [];

    /// <summary>The data folders of all servers.</summary>
    public IEnumerable<string> Folders => [_folder.Path, _first.Path, _second.Path];

    /// <summary>The key of the audience's link.</summary>
    public string ViewersKey => Key(AccessRole.Viewer);

    /// <summary>Starts all of it and loads a puzzle.</summary>
    public static async Task<Show> Begin()
    {
        var show = new Show(new());
        await show.Redis.Start();
        await File.WriteAllTextAsync(show._folder.In("companion.json"), JsonSerializer.Serialize(new
        {
            relay = new { redis = show.Redis.Connection },
            asks = new { delaySeconds = 0, viewerPauseSeconds = 0 },
        }));
        await show.StartPresenter();
        show.AudienceServers = await Task.WhenAll(
            CompanionProcess.Follow(show._first.Path, show.Redis.Connection), CompanionProcess.Follow(show._second.Path, show.Redis.Connection));
        await using var panel = await show.OpenPanel();
        await panel.Do("LoadPuzzle", Grids.Textbook, "Lanterns", "A setter", "");
        return show;
    }

    /// <summary>A key of the presenter's server.</summary>
    public string Key(AccessRole role) => JsonSerializer.Deserialize<Dictionary<string, string>>(
        File.ReadAllText(_folder.In("keys.json")))![JsonNamingPolicy.CamelCase.ConvertName(role.ToString())];

    /// <summary>Starts the presenter's server, for the first time or again.</summary>
    public async Task StartPresenter() => Presenter = await CompanionProcess.Serve(_folder.Path);

    public Task<OpenPage> OpenPanel() => OpenPage.Open(Presenter.Address, HubPaths.Presenter, Presenter.PresenterKey);

    /// <summary>A viewer's page at a server, opened as soon as the server lets viewers in.</summary>
    public async Task<OpenPage> OpenViewer(CompanionProcess server, string viewer = "")
    {
        await KnockUntil(server, answer => answer.Status < 400);
        return await OpenPage.Open(server.Address, $"{HubPaths.Audience}?viewer={viewer}", ViewersKey);
    }

    /// <summary>Knocks as the page does.</summary>
    /// <param name="server">Where.</param>
    /// <param name="key">With which key; null for none.</param>
    /// <returns>The status, and the sentence of a refusal.</returns>
    public static async Task<(int Status, string Sentence)> Knock(CompanionProcess server, string? key)
    {
        using var browser = new HttpClient { BaseAddress = server.Address };
        browser.DefaultRequestHeaders.Add("Origin", server.Address.GetLeftPart(UriPartial.Authority));
        if (key is not null)
            browser.DefaultRequestHeaders.Authorization = new("Bearer", key);
        using var answer = await browser.PostAsync(
            new Uri(HubPaths.Audience + "/negotiate?negotiateVersion=1", UriKind.Relative), null, TestContext.Current.CancellationToken);
        return ((int)answer.StatusCode, await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));
    }

    /// <summary>Waits until a server refuses viewers with this sentence.</summary>
    public Task Refuses(CompanionProcess server, string sentence) => KnockUntil(server, answer => answer.Sentence == sentence);

    public async ValueTask DisposeAsync()
    {
        foreach (var server in AudienceServers.Append(Presenter))
            await server.DisposeAsync();
        await Redis.DisposeAsync();
        foreach (var folder in new[] { _folder, _first, _second })
            folder.Dispose();
    }

    private async Task KnockUntil(CompanionProcess server, Func<(int Status, string Sentence), bool> isWanted)
    {
        using var late = CancellationTokenSource.CreateLinkedTokenSource(TestContext.Current.CancellationToken);
        late.CancelAfter(Patience);
        while (!isWanted(await Knock(server, ViewersKey)))
            await Task.Delay(100, late.Token);
    }
}
