using System.Threading.Channels;
using Companion.Server.Live.Asks;
using Companion.Server.Live.Loop;
using Companion.Server.Settings;
using Companion.Session.Audience;
using Companion.Session.State;

namespace Companion.Server.Live.Audience;

/// <summary>
/// Publishes the board of this program's session as viewers may see it: each view when its time has come. Works beside the session's
/// loop, which it never holds up.
/// </summary>
internal sealed class DelayedBoards : BackgroundService, IOutput, IAudienceBoards
{
    private readonly Channel<(SessionState? Shown, DateTimeOffset At)> _turns =
        Channel.CreateUnbounded<(SessionState?, DateTimeOffset)>(new() { SingleReader = true });

    private readonly IAudienceOutput[] _outputs;
    private readonly AudienceFeed _feed;
    private readonly SteadyClock _clock;
    private volatile AudienceView _current;
    private SessionState? _shown;

    /// <summary>Makes it; nothing is published before it is started.</summary>
    /// <param name="settings">The settings.</param>
    /// <param name="outputs">Who is told each view. They do not throw.</param>
    /// <param name="clock">The clock.</param>
    public DelayedBoards(ServerSettings settings, IEnumerable<IAudienceOutput> outputs, TimeProvider clock)
    {
        (_outputs, _clock) = ([.. outputs], new(clock));
        _feed = new(settings.Asks, settings.Audience.Door);
        _current = _feed.At(_clock.Now);
    }

    /// <inheritdoc/>
    public AudienceView Current => _current;

    /// <inheritdoc/>
    public void Show(Snapshot snapshot)
    {
        // A finished scan changes nothing that viewers see.
        if (snapshot.State == (object?)_shown)
            return;
        _shown = snapshot.State;
        _turns.Writer.TryWrite((snapshot.State, _clock.Now));
    }

    /// <inheritdoc/>
    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        await using var alarm = _clock.Alarm(() => _turns.Writer.TryWrite((null, default)));
        while (await _turns.Reader.WaitToReadAsync(stoppingToken))
        {
            while (_turns.Reader.TryRead(out var turn))
            {
                if (turn.Shown is { } state)
                    _feed.Show(state, turn.At);
            }

            var now = _clock.Now;
            Publish(_feed.At(now));
            _clock.Set(alarm, _feed.ChangesAt(now));
        }
    }

    private void Publish(AudienceView view)
    {
        if (view == (object)_current)
            return;
        _current = view;
        foreach (var output in _outputs)
            output.Show(view);
    }
}
