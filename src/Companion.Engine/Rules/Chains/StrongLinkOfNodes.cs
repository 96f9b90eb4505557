namespace Companion.Engine.Rules.Chains;

/// <summary>A strong link of a graph.</summary>
/// <param name="One">A node.</param>
/// <param name="Other">The node that is true where the first is false, and the other way round.</param>
/// <param name="Cells">The number of cells that it takes.</param>
/// <param name="Set">The almost locked set that it rests on, cells with two candidates too; the default for places of a digit.</param>
internal readonly record struct StrongLinkOfNodes(int One, int Other, int Cells, LockedSet Set);
