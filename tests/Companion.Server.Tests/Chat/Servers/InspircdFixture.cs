namespace Companion.Server.Tests.Chat.Servers;

/// <summary>One InspIRCd with one account, for all tests of a class; each has a channel of its own.</summary>
public sealed class InspircdFixture : IAsyncLifetime
{
    private AccountsServer? _accounts;

    internal Inspircd Server { get; } = new();

    public async ValueTask InitializeAsync()
    {
        await Server.Start();
        _accounts = await AccountsServer.Link(Server, "jilles", "sesame");
    }

    public async ValueTask DisposeAsync()
    {
        await _accounts!.DisposeAsync();
        await Server.DisposeAsync();
    }
}
