namespace Companion.Engine.Proofs;

/// <summary>
/// Decides whether what a deduction concludes follows from what it names, and from nothing else: its cells, its houses as
/// wholes, and the absent candidates that it rests on. Knows no rule. So a picture of what is named is enough to follow it.
/// What holds only of a puzzle with one solution is not decided here but by <see cref="UniquenessChecker"/>.
/// </summary>
/// <remarks>
/// It looks for a way to fill the named cells against the conclusion: each cell with a named digit of which it does not rest on
/// the absence, or with some digit that is not named; equal digits not in cells that see each other; every named digit somewhere
/// in every named house, where the digits that stand in that house already count. If there is none, the conclusion is forced.
/// All ways are tried.
/// </remarks>
public static class ProofChecker
{
    /// <summary>Checks a deduction.</summary>
    /// <param name="board">The board on which it was found.</param>
    /// <param name="deduction">The deduction.</param>
    public static ProofVerdict Check(Board board, Deduction deduction)
    {
        ArgumentNullException.ThrowIfNull(board);
        ArgumentNullException.ThrowIfNull(deduction);
        if (deduction.AssumesOneSolution)
            return new ProofVerdict.NeedsOneSolution();
        return FaultOf(board, deduction) ?? Search(new NamedWorld(board, deduction), deduction);
    }

    /// <summary>Whether a deduction is proved, by <see cref="UniquenessChecker"/> where it assumes one solution.</summary>
    /// <param name="board">The board on which it was found; its puzzle has one solution.</param>
    /// <param name="deduction">The deduction.</param>
    internal static bool Holds(Board board, Deduction deduction) =>
        (deduction.AssumesOneSolution ? UniquenessChecker.Check(board, deduction) : Check(board, deduction)).Holds;

    // What is wrong with it before any search: the board is not as the deduction says.
    internal static ProofVerdict? FaultOf(Board board, Deduction deduction)
    {
        var concluded = deduction.Places | deduction.Removes;
        if (concluded.IsEmpty)
            return new ProofVerdict.NothingConcluded();
        foreach (var cell in (deduction.PatternCells | deduction.RestsOn.Cells) & board.Filled)
            return new ProofVerdict.FilledCell(cell);
        foreach (var candidate in concluded - board.Candidates)
            return new ProofVerdict.NotStanding(candidate);
        foreach (var candidate in deduction.RestsOn & board.Candidates)
            return new ProofVerdict.NotAbsent(candidate);
        return null;
    }

    // What the search says of everything that is concluded.
    internal static ProofVerdict Search(NamedWorld world, Deduction deduction)
    {
        foreach (var candidate in deduction.Places)
        {
            if (Judge(world.CanBeWithout(candidate), candidate, isPlacement: true) is { } verdict)
                return verdict;
        }

        foreach (var candidate in deduction.Removes)
        {
            if (Judge(world.CanBeWith(candidate), candidate, isPlacement: false) is { } verdict)
                return verdict;
        }

        return new ProofVerdict.Proven();
    }

    private static ProofVerdict? Judge(bool? canBeAgainst, Candidate candidate, bool isPlacement) => canBeAgainst switch
    {
        false => null,
        true => new ProofVerdict.NotForced(candidate, isPlacement),
        null => new ProofVerdict.TooWide(candidate),
    };
}
