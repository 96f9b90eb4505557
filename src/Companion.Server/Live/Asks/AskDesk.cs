using System.Security.Cryptography;
using System.Threading.Channels;
using Companion.Server.Live.Loop;
using Companion.Server.Settings;
using Companion.Session.Asks;
using Companion.Session.Asks.Answers;
using Companion.Session.Asks.Viewers;
using Companion.Session.State;
using Companion.Session.Views;

namespace Companion.Server.Live.Asks;

/// <summary>
/// Where viewers' asks come in, whichever way, and get their answers. Works beside the session's loop, which it never holds up: what
/// it has no room for is not answered.
/// </summary>
/// <remarks>Names and ids of viewers are kept in memory alone, and only while a question waits.</remarks>
internal sealed partial class AskDesk : BackgroundService, IOutput
{
    // Some seconds' work on a slow machine; a chat that brings more at once would not be answered in time anyway.
    private const int MostAtOnce = 256;

    private readonly Channel<Action> _turns = Channel.CreateUnbounded<Action>(new() { SingleReader = true });
    private readonly Dictionary<ViewerId, TaskCompletionSource<AskReply>> _waiting = [];
    private readonly Enquiries _enquiries;
    private readonly AskText _reader;
    private readonly AnswerWords _words;
    private readonly IViewersOutput _viewers;
    private readonly FoundNotes _found;
    private readonly SteadyClock _clock;
    private readonly ILogger<AskDesk> _log;
    private ShowSalt _salt = NewSalt();
    private SessionState? _shown;
    private int _atOnce;
    private volatile ViewersView _view;

    /// <summary>Makes the desk.</summary>
    /// <param name="enquiries">What decides on the answers; nobody else uses it.</param>
    /// <param name="settings">The settings.</param>
    /// <param name="voice">The words.</param>
    /// <param name="viewers">Shows the panels what comes of it.</param>
    /// <param name="found">Takes what is to be kept of calls.</param>
    /// <param name="clock">The clock.</param>
    /// <param name="log">Where failures are reported.</param>
    public AskDesk(
        Enquiries enquiries,
        ServerSettings settings,
        Voice voice,
        IViewersOutput viewers,
        FoundNotes found,
        TimeProvider clock,
        ILogger<AskDesk> log)
    {
        (_enquiries, _viewers, _found, _clock, _log, _view) = (enquiries, viewers, found, new(clock), log, enquiries.View);
        (_reader, _words) = (new(settings.Asks.Prefix), new(voice.Wording, settings.Asks.Prefix));
    }

    /// <summary>What the panels are shown of the viewers.</summary>
    public ViewersView View => _view;

    /// <summary>
    /// Takes a line that a viewer wrote. The answer comes when those who ask the same are gathered: whoever reads a chat goes on
    /// reading meanwhile.
    /// </summary>
    /// <param name="way">The way it came.</param>
    /// <param name="viewer">What the viewer is known by there; any text.</param>
    /// <param name="name">The name to call the viewer by; any text.</param>
    /// <param name="line">The line; any text.</param>
    public Task<AskReply> Ask(Way way, string viewer, string name, string line) =>
        _reader.Read(line) is { } ask ? Ask(way, viewer, name, ask) : Task.FromResult(AskReply.Nothing);

    /// <summary>Takes what a viewer asks on a page.</summary>
    /// <param name="way">The way it came.</param>
    /// <param name="viewer">What the viewer is known by there; any text.</param>
    /// <param name="name">The name to call the viewer by; any text.</param>
    /// <param name="ask">What is asked.</param>
    public Task<AskReply> Ask(Way way, string viewer, string name, Ask ask)
    {
        if (Interlocked.Increment(ref _atOnce) > MostAtOnce)
        {
            Interlocked.Decrement(ref _atOnce);
            return Task.FromResult(AskReply.Nothing);
        }

        var at = _clock.Now;
        var reply = new TaskCompletionSource<AskReply>(TaskCreationOptions.RunContinuationsAsynchronously);
        if (!_turns.Writer.TryWrite(() => Take(new(way, _salt.IdOf(way.Name, viewer), name, ask, at), reply)))
            reply.SetResult(AskReply.Nothing);
        return reply.Task;
    }

    /// <inheritdoc/>
    public void Show(Snapshot snapshot)
    {
        // A finished scan changes nothing that viewers see.
        if (snapshot.State == (object?)_shown)
            return;
        _shown = snapshot.State;
        var at = _clock.Now;
        _turns.Writer.TryWrite(() => Show(snapshot.State, at));
    }

    /// <inheritdoc/>
    public override async Task StopAsync(CancellationToken cancellationToken)
    {
        await base.StopAsync(cancellationToken);

        // Nobody who is still in the queue, or whose answer is not due yet, waits for ever.
        _turns.Writer.TryComplete();
        while (_turns.Reader.TryRead(out var turn))
            Guarded(turn);
        foreach (var reply in _waiting.Values)
            reply.TrySetResult(AskReply.Nothing);
    }

    /// <inheritdoc/>
    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        await using var alarm = _clock.Alarm(() => _turns.Writer.TryWrite(static () => { }));
        while (await _turns.Reader.WaitToReadAsync(stoppingToken))
        {
            while (_turns.Reader.TryRead(out var turn))
            {
                Guarded(turn);
                Guarded(GoOut);
                Guarded(Note);
            }

            Guarded(ShowViewers);
            _clock.Set(alarm, _enquiries.NextAt);
        }
    }

    private void Show(SessionState state, DateTimeOffset at)
    {
        var forgotten = _enquiries.TimesForgotten;
        _enquiries.Show(state, at);
        if (_enquiries.TimesForgotten != forgotten)
            _salt = NewSalt();
    }

    private void Take(Asked asked, TaskCompletionSource<AskReply> reply)
    {
        Interlocked.Decrement(ref _atOnce);
        try
        {
            if (_enquiries.Take(asked))
                _waiting[asked.Viewer] = reply;
            else
                reply.SetResult(AskReply.Nothing);
        }
        catch
        {
            reply.TrySetResult(AskReply.Nothing);
            throw;
        }
    }

    private void GoOut()
    {
        foreach (var answered in _enquiries.Due(_clock.Now))
        {
            var lines = _words.LinesOf(answered);
            foreach (var viewer in answered.Viewers)
            {
                if (_waiting.Remove(viewer, out var reply))
                    reply.SetResult(new(answered.Answer is Unanswered ? null : answered.Answer, lines));
                lines = [];
            }
        }
    }

    private void Note()
    {
        if (_enquiries.FoundFirst(_clock.Now) is { } note)
            _found.Add(note);
    }

    private void ShowViewers()
    {
        var view = _enquiries.View;
        if (view != _view)
            _viewers.Show(_view = view);
    }

    private void Guarded(Action turn)
    {
        try
        {
            turn();
        }
        catch (Exception failure)
        {
            AskFailed(failure);
        }
    }

    private static ShowSalt NewSalt() => new(RandomNumberGenerator.GetBytes(ShowSalt.Length));

    [LoggerMessage(LogLevel.Error, "An ask failed; the session goes on.")]
    private partial void AskFailed(Exception failure);
}
