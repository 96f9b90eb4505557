namespace Companion.Engine.Proofs;

/// <summary>Another way to fill the same cells so that each row, column and block of them keeps its digits.</summary>
internal static class Exchange
{
    /// <summary>Whether there is one.</summary>
    /// <param name="filling">How the cells are filled: a digit for each, none twice in a house.</param>
    /// <param name="standing">The candidates to which the other way is kept.</param>
    internal static bool Exists(in CandidateSet filling, in CandidateSet standing)
    {
        var options = CandidateSet.Empty;
        foreach (var cell in filling.Cells)
        {
            var digits = standing[cell];
            foreach (var house in cell.Houses)
                digits &= filling.In(house.Cells).Digits;
            options |= CandidateSet.Of(CellSet.Of(cell), digits);
        }

        foreach (var other in options - filling)
        {
            if (Fill(Take(options, other), filling.Cells.Without(other.Cell)))
                return true;
        }

        return false;
    }

    // As many cells in each house as there are digits for them: with no digit twice, each digit comes once.
    private static bool Fill(in CandidateSet options, CellSet rest)
    {
        if (rest.IsEmpty)
            return true;
        var (tightest, fewest) = (rest.First, int.MaxValue);
        foreach (var cell in rest)
        {
            if (options[cell].Count is var count && count < fewest)
                (tightest, fewest) = (cell, count);
        }

        foreach (var digit in options[tightest])
        {
            if (Fill(Take(options, new(tightest, digit)), rest.Without(tightest)))
                return true;
        }

        return false;
    }

    private static CandidateSet Take(in CandidateSet options, Candidate taken)
    {
        var (cell, digit) = taken;
        return options.In(~CellSet.Of(cell)).WithPlane(digit, (options[digit] - cell.Peers).With(cell));
    }
}
