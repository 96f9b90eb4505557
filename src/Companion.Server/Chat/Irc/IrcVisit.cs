using System.Threading.Channels;
using Companion.Server.Chat.Irc.Lines;

namespace Companion.Server.Chat.Irc;

/// <summary>One connection from its first line to its last: what comes is taken at once, and what is to be said goes at its pace.</summary>
/// <param name="dialog">What to do.</param>
/// <param name="connection">Where to do it.</param>
/// <param name="channel">The channel.</param>
/// <param name="clock">The clock.</param>
internal sealed class IrcVisit(IrcDialog dialog, IrcConnection connection, string channel, TimeProvider clock)
{
    /// <summary>Takes what comes until the visit is over.</summary>
    /// <param name="told">Told of what is heard, and how we are doing.</param>
    /// <param name="stop">Stops it.</param>
    /// <returns>Why it is over.</returns>
    public async Task<IrcStep.End> Listen(Func<IrcStep, ValueTask> told, CancellationToken stop)
    {
        foreach (var message in dialog.Begin())
            await connection.Send(message, stop);
        var next = connection.Lines.Next(stop);
        while (true)
        {
            IReadOnlyList<IrcStep> steps;
            try
            {
                if (await next.WaitAsync(UntilDue(), clock, stop) is not { } line)
                    return new(Reasons.Closed, false);
                next = connection.Lines.Next(stop);
                steps = dialog.Take(line);
            }
            catch (TimeoutException)
            {
                steps = dialog.Wake();
            }

            foreach (var step in steps)
            {
                if (step is IrcStep.End end)
                    return end;
                await (step is IrcStep.Send send ? new(connection.Send(send.Message, stop)) : told(step));
            }
        }
    }

    /// <summary>Says what is to be said, and drops what comes while we are not in the channel: it would answer nothing any more.</summary>
    /// <param name="words">What is to be said.</param>
    /// <param name="pace">How fast.</param>
    /// <param name="stop">Stops it.</param>
    public async Task Speak(ChannelReader<string> words, Pace pace, CancellationToken stop)
    {
        await foreach (var text in words.ReadAllAsync(stop))
        {
            if (!dialog.Membership.IsIn)
                continue;
            foreach (var piece in TextPieces.Of(text, LineBudget.ForMessage(dialog.Membership.Self, channel)))
            {
                await Task.Delay(pace.Take(), clock, stop);
                await connection.Send(IrcMessage.Of("PRIVMSG", channel, piece), stop);
            }
        }
    }

    /// <summary>Says good-bye, if that can still be said.</summary>
    public async Task Leave()
    {
        using var soon = new CancellationTokenSource(TimeSpan.FromSeconds(1), clock);
        try
        {
            await connection.Send(IrcMessage.Of("QUIT"), soon.Token);
        }
        catch (Exception gone) when (gone is IOException or OperationCanceledException or ObjectDisposedException)
        {
            // There is nobody to say it to.
        }
    }

    private TimeSpan UntilDue() => dialog.DueAt - clock.GetUtcNow() is var wait && wait > TimeSpan.Zero ? wait : TimeSpan.Zero;
}
