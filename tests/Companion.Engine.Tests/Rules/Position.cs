namespace Companion.Engine.Tests.Rules;

/// <summary>A board on the way through a puzzle, with the puzzle's solution.</summary>
internal sealed record Position(Board Board, Solution Solution);
