using System.Collections.Concurrent;
using System.Security.Cryptography;
using Companion.Server.Live.Audience;
using Companion.Server.Relay.Notices;
using Companion.Server.Wire;
using Companion.Session.Asks;
using StackExchange.Redis;

namespace Companion.Server.Relay.Following;

/// <summary>Has the asks of an audience server's viewers answered by the presenter's server.</summary>
/// <param name="link">The Redis server.</param>
/// <param name="clock">The clock.</param>
internal sealed class ForwardedAsks(RedisLink link, TimeProvider clock) : BackgroundService, IAudienceAsks
{
    // Longer than those who ask the same are gathered, and than the presenter's server takes for its answer.
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(20);

    private readonly string _name = RandomNumberGenerator.GetHexString(16, lowercase: true);
    private readonly ConcurrentDictionary<long, TaskCompletionSource<AudienceAnswer>> _waiting = new();
    private long _last;

    /// <inheritdoc/>
    public async Task<AudienceAnswer> Ask(string viewer, Ask ask, CancellationToken gone)
    {
        if (!link.IsUp)
            return AudienceAnswer.Notice(AudienceSentences.Away);
        var id = Interlocked.Increment(ref _last);
        var answer = _waiting[id] = new(TaskCreationOptions.RunContinuationsAsynchronously);
        try
        {
            var redis = await link.Connected;
            var heard = await redis.GetSubscriber().PublishAsync(Channels.Asks, Channels.Write(AskNotice.Of(_name, id, viewer, ask)));
            return heard == 0 ? AudienceAnswer.Notice(AudienceSentences.Away) : await answer.Task.WaitAsync(Patience, clock, gone);
        }
        catch (Exception lost) when (lost is TimeoutException or RedisException)
        {
            return AudienceAnswer.Notice(AudienceSentences.Unanswered);
        }
        finally
        {
            _waiting.TryRemove(id, out _);
        }
    }

    /// <inheritdoc/>
    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        var redis = await link.Connected.WaitAsync(stoppingToken);
        var answers = await redis.GetSubscriber().SubscribeAsync(Channels.Answers(_name));
        answers.OnMessage(message =>
        {
            if (Channels.Read<AnswerNotice>(message.Message) is { Answer: not null } answered && _waiting.TryGetValue(answered.Id, out var asked))
                asked.TrySetResult(answered.Answer);
        });
    }
}
