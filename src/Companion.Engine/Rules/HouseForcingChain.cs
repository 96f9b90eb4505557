using Companion.Engine.Proofs;
using Companion.Engine.Rules.Chains;

namespace Companion.Engine.Rules;

/// <summary>x</summary>
public sealed class HouseForcingChain : IRule
{
    /// <inheritdoc/>
    public RuleId Id { get; } = new("house-forcing-chain");

    /// <inheritdoc/>
    public void Find(Board board, Findings found) => Forcing.Chains(board).Find(Id, board, fromHouses: true, found);
}
