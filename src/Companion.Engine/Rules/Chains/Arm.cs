namespace Companion.Engine.Rules.Chains;

/// <summary>A choice, some of whose candidates lie where only one can be true: in one cell, or of one digit in one house.</summary>
/// <param name="Choice">The choice.</param>
/// <param name="Shared">Its candidates that lie there; at least one, and not all.</param>
internal readonly record struct Arm(Choice Choice, CandidateSet Shared)
{
    /// <summary>Its other candidates.</summary>
    internal CandidateSet Starts => Choice.Candidates - Shared;

    /// <summary>The candidates that lie there as one node.</summary>
    internal Node SharedNode => new(Shared.Digits.First, Shared.Cells);
}
