using Companion.Engine.Proofs;

namespace Companion.Engine.Tests.Proofs;

/// <summary>The same question as <see cref="ProofChecker"/>, answered by writing every digit into every named cell.</summary>
internal static class ExhaustiveEnumeration
{
    internal static bool Follows(Board board, Deduction deduction)
    {
        var cells = deduction.PatternCells | (deduction.Places | deduction.Removes).Cells;
        foreach (var house in deduction.Houses)
            cells |= house.Cells & board.Open;
        return !Fillings(board, deduction, [.. cells], []).Any(filling =>
            deduction.Places.Any(candidate => filling[candidate.Cell] != candidate.Digit)
            || deduction.Removes.Any(candidate => filling[candidate.Cell] == candidate.Digit));
    }

    private static IEnumerable<IReadOnlyDictionary<Cell, Digit>> Fillings(
        Board board, Deduction deduction, List<Cell> rest, Dictionary<Cell, Digit> filled)
    {
        if (rest.Count == 0)
        {
            if (deduction.Houses.All(house => deduction.Digits.All(digit => HasDigit(house, digit))))
                yield return filled;
            yield break;
        }

        var cell = rest[0];
        foreach (var digit in Digit.All)
        {
            if (deduction.RestsOn.Contains(new(cell, digit)) || (deduction.Digits.Contains(digit) && Clashes(cell, digit)))
                continue;
            filled[cell] = digit;
            foreach (var filling in Fillings(board, deduction, rest[1..], filled))
                yield return filling;
            filled.Remove(cell);
        }

        bool HasDigit(House house, Digit digit) => house.Cells.Any(cell =>
            board.DigitAt(cell) == digit || (filled.TryGetValue(cell, out var here) && here == digit));

        bool Clashes(Cell cell, Digit digit) => filled.Any(other => other.Value == digit && other.Key.Sees(cell))
            || (deduction.Houses & cell.Houses).Any(house => house.Cells.Any(other => board.DigitAt(other) == digit));
    }
}
