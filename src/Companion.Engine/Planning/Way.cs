using System.Collections.Immutable;
using Companion.Engine.Proofs;

namespace Companion.Engine.Planning;

/// <summary>A board that some steps lead to.</summary>
/// <param name="Board">The board.</param>
/// <param name="Step">The last step; null where there was none.</param>
/// <param name="Before">The way before it; null where there was none.</param>
internal sealed record Way(Board Board, Deduction? Step, Way? Before)
{
    /// <summary>The steps, in order.</summary>
    internal ImmutableArray<Deduction> Steps => Step is null ? [] : [.. Before!.Steps, Step];
}
