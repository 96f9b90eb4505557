using System.Collections.Immutable;
using Companion.Engine.Proofs;

namespace Companion.Engine.Rules;

/// <summary>The search that X-wing, swordfish and jellyfish share.</summary>
internal static class Fish
{
    /// <summary>
    /// Adds every fish of this size: by digit, those based on rows before those based on columns, then by base lines.
    /// </summary>
    internal static void Find(RuleId rule, int size, Board board, Findings found)
    {
        foreach (var digit in Digit.All)
        {
            if (!Find(rule, size, board, digit, HouseKind.Row, HouseKind.Column, found)
                || !Find(rule, size, board, digit, HouseKind.Column, HouseKind.Row, found))
                return;
        }
    }

    private static bool Find(RuleId rule, int size, Board board, Digit digit, HouseKind bases, HouseKind covers, Findings found)
    {
        Span<CellSet> places = stackalloc CellSet[size];
        Span<ushort> placesIn = stackalloc ushort[9];
        Span<TightChoices.Choice> room = stackalloc TightChoices.Choice[TightChoices.Most];
        for (var line = 0; line < 9; line++)
            placesIn[line] = (ushort)board[digit].PlacesIn(House.Of(bases, line + 1));
        foreach (var (chosen, union) in TightChoices.Find(placesIn, size, room))
        {
            var (baseLines, coverLines) = (LinesOf(bases, chosen), LinesOf(covers, union));
            var gone = board[digit] & coverLines.Cells - baseLines.Cells;
            if (gone.IsEmpty)
                continue;
            var next = 0;
            foreach (var line in baseLines)
                places[next++] = board[digit] & line.Cells;
            var more = found.Add(new Deduction
            {
                Rule = rule,
                Cells = PatternCell.Each(Role.Base, places),
                Houses = baseLines,
                Digits = DigitSet.Of(digit),
                Links = StrongLinks(places, digit),
                RestsOn = CandidateSet.Of(board.Open & baseLines.Cells - coverLines.Cells, digit),
                Removes = CandidateSet.Of(gone, digit),
            });
            if (!more)
                return false;
        }

        return true;
    }

    // The layout of House: rows, then columns.
    private static HouseSet LinesOf(HouseKind kind, int lines) => new((uint)lines << (int)kind * 9);

    // Only in an X-wing does every base line have two places.
    private static ImmutableArray<Link> StrongLinks(ReadOnlySpan<CellSet> places, Digit digit) =>
        places.Length == 2 ? [StrongLink(places[0], digit), StrongLink(places[1], digit)] : [];

    private static Link StrongLink(CellSet ends, Digit digit)
    {
        var from = ends.First;
        return new(new(from, digit), new(ends.Without(from).First, digit), IsStrong: true);
    }
}
