using System.Net.Sockets;
using System.Security.Authentication;

namespace Companion.Server.Chat.Irc;

/// <summary>
/// The chat over IRC. It connects, and connects again after every loss, until a person is needed; whatever happens to it is caught
/// here, and the session goes on.
/// </summary>
internal sealed partial class IrcChat(
    ChatSettings settings,
    ChatSecrets secrets,
    ChatIntake intake,
    IChatStatusOutput panel,
    Backoff backoff,
    TimeProvider clock,
    ILogger<IrcChat> log) : BackgroundService, IChat
{
    // More lines than can be answered while anybody still waits for the answer. As many again wait when their answers take long;
    // beyond them the newest are dropped.
    private const int MostHeard = 256;

    // At two seconds a line the last of these goes out after a minute.
    private const int MostToSay = 32;

    private readonly IrcSettings _irc = settings.Irc;
    private readonly Dropping<ChatLine> _heard = new(MostHeard);
    private readonly SemaphoreSlim _answering = new(MostHeard);
    private readonly Dropping<string> _toSay = new(MostToSay);

    /// <inheritdoc/>
    public void Say(string text) => _toSay.Give(text);

    /// <inheritdoc/>
    public override void Dispose()
    {
        _answering.Dispose();
        base.Dispose();
    }

    /// <inheritdoc/>
    protected override Task ExecuteAsync(CancellationToken stoppingToken) =>
        _irc.IsOn ? Task.WhenAll(Stay(stoppingToken), Hear(stoppingToken)) : Task.CompletedTask;

    private async Task Stay(CancellationToken stop)
    {
        var pace = new Pace(TimeSpan.FromSeconds(_irc.SecondsPerMessage), _irc.Burst, clock);
        await Tell(ChatPhase.Connecting, $"The chat is connecting to {_irc.Server}.");
        while (true)
        {
            var dialog = new IrcDialog(_irc, secrets.Password, clock);
            var end = await Guarded(dialog, pace, stop);
            Ended(end.Reason);
            if (end.IsFinal)
            {
                await Tell(ChatPhase.Stopped, $"The chat has stopped. {end.Reason}");
                return;
            }

            var wait = backoff.Next(dialog.SignedInAt is { } since ? clock.GetUtcNow() - since : TimeSpan.Zero);
            await Tell(ChatPhase.Connecting, $"The chat is away and tries again. {end.Reason}");
            await Task.Delay(wait, clock, stop);
        }
    }

    private async Task<IrcStep.End> Guarded(IrcDialog dialog, Pace pace, CancellationToken stop)
    {
        try
        {
            return await Visit(dialog, pace, stop);
        }
        catch (OperationCanceledException) when (stop.IsCancellationRequested)
        {
            throw;
        }
        catch (AuthenticationException)
        {
            return new(Reasons.BadCertificate, false);
        }
        catch (Exception lost) when (lost is SocketException or IOException or OperationCanceledException)
        {
            return new(dialog.SignedInAt is null ? Reasons.Unreachable : Reasons.Closed, false);
        }
        catch (Exception bug)
        {
            Failed(bug);
            return new(Reasons.Closed, false);
        }
    }

    private async Task<IrcStep.End> Visit(IrcDialog dialog, Pace pace, CancellationToken stop)
    {
        await using var connection = await IrcConnection.Open(_irc, clock, stop);
        using var over = CancellationTokenSource.CreateLinkedTokenSource(stop);
        var visit = new IrcVisit(dialog, connection, _irc.Channel, clock);
        var listening = visit.Listen(Take, over.Token);
        var speaking = visit.Speak(_toSay.Reader, pace, over.Token);
        try
        {
            await await Task.WhenAny(listening, speaking);
            return await listening;
        }
        finally
        {
            await visit.Leave();
            await over.CancelAsync();
            await Task.WhenAll(listening, speaking).ContinueWith(
                _ => { }, CancellationToken.None, TaskContinuationOptions.ExecuteSynchronously, TaskScheduler.Default);
        }
    }

    private ValueTask Take(IrcStep step)
    {
        if (step is IrcStep.Hear heard)
            _heard.Give(heard.Line);
        return step is IrcStep.Tell tell ? panel.Show(tell.Status) : ValueTask.CompletedTask;
    }

    // An answer may take its time, as when those who ask the same are gathered: the lines after it are heard meanwhile.
    private async Task Hear(CancellationToken stop)
    {
        await foreach (var line in _heard.Reader.ReadAllAsync(stop))
        {
            await _answering.WaitAsync(stop);
            _ = Answer(line, stop);
            if (_heard.Reader.Count == 0 && (_heard.TakeDropped(), _toSay.TakeDropped()) is var (lines, answers) && lines + answers > 0)
                Dropped(lines, answers);
        }
    }

    private async Task Answer(ChatLine line, CancellationToken stop)
    {
        try
        {
            foreach (var answer in await intake.Hear(line, stop))
                Say(answer);
        }
        catch (OperationCanceledException)
        {
            // The program ends, and nobody waits for the answer.
        }
        finally
        {
            _answering.Release();
        }
    }

    private ValueTask Tell(ChatPhase phase, string text) => panel.Show(new(phase, text));

    [LoggerMessage(LogLevel.Information, "The chat's connection ended: {Reason}")]
    private partial void Ended(string reason);

    [LoggerMessage(LogLevel.Error, "The chat's connection failed; the session goes on.")]
    private partial void Failed(Exception bug);

    [LoggerMessage(LogLevel.Warning, "The chat was too fast: {Lines} of its lines and {Answers} of our answers were dropped.")]
    private partial void Dropped(long lines, long answers);
}
