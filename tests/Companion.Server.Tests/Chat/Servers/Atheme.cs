using System.Diagnostics;
using Companion.Server.Tests.Running;

namespace Companion.Server.Tests.Chat.Servers;

/// <summary>The services that many IRC networks keep their accounts with, as a child process linked to an InspIRCd.</summary>
internal sealed class Atheme : IAsyncDisposable
{
    // Its own search for modules looks in the system's folders only: each that another one needs comes before it.
    private static readonly string[] Modules =
    [
        "transport/rfc1459", "protocol/base36uid", "protocol/inspircd", "backend/corestorage", "backend/opensex", "crypto/pbkdf2v2",
        "nickserv/main", "nickserv/register", "saslserv/main", "saslserv/plain",
    ];

    private readonly TemporaryFolder _folder = new();
    private readonly Process _process;

    private Atheme(Inspircd server) => _process = Launch(server);

    /// <summary>Links services to a server and registers an account with them, as a person does.</summary>
    public static async Task<Atheme> Link(Inspircd server, string account, string password)
    {
        var atheme = new Atheme(server);
        await using var person = await Viewer.Join(server, "#accounts", "person");
        while (true)
        {
            await person.Send($"PRIVMSG NickServ :REGISTER {account} {password} {account}@irc.example");
            var answer = await person.Sees(message => message.Command is "NOTICE" or "401");
            if (answer.Command == "NOTICE" && answer.Last.Contains("is now registered", StringComparison.Ordinal))
                return atheme;
            await Task.Delay(50, TestContext.Current.CancellationToken); // not linked yet
        }
    }

    public async ValueTask DisposeAsync()
    {
        _process.Kill();
        await _process.WaitForExitAsync(CancellationToken.None);
        _process.Dispose();
        _folder.Dispose();
    }

    private Process Launch(Inspircd server)
    {
        var modules = Path.Combine(Directory.GetDirectories(DebianPackages.IrcServices.In("usr/lib"), "*-linux-gnu")[0], "atheme", "modules");
        var configuration = _folder.In("atheme.conf");
        File.WriteAllText(configuration, $$"""
            {{string.Concat(Modules.Select(module => $"loadmodule \"{modules}/{module}\";\n"))}}
            serverinfo {
              name = "services.example"; desc = "Services for tests"; numeric = "00S"; recontime = 1; netname = "Test";
              adminname = "admin"; adminemail = "admin@irc.example"; registeremail = "noreply@irc.example"; auth = none;
              maxlogins = 5; maxusers = 5; mdlimit = 30; emaillimit = 10; emailtime = 300; casemapping = rfc1459;
            };
            uplink "irc.example" { host = "127.0.0.1"; port = {{server.ServersPort}}; send_password = "link"; receive_password = "link"; };
            nickserv { no_nick_ownership; nick = "NickServ"; user = "services"; host = "services.example"; real = "Accounts"; };
            saslserv { nick = "SaslServ"; user = "services"; host = "services.example"; real = "Signing in"; };
            database {};
            general { commit_interval = 5; };
            """);
        return DebianPackages.IrcServices.Start(
            "atheme-services", "-n", "-c", configuration, "-D", _folder.Path, "-l", _folder.In("log"), "-p", _folder.In("pid"));
    }
}
