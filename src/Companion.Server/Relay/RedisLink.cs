using Companion.Server.Chat;
using Companion.Server.Data;
using Companion.Server.Settings;
using StackExchange.Redis;

namespace Companion.Server.Relay;

/// <summary>
/// The connection to the Redis server. It is made in the background and made again after every loss, so that nothing else waits for
/// it; while it is away, what is asked of it fails at once.
/// </summary>
internal sealed partial class RedisLink : BackgroundService
{
    private const int StepsToReport = 25;

    private static readonly TimeSpan Step = TimeSpan.FromMilliseconds(200);

    private readonly TaskCompletionSource<IConnectionMultiplexer> _connected = new(TaskCreationOptions.RunContinuationsAsynchronously);
    private readonly ConfigurationOptions _options;
    private readonly string _prefix;
    private readonly TimeProvider _clock;
    private readonly ILogger<RedisLink> _log;

    /// <summary>Makes the link, which connects when it is started.</summary>
    /// <param name="settings">Where the server is.</param>
    /// <param name="password">Its password, or null for none.</param>
    /// <param name="clock">The clock.</param>
    /// <param name="log">Where losses are reported.</param>
    public RedisLink(RelaySettings settings, Secret? password, TimeProvider clock, ILogger<RedisLink> log)
    {
        (_prefix, _clock, _log) = (settings.Prefix, clock, log);
        _options = settings.Options();
        _options.Password = password?.Reveal();
        _options.AbortOnConnectFail = false;
        _options.ReconnectRetryPolicy = new LinearRetry(1000);
        _options.BacklogPolicy = BacklogPolicy.FailFast;
        // The backplane's channels and ours.
        _options.ChannelPrefix = RedisChannel.Literal($"{settings.Prefix}:");
    }

    /// <summary>The connection, once it stands for the first time.</summary>
    public Task<IConnectionMultiplexer> Connected => _connected.Task;

    /// <summary>Whether it stands now.</summary>
    public bool IsUp => Connected.IsCompletedSuccessfully && Connected.Result.IsConnected;

    /// <summary>A key of ours.</summary>
    /// <param name="name">Its name.</param>
    public RedisKey Key(string name) => $"{_prefix}:{name}";

    /// <summary>Reads the password of the Redis server.</summary>
    /// <param name="folder">The data folder.</param>
    /// <param name="settings">What it is for.</param>
    /// <exception cref="PlainException">The file is open to others, or the password would go over an open line.</exception>
    public static Secret? Password(DataFolder folder, RelaySettings settings)
    {
        var password = SecretFile.Find(Environment.GetEnvironmentVariable("COMPANION_REDIS_PASSWORD"), folder.RedisPassword);
        var options = settings.Options();
        if (password is not null && !options.Ssl && !options.EndPoints.All(IsLoopback))
            throw new PlainException("The password of relay.redis goes over TLS only: add ',ssl=true' to its address, or take the password away.");
        return password;
    }

    /// <inheritdoc/>
    public override void Dispose()
    {
        if (Connected.IsCompletedSuccessfully)
            Connected.Result.Dispose();
        base.Dispose();
    }

    /// <inheritdoc/>
    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        var redis = await ConnectionMultiplexer.ConnectAsync(_options);
        redis.ConnectionFailed += (_, lost) => Lost(lost.ConnectionType, lost.FailureType);
        redis.ConnectionRestored += (_, back) => Back(back.ConnectionType);
        try
        {
            for (var step = 1; !redis.IsConnected; step++)
            {
                await Task.Delay(Step, _clock, stoppingToken);
                if (step == StepsToReport)
                    NotReached();
            }
        }
        catch (OperationCanceledException)
        {
            await redis.DisposeAsync();
            throw;
        }

        _connected.SetResult(redis);
    }

    private static bool IsLoopback(System.Net.EndPoint at) => at switch
    {
        System.Net.DnsEndPoint named => named.Host == "localhost",
        System.Net.IPEndPoint numbered => System.Net.IPAddress.IsLoopback(numbered.Address),
        _ => false,
    };

    [LoggerMessage(LogLevel.Warning, "The Redis server cannot be reached or refuses the password: look at relay.redis. It is tried again; the session goes on.")]
    private partial void NotReached();

    [LoggerMessage(LogLevel.Warning, "The Redis server is away ({Connection}, {Failure}); the session goes on.")]
    private partial void Lost(ConnectionType connection, ConnectionFailureType failure);

    [LoggerMessage(LogLevel.Information, "The Redis server is back ({Connection}).")]
    private partial void Back(ConnectionType connection);
}
