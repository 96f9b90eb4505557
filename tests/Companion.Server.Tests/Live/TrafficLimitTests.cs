using System.IO.Pipelines;
using Companion.Server.Live.Transport;
using Companion.Server.Tests.Running;
using Microsoft.AspNetCore.Connections;
using Microsoft.Extensions.Time.Testing;

namespace Companion.Server.Tests.Live;

public sealed class TrafficLimitTests : IAsyncDisposable
{
    private readonly FakeTimeProvider _clock = new();
    private readonly Pipe _incoming = new();
    private readonly AbortableConnection _connection = new();

    [Fact]
    public async Task A_connection_that_keeps_to_the_limit_may_send_for_ever()
    {
        await Limit(new(BytesPerSecond: 100, Burst: 300));

        for (var second = 0; second < 20; second++)
        {
            await Send(100);
            _clock.Advance(TimeSpan.FromSeconds(1));
        }

        Assert.False(_connection.IsAborted);
    }

    [Fact]
    public async Task A_connection_that_sends_more_is_cut_off()
    {
        await Limit(new(BytesPerSecond: 100, Burst: 300));

        await Send(300);
        Assert.False(_connection.IsAborted);
        await Send(1);

        Assert.True(_connection.IsAborted);
    }

    [Fact]
    public async Task Bytes_that_are_looked_at_twice_count_once()
    {
        await Limit(new(BytesPerSecond: 0, Burst: 300));
        var input = _connection.Transport.Input;

        await _incoming.Writer.WriteAsync(new byte[200], TestContext.Current.CancellationToken);
        for (var look = 0; look < 5; look++)
        {
            var seen = await input.ReadAsync(TestContext.Current.CancellationToken);
            Assert.Equal(200, seen.Buffer.Length);
            input.AdvanceTo(seen.Buffer.Start);
        }

        Assert.False(_connection.IsAborted);
    }

    [Fact]
    public async Task A_flood_of_calls_to_a_method_that_does_not_exist_ends_the_connection()
    {
        await using var companion = await RunningCompanion.Start();
        await using var flooding = await companion.OpenDesk();
        await using var presenter = await companion.OpenDesk();

        var calls = Enumerable.Range(0, 4000).Select(_ => flooding.Ask("NoSuchMethod")).ToList();
        await Assert.ThrowsAnyAsync<Exception>(() => Task.WhenAll(calls));

        await flooding.IsClosed();
        await presenter.Do("AllowCoHostOnAir", true);
    }

    public ValueTask DisposeAsync() => _connection.DisposeAsync();

    private Task Limit(TrafficLimit limit)
    {
        _connection.Transport = new Duplex(_incoming.Reader, new Pipe().Writer);
        return limit.Apply(_connection, _ => Task.CompletedTask, _clock);
    }

    private async Task Send(int bytes)
    {
        await _incoming.Writer.WriteAsync(new byte[bytes], TestContext.Current.CancellationToken);
        var read = await _connection.Transport.Input.ReadAsync(TestContext.Current.CancellationToken);
        _connection.Transport.Input.AdvanceTo(read.Buffer.End);
    }

    private sealed class AbortableConnection : DefaultConnectionContext
    {
        public bool IsAborted { get; private set; }

        public override void Abort(ConnectionAbortedException abortReason) => IsAborted = true;
    }

    private sealed record Duplex(PipeReader Input, PipeWriter Output) : IDuplexPipe;
}
