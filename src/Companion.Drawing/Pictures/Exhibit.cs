using System.Collections.Immutable;
using Companion.Engine;
using Companion.Engine.Proofs;

namespace Companion.Drawing.Pictures;

/// <summary>
/// What a hint gives to be drawn, of whatever grade. Each factory fills only what its hint's type has; the rest stays empty, so
/// that the layers cannot draw more than the grade gives.
/// </summary>
internal sealed record Exhibit(string Caption)
{
    internal ImmutableArray<Region> Regions { get; init; } = [];

    internal ImmutableArray<PatternCell> Cells { get; init; } = [];

    internal ImmutableArray<Link> Links { get; init; } = [];

    internal ImmutableArray<CellSet> Sets { get; init; } = [];

    /// <summary>The candidates of the pattern that stand, those that go included.</summary>
    internal CandidateSet Candidates { get; init; }

    internal CandidateSet Removes { get; init; }

    internal CandidateSet Places { get; init; }

    internal static Exhibit Of(Hint hint) => hint switch
    {
        WhereHint where => new(where.Words.Written) { Regions = [where.Region] },
        WhatHint what => new(what.Words.Written) { Regions = [what.Region] },
        WhichHint which => new(which.Words.Written)
        {
            Regions = [.. which.Houses.Select(Region.Of)],
            Cells = which.Cells,
            Links = which.Links,
            Sets = which.Sets,
            Candidates = which.Candidates,
        },
        WhyHint why => new(why.Words.Written)
        {
            Regions = [.. why.Deduction.Houses.Select(Region.Of)],
            Cells = why.Deduction.Cells,
            Links = why.Deduction.Links,
            Sets = why.Deduction.Sets,
            Candidates = why.Candidates,
            Removes = why.Deduction.Removes,
            Places = why.Deduction.Places,
        },
        _ => throw new ArgumentException($"A hint of type {hint.GetType().Name} has no picture.", nameof(hint)),
    };
}
