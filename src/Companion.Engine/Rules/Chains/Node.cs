namespace Companion.Engine.Rules.Chains;

/// <summary>
/// What a chain goes through: a digit in a cell, or in a group of cells that all see one another. True if one of the cells holds
/// the digit, false if none does.
/// </summary>
/// <param name="Digit">The digit.</param>
/// <param name="Cells">The cells; at least one.</param>
internal readonly record struct Node(Digit Digit, CellSet Cells)
{
    /// <summary>The cells that cannot hold the digit where the node is true.</summary>
    internal CellSet Seen => Cells.CommonPeers;
}
