namespace Companion.Engine.Planning;

/// <summary>A puzzle of our own.</summary>
/// <param name="Seed">The seed that makes it again with the same order.</param>
/// <param name="Puzzle">The puzzle.</param>
/// <param name="Route">The way through it.</param>
public sealed record MadePuzzle(ulong Seed, Puzzle Puzzle, Route Route);
