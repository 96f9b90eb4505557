using Companion.Engine.Proofs;

namespace Companion.Engine.Planning;

/// <summary>A pattern that would be there but for one candidate.</summary>
/// <param name="InTheWay">The candidate, which is false.</param>
/// <param name="Deduction">What would be open if it were gone.</param>
public sealed record NearMiss(Candidate InTheWay, Deduction Deduction);
