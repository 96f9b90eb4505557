using System.Collections.Immutable;

namespace Companion.Engine.Proofs;

/// <summary>
/// Grade 3: the pattern, and not what follows from it. A single's pattern and its conclusion are the same candidate, so its
/// hint asks instead: it has the cell without the digit where the cell is the argument (naked single, full house), and the
/// digit with its house but without the cell where the house is (hidden single).
/// </summary>
public sealed class WhichHint : Hint
{
    internal WhichHint(Pattern pattern, CandidateSet candidates, Saying words)
        : base(words)
    {
        (Cells, Digits, Houses, Cover, Links) = pattern;
        Candidates = candidates;
        Sets = pattern.Sets;
    }

    /// <inheritdoc/>
    public override Grade Grade => Grade.Which;

    /// <summary>The cells of the pattern with their roles, in the order in which they are said.</summary>
    public ImmutableArray<PatternCell> Cells { get; }

    /// <summary>The digits of the pattern.</summary>
    public DigitSet Digits { get; }

    /// <summary>The digits of the pattern where they stand as candidates in its cells.</summary>
    public CandidateSet Candidates { get; }

    /// <summary>The houses that the pattern is about.</summary>
    public HouseSet Houses { get; }

    /// <summary>The houses that the digit of a fish or of a pointing or claiming pattern is kept to; else empty.</summary>
    public HouseSet Cover { get; }

    /// <summary>The almost locked sets of the pattern, in the order in which they are said; empty for patterns without.</summary>
    public ImmutableArray<CellSet> Sets { get; }

    /// <summary>The links within the pattern.</summary>
    public ImmutableArray<Link> Links { get; }
}
