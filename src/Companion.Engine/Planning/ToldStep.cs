using Companion.Engine.Proofs;

namespace Companion.Engine.Planning;

/// <summary>A step as it is, or was, told.</summary>
/// <param name="Deduction">What is deduced.</param>
/// <param name="IsFeatured">Whether it is the turn of a featured rule, which has a passage of its own.</param>
public sealed record ToldStep(Deduction Deduction, bool IsFeatured);
