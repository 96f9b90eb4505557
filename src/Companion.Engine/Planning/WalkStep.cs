using Companion.Engine.Proofs;
using Companion.Engine.Rules;

namespace Companion.Engine.Planning;

/// <summary>One step of a walk.</summary>
/// <param name="Board">The board before it.</param>
/// <param name="Rung">The rung of its rule.</param>
/// <param name="Deduction">What is deduced.</param>
internal sealed record WalkStep(Board Board, Rung Rung, Deduction Deduction);
