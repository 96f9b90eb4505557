namespace Companion.Server.Access;

/// <summary>Lets a running server take over keys that <c>companion keys renew</c> replaced.</summary>
/// <param name="keys">The keys.</param>
/// <param name="clock">The clock.</param>
/// <param name="log">Where a damaged file is reported.</param>
internal sealed partial class KeyWatch(KeyRing keys, TimeProvider clock, ILogger<KeyWatch> log) : BackgroundService
{
    /// <summary>How long a replaced key can still open something.</summary>
    public static readonly TimeSpan Period = TimeSpan.FromSeconds(2);

    /// <inheritdoc/>
    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        using var timer = new PeriodicTimer(Period, clock);
        while (await timer.WaitForNextTickAsync(stoppingToken))
        {
            try
            {
                keys.Refresh();
            }
            catch (Exception damage) when (damage is PlainException or IOException or UnauthorizedAccessException)
            {
                KeysKept(damage);
            }
        }
    }

    [LoggerMessage(LogLevel.Warning, "The keys file cannot be read; the keys stay as they were.")]
    private partial void KeysKept(Exception damage);
}
