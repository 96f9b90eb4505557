using Companion.Engine.Proofs;

namespace Companion.Session.Views;

/// <summary>A deduction that stands by or is on air, as the presenter sees it: with all that belongs to it.</summary>
/// <param name="Deduction">The deduction.</param>
/// <param name="Grade">The grade that is on air, or, standing by, the one that comes next.</param>
/// <param name="Hints">The four grades in order, with their words.</param>
public sealed record CueView(OpenDeduction Deduction, Grade Grade, HintTexts Hints);
