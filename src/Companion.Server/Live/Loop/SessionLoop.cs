using System.Threading.Channels;
using Companion.Server.Access;
using Companion.Server.Chat;
using Companion.Server.Log;
using Companion.Server.Settings;
using Companion.Server.Wire;
using Companion.Session;
using Companion.Session.Commands;
using Companion.Session.Planning;
using Companion.Session.Scanning;
using Companion.Session.State;

namespace Companion.Server.Live.Loop;

/// <summary>
/// The session, with one writer: every request is decided, kept and shown before the next one is looked at. Nothing that is slow
/// or that can hang is waited for here but the disk.
/// </summary>
internal sealed partial class SessionLoop(
    IEventLog log, FanOut outputs, LateWorks late, TimeProvider clock, ILogger<SessionLoop> faults)
    : BackgroundService, IChatStatusOutput, IAsyncDisposable
{
    // More than any number of hands can ask for at once; beyond it callers wait.
    private readonly Channel<Action> _turns = Channel.CreateBounded<Action>(new BoundedChannelOptions(256) { SingleReader = true });

    private volatile Snapshot _current = new(SessionState.Initial, null);

    /// <summary>The session now.</summary>
    public Snapshot Current => _current;

    /// <summary>Has something done, if the one who asks may and it can be.</summary>
    /// <param name="who">Whose key it came with.</param>
    /// <param name="read">
    /// Makes the command, given the session at its turn. Throws a <see cref="FormatException"/> with one plain sentence where what
    /// was sent names none.
    /// </param>
    public Task<Reply> Ask(AccessRole who, Func<Snapshot, Command> read) => AskAll(who, now => [read(now)]);

    /// <summary>Has several things done, one after the other and with nothing in between; one that is refused stops no other.</summary>
    /// <param name="who">Whose key they came with.</param>
    /// <param name="read">As for one; it may come to none.</param>
    /// <returns>The first refusal, or none.</returns>
    public async Task<Reply> AskAll(AccessRole who, Func<Snapshot, IReadOnlyList<Command>> read)
    {
        var answer = new TaskCompletionSource<Reply>(TaskCreationOptions.RunContinuationsAsynchronously);
        await _turns.Writer.WriteAsync(() => answer.SetResult(Answer(who, read)));
        return await answer.Task;
    }

    /// <summary>
    /// Shows one who comes late the session as it is. What changes while that is being sent is sent as well, so that the last thing
    /// that arrives is the newest.
    /// </summary>
    /// <param name="show">Sends a snapshot.</param>
    public async Task Greet(Func<Snapshot, Task> show)
    {
        Snapshot shown;
        do
        {
            shown = Current;
            await show(shown);
        }
        while (shown != Current);
    }

    /// <inheritdoc/>
    public ValueTask Show(ChatStatus status) => _turns.Writer.WriteAsync(() => Show(_current with { Chat = status }));

    /// <inheritdoc/>
    public override Task StartAsync(CancellationToken cancellationToken)
    {
        var replayed = log.Restore();
        Show(new Snapshot(replayed, null) { ScanOf = replayed.Sequence });
        Replayed(_current.State.Sequence);
        if (log.Warning is { } lost)
            Salvaged(lost);
        late.Begin(_current.State);
        if (_current.State.Sequence == 0)
            Do(Demo.Load());
        return base.StartAsync(cancellationToken);
    }

    /// <summary>Ends the turn that is being taken, so that the log is not closed under it: proofs come on their own, at any time.</summary>
    public async ValueTask DisposeAsync()
    {
        Dispose();
        await (ExecuteTask ?? Task.CompletedTask).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
    }

    /// <inheritdoc/>
    protected override Task ExecuteAsync(CancellationToken stoppingToken) => Task.WhenAll(
        TakeTurns(stoppingToken),
        InTurn(late.Scans, Take, stoppingToken),
        InTurn(late.Outlooks, found => Show(_current with { Outlook = found }), stoppingToken),
        InTurn(late.Proofs, Keep, stoppingToken),
        InTurn(late.Plans, found => Show(_current with { Ahead = found }), stoppingToken));

    private Task InTurn<T>(LateWork<T> work, Action<T> take, CancellationToken stop) =>
        work.Run(found => _turns.Writer.WriteAsync(() => take(found), stop), stop);

    private async Task TakeTurns(CancellationToken stop)
    {
        await foreach (var turn in _turns.Reader.ReadAllAsync(stop))
            turn();
    }

    private Reply Answer(AccessRole who, Func<Snapshot, IReadOnlyList<Command>> read)
    {
        try
        {
            string? refusal = null;
            foreach (var command in read(_current))
            {
                var reason = Permission.Refusal(who, command, _current.State) ?? Do(command).Refusal;
                refusal ??= reason;
            }

            return new(refusal, _current.State.Sequence);
        }
        catch (FormatException unreadable)
        {
            return Refuse(unreadable.Message);
        }
        catch (Exception bug)
        {
            CommandFailed(bug);
            return Refuse("The companion failed at this and nothing was changed: its log file says more.");
        }
    }

    private Reply Do(Command command)
    {
        var state = _current.State;
        var now = clock.GetUtcNow();
        var decision = Decider.Decide(state, command, now);
        if (decision.Refusal is { } refusal)
            return Refuse(refusal);
        if (decision.Events.IsEmpty)
            return new(null, state.Sequence);

        SessionState next;
        try
        {
            // Evolved before it is kept: an event that cannot be evolved must not stand in the log.
            (var events, next, var notes) = KeptNotes.With(state, decision.Events, log, now);
            log.Append(state.Sequence, events, notes);
        }
        catch (IOException failure)
        {
            DiskFailed(failure);
            return Refuse("This could not be written to the disk and was not done: free some space, then do it again.");
        }

        var holds = Scan.HoldsFor(state, next);
        Show(_current with { State = next, ScanOf = holds ? _current.ScanOf : next.Sequence });
        if (!holds)
            late.Begin(next);
        else if (!WayAhead.HoldsFor(state, next))
            late.LookAhead(next);

        return new(null, next.Sequence);
    }

    private void Take(ScanResult scan)
    {
        Show(_current with { Scan = scan });
        if (!scan.GoesOn && scan.Entries == _current.State.Entries)
            late.GoOn(_current.State);
    }

    private void Keep(AttributeEntry found)
    {
        try
        {
            Do(found);
        }
        catch (Exception bug)
        {
            CommandFailed(bug);
        }
    }

    private void Show(Snapshot snapshot)
    {
        _current = snapshot;
        outputs.Show(snapshot);
    }

    private Reply Refuse(string reason) => new(reason, _current.State.Sequence);

    [LoggerMessage(LogLevel.Information, "The session goes on after event {Sequence}.")]
    private partial void Replayed(long sequence);

    [LoggerMessage(LogLevel.Warning, "{Lost}")]
    private partial void Salvaged(string lost);

    [LoggerMessage(LogLevel.Error, "A command failed; nothing was changed.")]
    private partial void CommandFailed(Exception bug);

    [LoggerMessage(LogLevel.Error, "The event log could not be written; the entry was refused.")]
    private partial void DiskFailed(Exception failure);
}
