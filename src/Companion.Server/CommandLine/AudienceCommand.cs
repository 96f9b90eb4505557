using System.CommandLine;
using Companion.Server.Data;
using Companion.Server.Pages;
using Companion.Server.Relay;
using Companion.Server.Settings;

namespace Companion.Server.CommandLine;

/// <summary><c>companion audience</c>: runs a server for viewers alone until it is stopped.</summary>
internal static class AudienceCommand
{
    /// <summary>The command.</summary>
    public static Command Make()
    {
        var upstream = new Option<string?>("--upstream")
        {
            Description = "The Redis server that the presenter's server publishes to, such as 127.0.0.1:6379; else relay.redis of companion.json.",
            HelpName = "address",
        };
        var port = SharedOptions.Port();
        var data = SharedOptions.Data();
        data.Description = "The folder for settings and log files; by default in the user's local application data.";
        var command = new Command(
            "audience",
            """
            Runs a server for viewers alone, which follows the presenter's server: for audiences that outgrow one machine. It has the
            audience's page and nothing else. The presenter's companion.json names the same Redis server as relay.redis; where that has a
            password, it stands in COMPANION_REDIS_PASSWORD or the file redis-password in the data folder.
            """)
        {
            upstream,
            port,
            data,
        };
        command.SetAction((asked, _) => Run(
            asked.GetValue(upstream), asked.GetValue(port), asked.GetValue(data), asked.InvocationConfiguration.Output));
        return command;
    }

    private static async Task<int> Run(string? upstream, int? port, string? data, TextWriter output)
    {
        var folder = DataFolder.Open(data, DataFolder.UsualForAudience);
        var settings = Settings(folder, port, upstream);
        using var taken = folder.Take();
        await using var app = AudienceServer.Build(folder, settings);
        await ServeCommand.Start(app, settings);

        await output.WriteLineAsync($"The audience's page is at {ServeCommand.Address(app, settings)}{Page.Audience.Path} (Ctrl+C stops this server).");
        await output.WriteLineAsync("Where it opens by its link alone, the key of the presenter's link opens it here too: put #k=... behind.");
        await app.WaitForShutdownAsync();
        return ExitCode.Fine;
    }

    private static ServerSettings Settings(DataFolder folder, int? port, string? upstream)
    {
        var settings = SettingsFeature.Read(folder, port);
        if (upstream is not null)
            settings = settings with { Relay = settings.Relay with { Redis = upstream } };
        if (!settings.Relay.IsOn)
            throw new PlainException("An audience server follows the presenter's by a Redis server: name it with --upstream.");
        var faults = settings.Relay.Faults().ToList();
        return faults.Count == 0 ? settings : throw new PlainException(string.Join(' ', faults));
    }
}
