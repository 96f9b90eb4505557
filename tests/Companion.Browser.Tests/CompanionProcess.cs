using System.Diagnostics;
using System.Net;
using System.Net.Sockets;
using System.Text.RegularExpressions;

namespace Companion.Browser.Tests;

/// <summary>The built server as a user runs it: a process of its own on a free loopback port with a data folder of its own.</summary>
public sealed partial class CompanionProcess : IAsyncDisposable
{
    private readonly Dictionary<string, Uri> _links = [];
    private readonly bool _ownsFolder;
    private Process _process;

    private CompanionProcess(string folder, bool ownsFolder, int port)
    {
        Folder = folder;
        _ownsFolder = ownsFolder;
        Port = port;
        _process = Launch();
    }

    public string Folder { get; }

    public int Port { get; }

    public Uri Presenter => _links["presenter"];

    /// <summary>A co-host's panel.</summary>
    public Uri Desk => _links["desk"];

    public Uri Stage => _links["stage"];

    /// <summary>A viewer's page, with the key of its link.</summary>
    public Uri Audience => _links["audience"];

    public static async Task<CompanionProcess> StartAsync(string settings = "{}")
    {
        var folder = Directory.CreateTempSubdirectory("companion-").FullName;
        await File.WriteAllTextAsync(Path.Combine(folder, "companion.json"), settings);
        var companion = new CompanionProcess(folder, ownsFolder: true, FreePort());
        await companion.ReadLinksAsync();
        return companion;
    }

    public Uri Overlay(string scene = "main") => new($"{_links["overlay"].GetLeftPart(UriPartial.Path)}?scene={scene}{_links["overlay"].Fragment}");

    /// <summary>Ends the process at once, as a crash would, and starts it again on the same folder and port.</summary>
    public async Task KillAndRestartAsync()
    {
        await EndAsync();
        _process = Launch();
        await ReadLinksAsync();
    }

    public async ValueTask DisposeAsync()
    {
        await EndAsync();
        if (_ownsFolder)
            Directory.Delete(Folder, recursive: true);
    }

    private async Task EndAsync()
    {
        _process.Kill(entireProcessTree: true);
        await _process.WaitForExitAsync();
        _process.Dispose();
    }

    private Process Launch() => Process.Start(new ProcessStartInfo(
        "dotnet", [Path.Combine(AppContext.BaseDirectory, "companion.dll"), "--port", $"{Port}", "--data", Folder])
    {
        RedirectStandardOutput = true,
        RedirectStandardError = true,
    })!;

    private async Task ReadLinksAsync()
    {
        _links.Clear();
        var output = new List<string>();
        using var patience = new CancellationTokenSource(TimeSpan.FromSeconds(60));
        while (!(_links.ContainsKey("presenter") && _links.ContainsKey("overlay") && _links.ContainsKey("audience")))
        {
            var line = await _process.StandardOutput.ReadLineAsync(patience.Token)
                ?? throw new InvalidOperationException($"The server ended: {string.Join('\n', output)} {await _process.StandardError.ReadToEndAsync()}");
            output.Add(line);
            foreach (Match link in LinkPattern().Matches(line))
                _links[link.Groups["page"].Value] = new Uri(link.Value);
        }

        // Whatever it prints later must not fill the pipe.
        _ = _process.StandardOutput.ReadToEndAsync();
    }

    private static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }

    [GeneratedRegex(@"http://localhost:\d+/(?<page>presenter|desk|overlay|stage|audience)#k=[A-Za-z0-9_-]+")]
    private static partial Regex LinkPattern();
}
