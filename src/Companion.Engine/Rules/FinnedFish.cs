using System.Numerics;
using Companion.Engine.Proofs;

namespace Companion.Engine.Rules;

/// <summary>
/// The search that finned X-wing, swordfish and jellyfish share, for one digit and one kind of base line. Lines are counted from
/// 0: bit i of a set of base lines is base line i + 1, bit j of a set of cover lines is cover line j + 1.
/// </summary>
internal readonly ref struct FinnedFish
{
    private const int OneBand = 0b111;

    private readonly RuleId _rule;
    private readonly int _size;
    private readonly Board _board;
    private readonly Digit _digit;
    private readonly HouseKind _bases;
    private readonly Findings _found;

    // For each base line the cover lines in which it has a place.
    private readonly ReadOnlySpan<ushort> _placesIn;

    private FinnedFish(
        RuleId rule, int size, Board board, Digit digit, HouseKind bases, ReadOnlySpan<ushort> placesIn, Findings found)
    {
        (_rule, _size, _board, _digit, _bases, _found) = (rule, size, board, digit, bases, found);
        _placesIn = placesIn;
    }

    /// <summary>
    /// Adds every finned fish of this size: by digit, those based on rows before those based on columns, then by base lines, then
    /// by the cover lines.
    /// </summary>
    internal static void Find(RuleId rule, int size, Board board, Findings found)
    {
        Span<ushort> placesIn = stackalloc ushort[9];
        foreach (var digit in Digit.All)
        {
            for (var bases = HouseKind.Row; bases <= HouseKind.Column; bases++)
            {
                // A line with more places than the cover lines and two cells of a block would have fins in two blocks.
                var fit = 0;
                for (var line = 0; line < 9; line++)
                {
                    placesIn[line] = (ushort)board[digit].PlacesIn(House.Of(bases, line + 1));
                    if (BitOperations.PopCount(placesIn[line]) is var places && places >= 2 && places <= size + 2)
                        fit |= 1 << line;
                }

                if (!new FinnedFish(rule, size, board, digit, bases, placesIn, found).Extend(0, 0, fit, size))
                    return;
            }
        }
    }

    private bool Extend(int chosen, int union, int rest, int missing)
    {
        if (missing == 0)
            return Cover(chosen, union);
        for (; BitOperations.PopCount((uint)rest) >= missing; rest &= rest - 1)
        {
            var line = BitOperations.TrailingZeroCount(rest);
            var wider = union | _placesIn[line];
            if (BitOperations.PopCount((uint)wider) <= _size + 2
                && !Extend(chosen | 1 << line, wider, rest & rest - 1, missing - 1))
                return false;
        }

        return true;
    }

    // One or two of the lines through the places hold fins, all in one block, and that block keeps one of its lines as a cover.
    private bool Cover(int chosen, int union)
    {
        var tooMany = BitOperations.PopCount((uint)union) - _size;
        if (tooMany < 1)
            return true;
        for (var stack = 0; stack < 3; stack++)
        {
            var through = union & OneBand << stack * 3;
            if (BitOperations.PopCount((uint)through) <= tooMany)
                continue;
            for (var rest = through; rest != 0; rest &= rest - 1)
            {
                var one = rest & -rest;
                if (!Judge(chosen, union, finned: tooMany == 1 ? one : through - one, stack))
                    return false;
            }
        }

        return true;
    }

    private bool Judge(int chosen, int union, int finned, int stack)
    {
        var finLines = 0;
        for (var rest = chosen; rest != 0; rest &= rest - 1)
        {
            if ((_placesIn[BitOperations.TrailingZeroCount(rest)] & finned) != 0)
                finLines |= rest & -rest;
        }

        var band = BitOperations.TrailingZeroCount(finLines) / 3;
        if ((finLines & ~(OneBand << band * 3)) != 0)
            return true;
        var covers = union - finned;
        var goneFrom = 0;
        for (var rest = OneBand << band * 3 & ~chosen; rest != 0; rest &= rest - 1)
            goneFrom |= _placesIn[BitOperations.TrailingZeroCount(rest)] & covers & OneBand << stack * 3;
        return goneFrom == 0 || HasPartThatDoesTheSame(chosen, goneFrom, band, stack) || Add(chosen, covers, band, stack);
    }

    // Some of the base lines with as many of the cover lines, and perhaps more fins in the same block: they need the cover lines
    // that they meet elsewhere, and those from which the digit goes.
    private bool HasPartThatDoesTheSame(int chosen, int goneFrom, int band, int stack)
    {
        for (var part = (chosen - 1) & chosen; part != 0; part = (part - 1) & chosen)
        {
            var needed = goneFrom;
            for (var rest = part; rest != 0; rest &= rest - 1)
            {
                var line = BitOperations.TrailingZeroCount(rest);
                needed |= line / 3 == band ? _placesIn[line] & ~(OneBand << stack * 3) : _placesIn[line];
            }

            if (BitOperations.PopCount((uint)needed) <= BitOperations.PopCount((uint)part))
                return true;
        }

        return false;
    }

    private bool Add(int chosen, int covers, int band, int stack)
    {
        var (baseLines, coverLines) = (LinesOf(_bases, chosen), LinesOf(HouseKind.Column - (int)_bases, covers));
        var block = House.Block(_bases == HouseKind.Row ? band * 3 + stack + 1 : stack * 3 + band + 1).Cells;
        var places = _board[_digit];
        Span<(Role, CellSet)> parts = stackalloc (Role, CellSet)[_size + 1];
        var next = 0;
        foreach (var line in baseLines)
            parts[next++] = (Role.Base, places & line.Cells & coverLines.Cells);
        parts[next] = (Role.Fin, places & baseLines.Cells - coverLines.Cells);
        return _found.Add(new Deduction
        {
            Rule = _rule,
            Cells = PatternCell.Each(parts),
            Houses = baseLines,
            Digits = DigitSet.Of(_digit),
            RestsOn = CandidateSet.Of((_board.Open & baseLines.Cells) - coverLines.Cells - block, _digit),
            Removes = CandidateSet.Of((places & coverLines.Cells & block) - baseLines.Cells, _digit),
        });
    }

    // The layout of House: rows, then columns.
    private static HouseSet LinesOf(HouseKind kind, int lines) => new((uint)lines << (int)kind * 9);
}
