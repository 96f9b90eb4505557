namespace Companion.Engine.Proofs;

/// <summary>
/// What <see cref="ProofChecker"/> or <see cref="UniquenessChecker"/> says of a deduction: proven, or the first reason why not.
/// </summary>
public abstract record ProofVerdict
{
    private ProofVerdict()
    {
    }

    /// <summary>Whether everything that the deduction concludes follows from what it names.</summary>
    public virtual bool Holds => false;

    /// <summary>The verdict in one plain English sentence.</summary>
    public abstract string Sentence { get; }

    /// <summary>Everything concluded follows.</summary>
    public sealed record Proven : ProofVerdict
    {
        /// <inheritdoc/>
        public override bool Holds => true;

        /// <inheritdoc/>
        public override string Sentence => "What it concludes follows from what it names.";
    }

    /// <summary>It places nothing and removes nothing.</summary>
    public sealed record NothingConcluded : ProofVerdict
    {
        /// <inheritdoc/>
        public override string Sentence => "It concludes nothing.";
    }

    /// <summary>It holds only of a puzzle with one solution, which <see cref="ProofChecker"/> does not assume.</summary>
    public sealed record NeedsOneSolution : ProofVerdict
    {
        /// <inheritdoc/>
        public override string Sentence => "It holds only if the puzzle has one solution, which is not assumed here.";
    }

    /// <summary>A cell of the pattern, or one of which it says what is gone there, is filled.</summary>
    /// <param name="Cell">The cell.</param>
    public sealed record FilledCell(Cell Cell) : ProofVerdict
    {
        /// <inheritdoc/>
        public override string Sentence => $"It is about the candidates of {Cell}, which is filled.";
    }

    /// <summary>It rests on the absence of a candidate that stands.</summary>
    /// <param name="Candidate">The candidate.</param>
    public sealed record NotAbsent(Candidate Candidate) : ProofVerdict
    {
        /// <inheritdoc/>
        public override string Sentence => $"It rests on {Candidate.Digit} being gone from {Candidate.Cell}, where it stands.";
    }

    /// <summary>It places or removes a candidate that does not stand.</summary>
    /// <param name="Candidate">The candidate.</param>
    public sealed record NotStanding(Candidate Candidate) : ProofVerdict
    {
        /// <inheritdoc/>
        public override string Sentence => $"It concludes about {Candidate.Digit} in {Candidate.Cell}, which does not stand.";
    }

    /// <summary>A conclusion does not follow: what the deduction names can be filled in against it.</summary>
    /// <param name="Candidate">The candidate that is placed or removed.</param>
    /// <param name="IsPlacement">Whether it is placed.</param>
    public sealed record NotForced(Candidate Candidate, bool IsPlacement) : ProofVerdict
    {
        /// <inheritdoc/>
        public override string Sentence => IsPlacement
            ? $"{Candidate.Cell} need not be {Candidate.Digit}, by what it names."
            : $"{Candidate.Cell} can still be {Candidate.Digit}, by what it names.";
    }

    /// <summary>The search was given up, because what the deduction names can be filled in too many ways.</summary>
    /// <param name="Candidate">The conclusion that was being examined.</param>
    public sealed record TooWide(Candidate Candidate) : ProofVerdict
    {
        /// <inheritdoc/>
        public override string Sentence => $"It names too much to be searched for {Candidate.Digit} in {Candidate.Cell}.";
    }
}
