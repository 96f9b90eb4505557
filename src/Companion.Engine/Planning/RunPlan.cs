using System.Collections.Immutable;
using Companion.Engine.Proofs;
using Companion.Engine.Rules;

namespace Companion.Engine.Planning;

/// <summary>
/// A route from a board to the full grid in the order in which a person would work, on which each featured rule has its turn where
/// it can, with no step that nothing rests on.
/// </summary>
/// <param name="Ladder">The rules.</param>
/// <param name="Start">Where it starts.</param>
/// <param name="Steps">The steps in order.</param>
/// <param name="End">The board after the last step: full where the ladder solves the puzzle.</param>
/// <param name="Turns">For each featured rule, in the order asked, where its turns are.</param>
public sealed record RunPlan(
    Ladder Ladder, Board Start, ImmutableArray<PlannedStep> Steps, Board End, ImmutableArray<FeaturedTurn> Turns)
{
    /// <summary>Whether it leads to the full grid.</summary>
    public bool IsComplete => End.IsFull;

    /// <summary>The rungs that are needed, each once, hardest first.</summary>
    public ImmutableArray<Rung> Rungs => [.. Steps.Select(step => step.Rung).Distinct().OrderByDescending(rung => rung.Place)];

    /// <summary>What all steps cost together.</summary>
    public int Cost => Steps.Sum(step => step.Rung.Cost);

    /// <summary>Plans a route.</summary>
    /// <param name="start">Where to start; it has a solution.</param>
    /// <param name="ladder">The rules, the featured ones among them.</param>
    /// <param name="features">What it is to show.</param>
    /// <param name="last">What was deduced just before, so that it goes on near it; null at the start of a puzzle.</param>
    /// <param name="cancel">Stops it.</param>
    /// <exception cref="ArgumentException">A featured rule is not on the ladder.</exception>
    /// <exception cref="OperationCanceledException"><paramref name="cancel"/> was signalled.</exception>
    public static RunPlan From(
        Board start, Ladder ladder, IEnumerable<Feature> features, Deduction? last = null, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(start);
        ArgumentNullException.ThrowIfNull(ladder);
        ArgumentNullException.ThrowIfNull(features);
        var featured = features.ToList();
        if (featured.Find(feature => !ladder.Has(feature.Rule)) is { } unknown)
            throw new ArgumentException($"No rule of the ladder is called '{unknown.Rule}'.", nameof(features));
        return new Planner(start, ladder, featured, last, cancel).Plan();
    }
}
