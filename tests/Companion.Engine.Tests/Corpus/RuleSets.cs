using System.Collections.Immutable;
using Companion.Engine.Rules;

namespace Companion.Engine.Tests.Corpus;

/// <summary>The groups of rules for which check values are known, each with those before it.</summary>
internal static class RuleSets
{
    public static readonly ImmutableArray<IRule> NakedSingles = [new NakedSingle()];

    public static readonly ImmutableArray<IRule> Singles = [.. NakedSingles, new HiddenSingle()];

    public static readonly ImmutableArray<IRule> Locked = [.. Singles, new Pointing(), new Claiming()];

    public static readonly ImmutableArray<IRule> PairsAndTriples =
        [.. Locked, new NakedPair(), new HiddenPair(), new NakedTriple(), new HiddenTriple()];

    public static readonly ImmutableArray<IRule> Subsets = [.. PairsAndTriples, new NakedQuad(), new HiddenQuad()];
}
