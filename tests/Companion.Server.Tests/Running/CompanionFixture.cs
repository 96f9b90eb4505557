namespace Companion.Server.Tests.Running;

/// <summary>One server for all tests of a class that leave it as they found it.</summary>
public sealed class CompanionFixture : IAsyncLifetime
{
    internal RunningCompanion Companion { get; private set; } = null!;

    public async ValueTask InitializeAsync() => Companion = await RunningCompanion.Start();

    public ValueTask DisposeAsync() => Companion.DisposeAsync();
}
