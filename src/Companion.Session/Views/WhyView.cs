using System.Collections.Immutable;
using Companion.Engine;

namespace Companion.Session.Views;

/// <summary>The answer to why a digit is, or cannot be, in a cell. For the presenter alone: it may tell the solution.</summary>
/// <param name="Cell">The cell that was asked about.</param>
/// <param name="Digit">The digit that was asked about.</param>
/// <param name="Text">The reason as it can be spoken.</param>
/// <param name="Steps">The steps of its proof in order; none where it needs none or has none.</param>
public sealed record WhyView(Cell Cell, Digit Digit, string Text, ImmutableArray<ProofStep> Steps);
