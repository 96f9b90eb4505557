using Companion.Server.Live.Audience;
using Companion.Server.Live.Audience.Door;
using Companion.Server.Relay.Notices;
using Companion.Session.Audience;

namespace Companion.Server.Relay.Following;

/// <summary>
/// What an audience server knows of the session that it follows. The views themselves reach its viewers by SignalR's backplane; this
/// greets those who come, and sends all away to come back, and to be shown the whole view, when some may have missed one.
/// </summary>
/// <param name="guests">Those who are connected.</param>
/// <param name="link">The Redis server.</param>
/// <param name="clock">The clock.</param>
/// <param name="log">Where failures are reported.</param>
internal sealed partial class FollowedBoards(Guests guests, RedisLink link, TimeProvider clock, ILogger<FollowedBoards> log)
    : BackgroundService, IAudienceBoards
{
    /// <summary>After which time without a word the presenter's server is taken to be away.</summary>
    public static readonly TimeSpan Patience = TimeSpan.FromSeconds(5);

    private static readonly TimeSpan Look = TimeSpan.FromMilliseconds(500);
    private static readonly AudienceView Nothing =
        new(0, AudienceDoor.Closed, 0, new(Open: false, Engine.Proofs.Grade.Where, QuietOnAir: false), IsQuiet: false, null, null);

    private readonly Lock _lock = new();
    private volatile Heard? _last;

    /// <inheritdoc/>
    public AudienceView Current => _last?.Notice.View ?? Nothing;

    /// <inheritdoc/>
    public string? Away => _last is { } last && clock.GetElapsedTime(last.At) < Patience ? null : AudienceSentences.Away;

    /// <summary>The hash of the key by which viewers come in, or null where it is not known yet.</summary>
    public string? KeyHash => _last?.Notice.KeyHash;

    /// <inheritdoc/>
    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        var redis = await link.Connected.WaitAsync(stoppingToken);
        var told = await redis.GetSubscriber().SubscribeAsync(Channels.Boards);
        told.OnMessage(message => Take(Channels.Read<BoardNotice>(message.Message)));
        using var timer = new PeriodicTimer(Look, clock);
        var wasAway = true;
        do
        {
            try
            {
                // The first word, and what was missed while the connection was away.
                if (Away is not null && link.IsUp)
                    Take(Channels.Read<BoardNotice>(await redis.GetDatabase().StringGetAsync(link.Key(Channels.Board))));
            }
            catch (Exception failure) when (failure is not OperationCanceledException)
            {
                LookFailed(failure);
            }

            var isAway = Away is not null;
            if (isAway && !wasAway)
                guests.SendAllAway();
            wasAway = isAway;
        }
        while (await timer.WaitForNextTickAsync(stoppingToken));
    }

    private void Take(BoardNotice? notice)
    {
        if (notice is null)
            return;
        lock (_lock)
        {
            var before = _last?.Notice;
            _last = new(notice, clock.GetTimestamp());
            guests.Show(notice.View);

            // What was not heard of may not have reached the viewers either.
            if (before is not null && notice.HasGapAfter(before))
                guests.SendAllAway();
        }
    }

    [LoggerMessage(LogLevel.Warning, "The presenter's server could not be looked for; it is tried again.")]
    private partial void LookFailed(Exception failure);

    private sealed record Heard(BoardNotice Notice, long At);
}
