using Companion.Engine;
using Companion.Server.Access;
using Companion.Server.Wire;
using Companion.Session.Proving;
using Companion.Session.Views;

namespace Companion.Server.Live.Desk;

/// <summary>Answers the presenter why a digit is, or cannot be, in a cell.</summary>
internal sealed class CellQuestions(LateAnswers answers, Prover prover, Voice voice)
{
    /// <summary>Takes a question.</summary>
    /// <param name="who">Whose key it came with.</param>
    /// <param name="connection">Where the answer goes.</param>
    /// <param name="read">
    /// Makes the digit and the cell of what was sent. Throws a <see cref="FormatException"/> with one plain sentence where it is none.
    /// </param>
    /// <param name="gone">Signalled when nobody waits for the answer any more.</param>
    public Reply Ask(AccessRole who, string connection, Func<Candidate> read, CancellationToken gone) =>
        answers.Ask(who, connection, now =>
        {
            var asked = read();
            return page => page.Why(prover.Answer(now.State, asked, voice, gone));
        });
}
