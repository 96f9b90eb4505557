namespace Companion.Engine.Proofs;

/// <summary>Each of some digits in each of some cells: what one clause of a sentence can say.</summary>
internal readonly record struct CandidateGroup(DigitSet Digits, CellSet Cells)
{
    /// <summary>The candidates in as few groups as either gathering gives: by digit or by cell.</summary>
    internal static List<CandidateGroup> Gather(CandidateSet candidates)
    {
        var underDigits = candidates.Digits.GroupBy(digit => candidates[digit])
            .Select(same => new CandidateGroup(DigitSet.Of([.. same]), same.Key)).ToList();
        var underCells = candidates.Cells.GroupBy(cell => candidates[cell])
            .Select(same => new CandidateGroup(same.Key, CellSet.Of([.. same]))).ToList();
        return underDigits.Count <= underCells.Count ? underDigits : underCells;
    }
}
