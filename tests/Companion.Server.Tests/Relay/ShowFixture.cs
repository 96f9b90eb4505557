namespace Companion.Server.Tests.Relay;

/// <summary>One show for all tests of a class that leave it as they found it.</summary>
public sealed class ShowFixture : IAsyncLifetime
{
    internal Show Show { get; private set; } = null!;

    public async ValueTask InitializeAsync() => Show = await Show.Begin();

    public ValueTask DisposeAsync() => Show.DisposeAsync();
}
