using Companion.Server.Access;
using Companion.Server.Live.Loop;
using Companion.Server.Wire;
using Microsoft.AspNetCore.SignalR;

namespace Companion.Server.Live.Desk;

/// <summary>
/// Answers questions of one kind, one at a time. Working out an answer may take a while and must not hold up the entries that come
/// over the same connection: the answer is pushed when it is there. It may tell the solution, and is for the presenter alone.
/// </summary>
internal sealed partial class LateAnswers(SessionLoop session, IHubContext<DeskHub, IDeskClient> hub, ILogger<LateAnswers> log)
{
    private int _isBusy;

    /// <summary>Takes a question.</summary>
    /// <param name="who">Whose key it came with.</param>
    /// <param name="connection">Where the answer goes.</param>
    /// <param name="read">
    /// Makes what works the answer out and sends it, given the session now. Throws a <see cref="FormatException"/> with one plain
    /// sentence where what was sent is no question.
    /// </param>
    public Reply Ask(AccessRole who, string connection, Func<Snapshot, Func<IDeskClient, Task>> read)
    {
        var snapshot = session.Current;
        return new(WhyNot(), snapshot.State.Sequence);

        string? WhyNot()
        {
            if (who != AccessRole.Presenter)
                return Permission.OnlyThePresenter;
            try
            {
                var answer = read(snapshot);
                if (Interlocked.Exchange(ref _isBusy, 1) == 1)
                    return "The question before is still being answered: ask again in a moment.";
                _ = Task.Run(() => Answer(connection, answer), CancellationToken.None);
                return null;
            }
            catch (FormatException unreadable)
            {
                return unreadable.Message;
            }
        }
    }

    private async Task Answer(string connection, Func<IDeskClient, Task> answer)
    {
        try
        {
            await answer(hub.Clients.Client(connection));
        }
        catch (OperationCanceledException)
        {
            // The page was closed.
        }
        catch (Exception failure)
        {
            AnswerFailed(failure);
        }
        finally
        {
            Volatile.Write(ref _isBusy, 0);
        }
    }

    [LoggerMessage(LogLevel.Error, "A question could not be answered; the session goes on.")]
    private partial void AnswerFailed(Exception failure);
}
