using Companion.Engine.Proofs;
using Companion.Engine.Rules.Chains;

namespace Companion.Engine.Rules;

/// <summary>x</summary>
public sealed class CellForcingChain : IRule
{
    /// <inheritdoc/>
    public RuleId Id { get; } = new("cell-forcing-chain");

    /// <inheritdoc/>
    public void Find(Board board, Findings found) => Forcing.Chains(board).Find(Id, board, fromHouses: false, found);
}
