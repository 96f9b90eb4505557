using System.Collections.Immutable;
using Companion.Engine;
using Companion.Engine.Planning;
using Companion.Engine.Proofs;
using Companion.Engine.Rules;
using Companion.Server.Access;
using Companion.Server.Planning;
using Companion.Server.Wire;
using Companion.Session.Views;

namespace Companion.Server.Live.Desk;

/// <summary>Vets a grid for the presenter before it is loaded, by the ladder as it is cut now.</summary>
internal sealed class Vetter(LateAnswers answers, Ladder ladder, Voice voice)
{
    /// <summary>Takes a grid.</summary>
    /// <param name="who">Whose key it came with.</param>
    /// <param name="connection">Where the answer goes.</param>
    /// <param name="read">
    /// Makes the grid as it was typed, and the rules of which to say whether they are needed, of what was sent. Throws a
    /// <see cref="FormatException"/> with one plain sentence where a rule is none of the ladder.
    /// </param>
    /// <param name="gone">Signalled when nobody waits for the answer any more.</param>
    public Reply Ask(
        AccessRole who, string connection, Func<(string Grid, ImmutableArray<RuleId> Featured)> read, CancellationToken gone) =>
        answers.Ask(who, connection, now =>
        {
            var (grid, featured) = read();
            var cut = now.State.LadderCut.Of(ladder, hasOneSolution: true);
            if (featured.Where(rule => !cut.Has(rule)).Select(rule => voice.Wording.NameOf(rule)).FirstOrDefault() is { } missing)
                throw new FormatException($"The ladder is cut so that no {missing} is looked for: look for it again, or feature another rule.");
            var vetting = Vetting.Of(BoardText.Read(grid), cut, featured, Environment.ProcessorCount, gone);
            return page => page.Vetted(new(grid, VetResult.Of(vetting, voice.Wording)));
        });
}
