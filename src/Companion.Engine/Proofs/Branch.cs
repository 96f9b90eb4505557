using System.Collections.Immutable;

namespace Companion.Engine.Proofs;

/// <summary>What follows where a candidate is supposed to be true, step by step.</summary>
/// <param name="Supposed">The candidate.</param>
/// <param name="Steps">
/// The deductions, in an order in which each holds on the board after those before it. Their cells, digits and conclusions are those
/// of the supposed board.
/// </param>
/// <param name="End">What cannot be after them.</param>
public sealed record Branch(Candidate Supposed, ImmutableArray<Deduction> Steps, DeadEnd End);
