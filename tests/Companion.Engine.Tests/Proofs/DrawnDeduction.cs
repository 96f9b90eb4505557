using System.Collections.Immutable;
using Companion.Engine.Proofs;

namespace Companion.Engine.Tests.Proofs;

/// <summary>
/// Reads deductions as <see cref="Deduction.ToString"/> writes them, with the absent candidates that they rest on after
/// <c>rests</c>: <c>r1c3=25</c> is both digits, <c>r1c3=-25</c> all but these, <c>r1=5</c> or <c>b1=5</c> the digit in all cells
/// of the house that are not in the pattern.
/// </summary>
internal static class DrawnDeduction
{
    internal static Deduction Read(string text)
    {
        var words = text.Split((char[])[' ', '\n'], StringSplitOptions.RemoveEmptyEntries);
        var cells = ImmutableArray.CreateBuilder<PatternCell>();
        var (houses, rests) = (HouseSet.Empty, new List<string>());
        var (places, removes) = (CandidateSet.Empty, CandidateSet.Empty);
        var (role, part) = (default(Role), "");
        foreach (var word in words[2..])
        {
            if (word is "in" or "places" or "removes" or "rests")
                part = word;
            else if (part == "in")
                houses = houses.With(House.Parse(word));
            else if (part == "places")
                places |= Candidates(word);
            else if (part == "removes")
                removes |= Candidates(word);
            else if (part == "rests")
                rests.Add(word);
            else if (Cell.TryParse(word, out var cell))
                cells.Add(new(cell, role));
            else
                role = Enum.Parse<Role>(word, ignoreCase: true);
        }

        var pattern = CellSet.Of([.. cells.Select(cell => cell.Cell)]);
        return new()
        {
            Rule = new(words[0]),
            Digits = DigitSet.Parse(words[1]),
            Cells = cells.ToImmutable(),
            Houses = houses,
            Places = places,
            Removes = removes,
            RestsOn = rests.Aggregate(CandidateSet.Empty, (all, word) => all | RestsOn(word, pattern)),
        };
    }

    private static CandidateSet RestsOn(string word, CellSet pattern) => House.TryParse(word.AsSpan(0, 2), out var house) && word[2] == '='
        ? CandidateSet.Of(house.Cells - pattern, DigitSet.Parse(word[3..]))
        : Candidates(word);

    private static CandidateSet Candidates(string word) => word[5] == '-'
        ? CandidateSet.Of(CellSet.Of(Cell.Parse(word[..4])), ~DigitSet.Parse(word[6..]))
        : CandidateSet.Of(CellSet.Of(Cell.Parse(word[..4])), DigitSet.Parse(word[5..]));
}
