using Companion.Engine.Proofs;

namespace Companion.Session.Asks.Steps;

/// <summary>A deduction that is open on the board that viewers see.</summary>
/// <param name="Deduction">The deduction.</param>
/// <param name="IsSeen">Whether it can be followed from the picture alone.</param>
internal sealed record OpenStep(Deduction Deduction, bool IsSeen);
