namespace Companion.Engine.Proofs;

/// <summary>A cell of a pattern with what it does there.</summary>
/// <param name="Cell">The cell.</param>
/// <param name="Role">What it does.</param>
public readonly record struct PatternCell(Cell Cell, Role Role);
