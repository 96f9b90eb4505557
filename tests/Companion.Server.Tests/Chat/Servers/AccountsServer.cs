using System.Globalization;
using System.Net;
using System.Net.Sockets;
using System.Text;
using System.Text.RegularExpressions;

namespace Companion.Server.Tests.Chat.Servers;

/// <summary>
/// The services server that InspIRCd asks about accounts, which knows one of them. It speaks as much of the protocol between servers
/// (1205) as that takes, and tells the other that it can do just what the other can.
/// </summary>
internal sealed class AccountsServer : IAsyncDisposable
{
    private readonly TcpClient _socket = new();
    private readonly string _answer;
    private readonly string _account;
    private readonly TaskCompletionSource _isLinked = new();
    private Task _running = Task.CompletedTask;

    private AccountsServer(string account, string password) => (_account, _answer) =
        (account, Convert.ToBase64String(Encoding.UTF8.GetBytes($"{account}\0{account}\0{password}")));

    /// <summary>Links to a server and waits until it is asked for accounts there.</summary>
    public static async Task<AccountsServer> Link(Inspircd server, string account, string password)
    {
        var accounts = new AccountsServer(account, password);
        await accounts._socket.ConnectAsync(IPAddress.Loopback, server.ServersPort, TestContext.Current.CancellationToken);
        accounts._running = accounts.Run();
        await accounts._isLinked.Task.WaitAsync(ChatHarness.Patience, TestContext.Current.CancellationToken);
        return accounts;
    }

    public async ValueTask DisposeAsync()
    {
        _socket.Dispose();
        await _running;
    }

    private async Task Run()
    {
        try
        {
            using var reader = new StreamReader(_socket.GetStream());
            while (await reader.ReadLineAsync() is { } line)
            {
                foreach (var answer in Answers(line))
                    await _socket.GetStream().WriteAsync(Encoding.UTF8.GetBytes(answer + "\r\n"));
            }
        }
        catch (Exception gone) when (gone is IOException or ObjectDisposedException)
        {
            // Either end has closed the link.
        }
    }

    private string[] Answers(string line)
    {
        var words = line.Split(' ');
        if (words[0] == "CAPAB")
        {
            // Without a challenge of ours the passwords are sent as they are.
            string[] first = [Regex.Replace(line, @" CHALLENGE=\S*", "")];
            return words[1] == "END" ? [.. first, "SERVER services.example link 0 00S :Accounts"] : first;
        }

        if (words[0] == "SERVER")
        {
            var now = TimeProvider.System.GetUtcNow().ToUnixTimeSeconds().ToString(CultureInfo.InvariantCulture);
            return [$":00S BURST {now}", ":00S METADATA * saslmechlist :PLAIN", ":00S ENDBURST"];
        }

        switch (words.ElementAtOrDefault(1))
        {
            case "ENDBURST":
                _isLinked.TrySetResult();
                return [];
            case "PING":
                return [$":00S PONG {words[2]}"];
            case "ENCAP" when words[3] == "SASL" && words[6] == "S":
                return [$":00S ENCAP 0AA SASL 00SAAAAAA {words[4]} C +"];
            case "ENCAP" when words[3] == "SASL" && words[6] == "C":
                var fits = words[7].TrimStart(':') == _answer;
                string[] login = fits ? [$":00S METADATA {words[4]} accountname :{_account}"] : [];
                return [.. login, $":00S ENCAP 0AA SASL 00SAAAAAA {words[4]} D {(fits ? "S" : "F")}"];
            default:
                return [];
        }
    }
}
