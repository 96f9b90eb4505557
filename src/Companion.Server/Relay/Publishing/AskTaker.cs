using Companion.Server.Live.Audience;
using Companion.Server.Relay.Notices;
using StackExchange.Redis;

namespace Companion.Server.Relay.Publishing;

/// <summary>Takes asks from the audience servers, has them answered like those of this server's page, and sends each answer back where it came from.</summary>
/// <param name="asks">Where asks are answered, and dropped where there are too many.</param>
/// <param name="link">The Redis server.</param>
/// <param name="log">Where failures are reported.</param>
internal sealed partial class AskTaker(IAudienceAsks asks, RedisLink link, ILogger<AskTaker> log) : BackgroundService
{
    private const int LongestViewer = 64;

    /// <inheritdoc/>
    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        var redis = await link.Connected.WaitAsync(stoppingToken);
        var calls = await redis.GetSubscriber().SubscribeAsync(Channels.Asks);
        calls.OnMessage(message => _ = Take(redis, message.Message, stoppingToken));
    }

    private async Task Take(IConnectionMultiplexer redis, RedisValue text, CancellationToken stop)
    {
        try
        {
            if (Channels.Read<AskNotice>(text) is not { Viewer.Length: > 0 and <= LongestViewer, From: not null } notice || notice.Ask() is not { } ask)
                return;
            var answer = await asks.Ask(notice.Viewer, ask, stop);
            await redis.GetSubscriber().PublishAsync(Channels.Answers(notice.From), Channels.Write(new AnswerNotice(notice.Id, answer)));
        }
        catch (Exception failure) when (failure is not OperationCanceledException)
        {
            TakeFailed(failure);
        }
    }

    [LoggerMessage(LogLevel.Error, "An ask of an audience server failed; the session goes on.")]
    private partial void TakeFailed(Exception failure);
}
