using System.Numerics;
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
        Span<ushort> placesIn = stackalloc ushort[9];
        Span<TightChoices.Choice> room = stackalloc TightChoices.Choice[TightChoices.Most];
        foreach (var digit in Digit.All)
        {
            foreach (var kind in (ReadOnlySpan<HouseKind>)[HouseKind.Row, HouseKind.Column])
            {
                for (var line = 0; line < 9; line++)
                    placesIn[line] = (ushort)board[digit].PlacesIn(House.Of(kind, line + 1));
                foreach (var (bases, covers) in TightChoices.Find(placesIn, size, room))
                {
                    var crossing = kind == HouseKind.Row ? HouseKind.Column : HouseKind.Row;
                    var gone = board[digit] & CellsOf(crossing, covers) - CellsOf(kind, bases);
                    if (!gone.IsEmpty && !found.Add(Deduce(rule, board, digit, kind, bases, gone)))
                        return;
                }
            }
        }
    }

    private static Deduction Deduce(RuleId rule, Board board, Digit digit, HouseKind kind, int bases, CellSet gone)
    {
        Span<CellSet> places = stackalloc CellSet[BitOperations.PopCount((uint)bases)];
        var houses = HouseSet.Empty;
        for (var rest = bases; rest != 0; rest &= rest - 1)
        {
            var line = House.Of(kind, BitOperations.TrailingZeroCount(rest) + 1);
            places[houses.Count] = board[digit] & line.Cells;
            houses = houses.With(line);
        }

        return new()
        {
            Rule = rule,
            Cells = PatternCell.Each(Role.Base, places),
            Houses = houses,
            Digits = DigitSet.Of(digit),
            Links = places.Length == 2 ? [Strong(places[0], digit), Strong(places[1], digit)] : [],
            RestsOn = CandidateSet.Of((CellsOf(kind, bases) & board.Open) - board[digit], digit),
            Removes = CandidateSet.Of(gone, digit),
        };
    }

    // The two base lines of an X-wing have two places each.
    private static Link Strong(CellSet ends, Digit digit)
    {
        var from = ends.First;
        return new(new(from, digit), new(ends.Without(from).First, digit), IsStrong: true);
    }

    private static CellSet CellsOf(HouseKind kind, int lines)
    {
        var cells = CellSet.Empty;
        for (; lines != 0; lines &= lines - 1)
            cells |= House.Of(kind, BitOperations.TrailingZeroCount(lines) + 1).Cells;
        return cells;
    }
}
