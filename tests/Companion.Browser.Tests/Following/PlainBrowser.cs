using System.Diagnostics;
using System.Net.WebSockets;
using System.Text.Json;
using System.Text.Json.Nodes;
using Microsoft.Playwright;

namespace Companion.Browser.Tests.Following;

/// <summary>
/// A Chromium whose tabs are hidden when another one is in front, as a person's are: Playwright tells each of its pages that it is in
/// front. It is spoken to by the DevTools protocol, https://chromedevtools.github.io/devtools-protocol/.
/// </summary>
internal sealed class PlainBrowser : IAsyncDisposable
{
    private readonly string _profile = Directory.CreateTempSubdirectory("companion-browser-").FullName;
    private readonly ClientWebSocket _line = new();
    private readonly Process _process;
    private int _asked;

    private PlainBrowser(BrowserTypeLaunchOptions options) => _process = Process.Start(new ProcessStartInfo(
        options.ExecutablePath!, [.. options.Args!, "--headless=new", "--window-size=1280,900", "--remote-debugging-port=0", $"--user-data-dir={_profile}", "about:blank"])
    {
        RedirectStandardOutput = true,
        RedirectStandardError = true,
    })!;

    public static async Task<PlainBrowser> StartAsync(BrowserTypeLaunchOptions options)
    {
        var browser = new PlainBrowser(options);
        _ = browser._process.StandardOutput.ReadToEndAsync();
        _ = browser._process.StandardError.ReadToEndAsync();
        var port = Path.Combine(browser._profile, "DevToolsActivePort");
        string[] lines = [];
        await Until(async () => File.Exists(port) && (lines = await File.ReadAllLinesAsync(port)).Length == 2);
        await browser._line.ConnectAsync(new($"ws://127.0.0.1:{lines[0]}{lines[1]}"), TestContext.Current.CancellationToken);
        return browser;
    }

    /// <summary>Asks again and again until it is so.</summary>
    public static async Task Until(Func<Task<bool>> isSo)
    {
        using var patience = CancellationTokenSource.CreateLinkedTokenSource(TestContext.Current.CancellationToken);
        patience.CancelAfter(TimeSpan.FromSeconds(60));
        while (!await isSo())
            await Task.Delay(100, patience.Token);
    }

    public async Task<PlainTab> OpenAsync(string address)
    {
        var target = (await AskAsync("Target.createTarget", new() { ["url"] = address }))["targetId"]!.GetValue<string>();
        var session = (await AskAsync("Target.attachToTarget", new() { ["targetId"] = target, ["flatten"] = true }))["sessionId"]!.GetValue<string>();
        return new(this, target, session);
    }

    /// <summary>Asks for something and reads on until the answer comes; what else the browser tells is passed over. One at a time.</summary>
    public async Task<JsonNode> AskAsync(string method, JsonObject with, string? session = null)
    {
        var number = ++_asked;
        var message = new JsonObject { ["id"] = number, ["method"] = method, ["params"] = with };
        if (session is not null)
            message["sessionId"] = session;
        var stop = TestContext.Current.CancellationToken;
        await _line.SendAsync(JsonSerializer.SerializeToUtf8Bytes(message), WebSocketMessageType.Text, endOfMessage: true, stop);
        while (true)
        {
            using var text = new MemoryStream();
            ValueWebSocketReceiveResult part;
            do
            {
                var buffer = new byte[16 * 1024];
                part = await _line.ReceiveAsync(buffer.AsMemory(), stop);
                text.Write(buffer, 0, part.Count);
            }
            while (!part.EndOfMessage);
            var told = JsonNode.Parse(text.ToArray())!;
            if ((int?)told["id"] == number)
                return told["result"] ?? throw new InvalidOperationException($"{method}: {told["error"]}");
        }
    }

    public async ValueTask DisposeAsync()
    {
        _process.Kill(entireProcessTree: true);
        await _process.WaitForExitAsync();
        _process.Dispose();
        _line.Dispose();
        try
        {
            Directory.Delete(_profile, recursive: true);
        }
        catch (IOException)
        {
            // A child of the browser may still be writing; the folder is in the system's temporary one.
        }
    }
}
