using System.CommandLine;
using System.Net.Sockets;
using Companion.Server.Access;
using Companion.Server.Data;
using Companion.Server.Log;
using Companion.Server.Pages;
using Companion.Server.Settings;
using Microsoft.AspNetCore.Connections;

namespace Companion.Server.CommandLine;

/// <summary><c>companion</c>: runs the server until it is stopped.</summary>
internal static class ServeCommand
{
    /// <summary>The command, which is the root of all others.</summary>
    public static RootCommand Make()
    {
        var port = SharedOptions.Port();
        var data = SharedOptions.Data();
        var command = new RootCommand("A companion for a presenter who solves sudoku by logic. Without a word more it runs the server.")
        {
            port,
            data,
        };
        command.SetAction((asked, _) => Run(asked.GetValue(port), asked.GetValue(data), asked.InvocationConfiguration.Output));
        return command;
    }

    private static async Task<int> Run(int? port, string? data, TextWriter output)
    {
        var folder = DataFolder.Open(data);
        var settings = SettingsFeature.Read(folder, port);
        using var taken = folder.Take();
        await using var app = Program.Build(folder, settings);
        await Start(app, settings);

        var address = Address(app, settings);
        var links = new PageLinks(settings, role => app.Services.GetRequiredService<KeyRing>()[role]);
        await output.WriteLineAsync($"The companion runs at {address} (Ctrl+C stops it).");
        await output.WriteLineAsync(links.Lines(address, Bound(app, Uri.UriSchemeHttps) is { } others ? new Uri(others).Port : 0));
        if (app.Services.GetRequiredService<IEventLog>().Warning is { } lost)
            await output.WriteLineAsync(lost);
        if (!Page.AreBuilt(app.Environment.WebRootFileProvider))
            await output.WriteLineAsync("The pages were not built into this program: build it again without SkipClient.");
        if (folder.IsOpenToOthers)
            await output.WriteLineAsync($"Other users of this machine can look into {folder.Path}: close it to them.");
        await app.WaitForShutdownAsync();
        return ExitCode.Fine;
    }

    /// <summary>Starts a server.</summary>
    /// <param name="app">The server.</param>
    /// <param name="settings">Its settings.</param>
    /// <exception cref="PlainException">A port is taken, or this machine has no such address.</exception>
    public static async Task Start(WebApplication app, ServerSettings settings)
    {
        try
        {
            await app.StartAsync();
        }
        catch (IOException taken) when (taken.InnerException is AddressInUseException)
        {
            throw new PlainException(
                settings.IsOpenToOthers
                    ? $"Port {settings.Port} or, for other machines, {settings.Tls.Port} is taken by another program: stop that one, or choose others in companion.json."
                    : $"Port {settings.Port} is taken by another program: stop that one, or choose another port with --port.",
                taken);
        }
        catch (SocketException nowhere) when (nowhere.SocketErrorCode == SocketError.AddressNotAvailable)
        {
            throw new PlainException($"This machine has no address {settings.Listen}: change listen in companion.json.", nowhere);
        }
    }

    /// <summary>Where a running server is reached on this machine.</summary>
    /// <param name="app">The server.</param>
    /// <param name="settings">Its settings.</param>
    public static string Address(WebApplication app, ServerSettings settings) =>
        settings.Port == 0 ? Bound(app, Uri.UriSchemeHttp)! : $"http://localhost:{settings.Port}";

    private static string? Bound(WebApplication app, string scheme) =>
        app.Urls.FirstOrDefault(url => url.StartsWith(scheme + "://", StringComparison.Ordinal));
}
