using Companion.Session.Commands;
using Companion.Session.Proving;
using Companion.Session.State;

namespace Companion.Server.Live.Loop;

/// <summary>Proves the entries that are not attributed yet, the oldest first.</summary>
/// <param name="prover">The prover.</param>
internal sealed class ProofWorker(Prover prover) : IWorker<AttributeEntry>
{
    /// <inheritdoc/>
    public IEnumerable<AttributeEntry> WorkOut(SessionState state, CancellationToken cancel) =>
        Due.Of(state).Select(claim => new AttributeEntry(claim.Step.Number, prover.Prove(state, claim, cancel)));
}
