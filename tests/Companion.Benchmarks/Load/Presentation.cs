using System.Collections.Concurrent;
using System.Diagnostics;
using System.Text.Json;
using Companion.Engine;
using Companion.Engine.Search;
using Companion.Server.Wire;
using Microsoft.AspNetCore.Http.Connections;
using Microsoft.AspNetCore.SignalR.Client;

namespace Companion.Benchmarks.Load;

/// <summary>A presenter who enters a puzzle's digits one after the other, with the panel and an overlay open.</summary>
internal sealed class Presentation : IAsyncDisposable
{
    // More than once through the puzzle: until then much of the program runs for the first time.
    private const int WarmUp = 80;

    private readonly HubConnection _panel;
    private readonly HubConnection _overlay;
    private readonly ConcurrentDictionary<long, long> _atPanel = new();
    private readonly ConcurrentDictionary<long, long> _atOverlay = new();

    private Presentation(HubConnection panel, HubConnection overlay)
    {
        (_panel, _overlay) = (panel, overlay);
        Note(panel, "Desk", _atPanel);
        Note(overlay, "Overlay", _atOverlay);
    }

    public static async Task<Presentation> OpenAsync(Uri server, Func<string, string> key)
    {
        var presentation = new Presentation(
            Connection(server, "/hubs/presenter", key("presenter")),
            Connection(server, "/hubs/overlay?page=overlay&scene=main", key("overlay")));
        await presentation._panel.StartAsync();
        await presentation._overlay.StartAsync();
        return presentation;
    }

    /// <summary>Enters digits and times how long each takes to the panel and to the overlay.</summary>
    /// <param name="puzzle">The puzzle, 81 characters.</param>
    /// <param name="entries">How many.</param>
    /// <param name="pause">From one to the next.</param>
    public async Task<EntryTimes> PlayAsync(string puzzle, int entries, TimeSpan pause)
    {
        var board = Board.Parse(puzzle);
        var solution = SolutionCounter.Find(board, 1)[0];
        var open = (CellSet.All - board.Filled).ToList();
        var entered = new List<(long Sequence, long At)>();
        for (var entry = 0; entry < WarmUp + entries; entry++)
        {
            var next = entry % (open.Count - 3); // never to the end, where nothing is left to find
            if (next == 0)
                await DoAsync("LoadPuzzle", puzzle, "Load", "", "");
            var at = Stopwatch.GetTimestamp();
            var cell = open[next];
            var sequence = await DoAsync("PlaceDigit", cell.ToString(), solution[cell].Value);
            if (entry >= WarmUp)
                entered.Add((sequence, at));
            await Task.Delay(pause);
        }

        await Task.Delay(TimeSpan.FromSeconds(2));
        return new(Times(entered, _atPanel), Times(entered, _atOverlay));
    }

    public async ValueTask DisposeAsync()
    {
        await _panel.DisposeAsync();
        await _overlay.DisposeAsync();
    }

    private async Task<long> DoAsync(string method, params object[] arguments)
    {
        var reply = await _panel.InvokeCoreAsync<Reply>(method, arguments);
        return reply.Refusal is null ? reply.Sequence : throw new InvalidOperationException(reply.Refusal);
    }

    // The first view that shows the entry counts: of it, or of one that overtook it.
    private static double[] Times(List<(long Sequence, long At)> entered, ConcurrentDictionary<long, long> arrivals)
    {
        var inOrder = arrivals.OrderBy(arrival => arrival.Key).ToList();
        var times = new double[entered.Count];
        for (var index = 0; index < times.Length; index++)
        {
            var arrival = inOrder.Where(shown => shown.Key >= entered[index].Sequence).Min(shown => shown.Value);
            times[index] = Stopwatch.GetElapsedTime(entered[index].At, arrival).TotalMilliseconds;
        }

        Array.Sort(times);
        return times;
    }

    private static void Note(HubConnection hub, string name, ConcurrentDictionary<long, long> arrivals) => hub.On<JsonElement>(name, view =>
        arrivals.TryAdd(view.GetProperty("sequence").GetInt64(), Stopwatch.GetTimestamp()));

    private static HubConnection Connection(Uri server, string hub, string key) => new HubConnectionBuilder()
        .WithUrl(new Uri(server, hub), options =>
        {
            options.Transports = HttpTransportType.WebSockets;
            options.SkipNegotiation = true;
            options.Headers["Origin"] = server.GetLeftPart(UriPartial.Authority);
            options.Headers["Authorization"] = $"Bearer {key}";
        })
        .Build();
}
