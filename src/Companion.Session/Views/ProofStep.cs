using System.Collections.Immutable;
using Companion.Engine;
using Companion.Engine.Proofs;

namespace Companion.Session.Views;

/// <summary>One step of a proof in words.</summary>
/// <param name="Name">The rule's spoken name.</param>
/// <param name="Short">The deduction in short written form.</param>
/// <param name="Sentence">The full sentence as it can be spoken.</param>
public sealed record ProofStep(string Name, string Short, string Sentence)
{
    /// <summary>The steps of a proof in words; none where there is no proof.</summary>
    internal static ImmutableArray<ProofStep> Of(Board board, Attribution attribution, Voice voice) =>
        attribution is Attribution.Proved proved
            ? [.. voice.Wording.Steps(board, proved.Steps).Select(step => new ProofStep(
                voice.Wording.NameOf(step.Deduction.Rule), step.Words.Written, step.Words.Spoken))]
            : [];
}
