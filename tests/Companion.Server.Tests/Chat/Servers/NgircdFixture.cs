namespace Companion.Server.Tests.Chat.Servers;

/// <summary>One ngIRCd for all tests of a class; each has a channel of its own.</summary>
public sealed class NgircdFixture : IAsyncLifetime
{
    internal Ngircd Server { get; } = new();

    public async ValueTask InitializeAsync() => await Server.Start();

    public ValueTask DisposeAsync() => Server.DisposeAsync();
}
