using System.Collections.Immutable;
using Companion.Engine.Proofs;
using Companion.Session.Proving;
using Companion.Session.State;

namespace Companion.Session.Views;

/// <summary>How the last entry that says something new follows, for the presenter and the co-hosts.</summary>
/// <param name="Entry">The entry in a few words, as beside undo.</param>
/// <param name="Kind">How far its proof is.</param>
/// <param name="Text">How it follows, in one short sentence that goes on from the entry's words.</param>
/// <param name="Steps">The steps of the proof in order; none where there is no proof.</param>
public sealed record EntryProof(string Entry, ProofKind Kind, string Text, ImmutableArray<ProofStep> Steps)
{
    // An entry further back is not worth a look at any more.
    private const int Recent = 30;

    /// <summary>The proof of the last entry of a state that says something new; null where there is none of late.</summary>
    internal static EntryProof? Of(SessionState state, Voice voice)
    {
        var claim = Claim.Of(state, Recent).FirstOrDefault();
        if (claim?.Step.Grid.Loading != state.Grid.Loading)
            return null;
        if (claim.IsWrong)
            return new(claim.Step.Label, ProofKind.Wrong, "disagrees with the only solution, so that nothing proves it: undo it or take it out", []);
        if (claim.Before is not { } board)
            return new(claim.Step.Label, ProofKind.Unsound, "is not proved: the board before it disagrees with the only solution", []);
        return state.Attributions.LastOrDefault(attributed => attributed.Entry == claim.Step.Number) is { } found
            ? new(
                claim.Step.Label,
                found.Attribution is Attribution.Proved ? ProofKind.Proved : ProofKind.NotProved,
                voice.Wording.How(found.Attribution).Written,
                ProofStep.Of(board, found.Attribution, voice))
            : new(claim.Step.Label, ProofKind.Pending, "is being looked into", []);
    }
}
