using System.Collections.Concurrent;
using System.Text.Json;
using Companion.Server.Access;
using Companion.Server.Wire;
using Microsoft.AspNetCore.Http.Connections;
using Microsoft.AspNetCore.SignalR.Client;
using Microsoft.Extensions.DependencyInjection;

namespace Companion.Server.Tests.Running;

/// <summary>A page connected to its hub, which keeps all that it is told.</summary>
internal sealed class OpenPage : IAsyncDisposable
{
    // Long enough for a machine on which other things run; a test that needs it has failed.
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(30);

    private readonly HubConnection _hub;
    private readonly ConcurrentQueue<(string Name, JsonElement View)> _told = new();
    private readonly SemaphoreSlim _arrived = new(0);
    private readonly TaskCompletionSource _closed = new();

    private OpenPage(HubConnection hub)
    {
        _hub = hub;
        foreach (var name in new[] { "Desk", "Next", "Forecast", "Cues", "Ladder", "Viewers", "Door", "AudienceLink", "Why", "Vetted", "RunSheet", "Shows", "Chapters", "Save", "Overlay", "Stage", "Board" })
            hub.On<JsonElement>(name, view => Keep(name, view));
        hub.On<string>("ShowsRefused", sentence => Keep("ShowsRefused", JsonSerializer.SerializeToElement(sentence)));
        hub.Closed += _ =>
        {
            _closed.TrySetResult();
            return Task.CompletedTask;
        };
    }

    /// <summary>All that came so far, in order.</summary>
    public IReadOnlyCollection<(string Name, JsonElement View)> Told => _told;

    public static Task<OpenPage> Open(RunningCompanion companion, string hub, AccessRole role, bool speaksMessagePack = false) =>
        Open(companion.Address, hub, companion.Keys[role].Reveal(), speaksMessagePack);

    public static async Task<OpenPage> Open(Uri address, string hub, string? key, bool speaksMessagePack = false)
    {
        var builder = new HubConnectionBuilder().WithUrl(new Uri(address, hub), options =>
        {
            options.Transports = HttpTransportType.WebSockets;
            options.SkipNegotiation = true;
            options.Headers["Origin"] = address.GetLeftPart(UriPartial.Authority);
            if (key is not null)
                options.Headers["Authorization"] = $"Bearer {key}";
        });
        if (speaksMessagePack)
            builder.AddMessagePackProtocol(protocol => protocol.SerializerOptions = WireMessagePack.Options);
        var page = new OpenPage(builder.Build());
        await page._hub.StartAsync(TestContext.Current.CancellationToken);
        return page;
    }

    /// <summary>Asks for something; the answer is that of the server.</summary>
    public Task<Reply> Ask(string method, params object?[] arguments) => Ask<Reply>(method, arguments);

    /// <summary>Asks for something that has an answer of its own type.</summary>
    public Task<T> Ask<T>(string method, params object?[] arguments) =>
        _hub.InvokeCoreAsync<T>(method, arguments, TestContext.Current.CancellationToken).WaitAsync(Patience, TestContext.Current.CancellationToken);

    /// <summary>Asks for something that is to be done.</summary>
    public async Task Do(string method, params object?[] arguments) => Assert.Null((await Ask(method, arguments)).Refusal);

    /// <summary>Waits for a view of this name that is as wanted, and returns it.</summary>
    public async Task<JsonElement> Sees(string name, Func<JsonElement, bool> isWanted)
    {
        var seen = 0;
        using var timeout = CancellationTokenSource.CreateLinkedTokenSource(TestContext.Current.CancellationToken);
        timeout.CancelAfter(Patience);
        while (true)
        {
            foreach (var (itsName, view) in _told.Skip(seen))
            {
                seen++;
                if (itsName == name && isWanted(view))
                    return view;
            }

            try
            {
                await _arrived.WaitAsync(timeout.Token);
            }
            catch (OperationCanceledException)
            {
                throw new TimeoutException($"No wanted {name} came, only: {string.Join('\n', _told)}");
            }
        }
    }

    /// <summary>Waits for a view of this name and state, or a later one.</summary>
    public Task<JsonElement> Sees(string name, long sequence) =>
        Sees(name, view => view.GetProperty("sequence").GetInt64() >= sequence);

    /// <summary>Waits until the server has closed the connection.</summary>
    public Task IsClosed() => _closed.Task.WaitAsync(Patience, TestContext.Current.CancellationToken);

    public ValueTask DisposeAsync() => _hub.DisposeAsync();

    private void Keep(string name, JsonElement view)
    {
        _told.Enqueue((name, view.Clone()));
        _arrived.Release();
    }
}
