namespace Companion.Engine.Proofs;

/// <summary>A link between two candidates of a pattern, as a picture draws it.</summary>
/// <param name="From">One end.</param>
/// <param name="To">The other end.</param>
/// <param name="IsStrong">Strong: if one is false the other is true. Otherwise weak: not both are true.</param>
public readonly record struct Link(Candidate From, Candidate To, bool IsStrong);
