using System.Security.Cryptography;
using Companion.Server.Access;
using Companion.Server.Live.Audience;
using Companion.Server.Live.Transport;
using Companion.Server.Relay.Notices;
using Companion.Server.Settings;
using Companion.Session.Audience;
using Microsoft.AspNetCore.SignalR.StackExchangeRedis;

namespace Companion.Server.Relay.Publishing;

/// <summary>
/// Publishes the audience's views: to the viewers of all audience servers by SignalR's backplane, and to those servers themselves.
/// The viewers of this server are pushed to directly and never depend on Redis.
/// </summary>
/// <param name="backplane">Reaches the hub of each audience server. None of this server's viewers is connected to it.</param>
/// <param name="link">The Redis server.</param>
/// <param name="keys">The audience's key, of which a hash is published.</param>
/// <param name="settings">Say how often.</param>
/// <param name="clock">The clock.</param>
/// <param name="log">Where failures are reported.</param>
internal sealed class BoardPublisher(
    RedisHubLifetimeManager<AudienceHub> backplane,
    RedisLink link,
    KeyRing keys,
    ServerSettings settings,
    TimeProvider clock,
    ILogger<BoardPublisher> log)
    : ViewPump<AudienceView>(new(Patience, TimeSpan.FromSeconds(1) / settings.AudiencePushesPerSecond), clock, log), IAudienceOutput
{
    /// <summary>How often audience servers hear that this one is there.</summary>
    public static readonly TimeSpan Beat = TimeSpan.FromSeconds(1);

    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(1);

    // A server that starts later than this after the last word finds nothing rather than an old board.
    private static readonly TimeSpan Expiry = 5 * Beat;

    private readonly TimeProvider _clock = clock;
    private readonly string _run = RandomNumberGenerator.GetHexString(16, lowercase: true);

    // A word in between must not tell of a push before it is made.
    private readonly SemaphoreSlim _turn = new(1);

    private AudienceView? _newest;
    private long _number;

    /// <inheritdoc/>
    public override void Dispose()
    {
        _turn.Dispose();
        base.Dispose();
    }

    /// <inheritdoc/>
    protected override async Task Send(AudienceView view)
    {
        await _turn.WaitAsync();
        try
        {
            (_newest, _number) = (view, _number + 1);
            if (!link.IsUp)
                return;

            // The servers first: whoever connects now is greeted with it by them, and whoever is connected gets it.
            await Tell(isRepeated: false);
            await backplane.SendAllAsync(nameof(IAudienceClient.Board), [view]);
        }
        catch
        {
            _number++; // whatever became of the push, the next word says that one is missing
            throw;
        }
        finally
        {
            _turn.Release();
        }
    }

    /// <inheritdoc/>
    protected override Task ExecuteAsync(CancellationToken stoppingToken) =>
        Task.WhenAll(base.ExecuteAsync(stoppingToken), BeatAlways(stoppingToken));

    private async Task BeatAlways(CancellationToken stop)
    {
        using var timer = new PeriodicTimer(Beat, _clock);
        while (await timer.WaitForNextTickAsync(stop))
        {
            await _turn.WaitAsync(stop);
            try
            {
                if (link.IsUp && _newest is not null)
                    await Tell(isRepeated: true);
            }
            catch (Exception failure)
            {
                PushFailed(failure);
            }
            finally
            {
                _turn.Release();
            }
        }
    }

    private async Task Tell(bool isRepeated)
    {
        var redis = await link.Connected;
        var notice = Channels.Write(new BoardNotice(_run, keys[AccessRole.Viewer].Hash(), _number, isRepeated, _newest!));
        await redis.GetDatabase().StringSetAsync(link.Key(Channels.Board), notice, Expiry);
        await redis.GetSubscriber().PublishAsync(Channels.Boards, notice);
    }
}
