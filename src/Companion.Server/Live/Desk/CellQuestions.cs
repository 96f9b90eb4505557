using Companion.Engine;
using Companion.Server.Access;
using Companion.Server.Live.Loop;
using Companion.Server.Wire;
using Companion.Session.Proving;
using Companion.Session.Views;
using Microsoft.AspNetCore.SignalR;

namespace Companion.Server.Live.Desk;

/// <summary>
/// Answers the presenter why a digit is, or cannot be, in a cell. A proof may take a while and must not hold up the entries that
/// come over the same connection: the answer is pushed when it is there.
/// </summary>
internal sealed partial class CellQuestions(
    SessionLoop session, Prover prover, Voice voice, IHubContext<DeskHub, IDeskClient> hub, ILogger<CellQuestions> log)
{
    private int _isBusy;

    /// <summary>Takes a question.</summary>
    /// <param name="who">Whose key it came with. The answer may tell the solution, and is for the presenter alone.</param>
    /// <param name="connection">Where the answer goes.</param>
    /// <param name="read">
    /// Makes the digit and the cell of what was sent. Throws a <see cref="FormatException"/> with one plain sentence where it is none.
    /// </param>
    /// <param name="gone">Signalled when nobody waits for the answer any more.</param>
    public Reply Ask(AccessRole who, string connection, Func<Candidate> read, CancellationToken gone)
    {
        var snapshot = session.Current;
        return new(WhyNot(), snapshot.State.Sequence);

        string? WhyNot()
        {
            if (who != AccessRole.Presenter)
                return "Only the presenter may do this: ask the presenter.";
            try
            {
                var asked = read();
                if (Interlocked.Exchange(ref _isBusy, 1) == 1)
                    return "The question before is still being answered: ask again in a moment.";
                _ = Task.Run(() => Answer(connection, snapshot, asked, gone), CancellationToken.None);
                return null;
            }
            catch (FormatException unreadable)
            {
                return unreadable.Message;
            }
        }
    }

    private async Task Answer(string connection, Snapshot snapshot, Candidate asked, CancellationToken gone)
    {
        try
        {
            await hub.Clients.Client(connection).Why(prover.Answer(snapshot.State, asked, voice, gone));
        }
        catch (OperationCanceledException)
        {
            // The page was closed.
        }
        catch (Exception failure)
        {
            AnswerFailed(asked, failure);
        }
        finally
        {
            Volatile.Write(ref _isBusy, 0);
        }
    }

    [LoggerMessage(LogLevel.Error, "The question about {Asked} could not be answered; the session goes on.")]
    private partial void AnswerFailed(Candidate asked, Exception failure);
}
