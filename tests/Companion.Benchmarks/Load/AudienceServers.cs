using System.Diagnostics;
using System.Text.Json;
using System.Text.RegularExpressions;
using Companion.Server.Tests.Running;

namespace Companion.Benchmarks.Load;

/// <summary>A Redis server and audience servers that follow by it, each a process of its own.</summary>
internal sealed partial class AudienceServers : IAsyncDisposable
{
    private readonly List<Process> _processes = [];
    private readonly List<Uri> _addresses = [];
    private readonly string _folder = Directory.CreateTempSubdirectory("companion-load-").FullName;

    /// <summary>Where the Redis server is.</summary>
    public string Redis { get; } = $"127.0.0.1:{FreePorts.Next()}";

    /// <summary>Where the audience servers are.</summary>
    public IReadOnlyList<Uri> Addresses => _addresses;

    public static async Task<AudienceServers> StartAsync(int count, object audience)
    {
        var servers = new AudienceServers();
        servers._processes.Add(DebianPackages.Redis.Start(
            "redis-server", "--port", servers.Redis.Split(':')[1], "--bind", "127.0.0.1", "--save", "", "--dir", servers._folder));
        for (var server = 0; server < count; server++)
            await servers.AddAsync(Path.Combine(servers._folder, $"{server}"), audience);
        return servers;
    }

    /// <summary>Waits until all of them let viewers in.</summary>
    public async Task FollowAsync()
    {
        foreach (var address in _addresses)
        {
            using var browser = new HttpClient { BaseAddress = address };
            browser.DefaultRequestHeaders.Add("Origin", address.GetLeftPart(UriPartial.Authority));
            while (!(await browser.PostAsync(new Uri("/hubs/audience/negotiate?negotiateVersion=1", UriKind.Relative), null)).IsSuccessStatusCode)
                await Task.Delay(100);
        }
    }

    public async ValueTask DisposeAsync()
    {
        foreach (var process in _processes)
        {
            process.Kill();
            await process.WaitForExitAsync();
            process.Dispose();
        }

        Directory.Delete(_folder, recursive: true);
    }

    private async Task AddAsync(string folder, object audience)
    {
        Directory.CreateDirectory(folder);
        await File.WriteAllTextAsync(Path.Combine(folder, "companion.json"), JsonSerializer.Serialize(new { audience }));
        var process = Process.Start(new ProcessStartInfo(
            "dotnet",
            [Path.Combine(AppContext.BaseDirectory, "companion.dll"), "audience", "--upstream", Redis, "--port", "0", "--data", folder])
        {
            RedirectStandardOutput = true,
        })!;
        _processes.Add(process);
        while (await process.StandardOutput.ReadLineAsync() is { } line)
        {
            if (Place().Match(line) is { Success: true } place)
            {
                _addresses.Add(new(place.Groups["address"].Value));
                return;
            }
        }

        throw new InvalidOperationException("An audience server did not start.");
    }

    [GeneratedRegex("page is at (?<address>http://[^/]+)/audience")]
    private static partial Regex Place();
}
