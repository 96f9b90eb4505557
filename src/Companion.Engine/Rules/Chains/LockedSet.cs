using System.Numerics;
using System.Runtime.InteropServices;

namespace Companion.Engine.Rules.Chains;

/// <summary>An almost locked set: cells of a house with one candidate more between them than there are cells.</summary>
/// <param name="Cells">The cells.</param>
/// <param name="Digits">Their candidates.</param>
internal readonly record struct LockedSet(CellSet Cells, DigitSet Digits)
{
    /// <summary>The most cells that count: few can take in more.</summary>
    internal const int MostCells = 5;

    [ThreadStatic]
    private static (Board Board, List<LockedSet> Sets)? _last;

    /// <summary>
    /// Every almost locked set of two to <see cref="MostCells"/> cells of which no part is a naked subset, each once: by house (rows,
    /// columns, blocks), then by cells. Kept for the thread's last board, since several rules ask about the same one.
    /// </summary>
    internal static ReadOnlySpan<LockedSet> AllAlmost(Board board)
    {
        var sets = _last?.Sets ?? [];
        if (!ReferenceEquals(_last?.Board, board))
        {
            sets.Clear();
            FindAlmost(board, sets);
            _last = (board, sets);
        }

        return CollectionsMarshal.AsSpan(sets);
    }

    private static void FindAlmost(Board board, List<LockedSet> found)
    {
        Span<ushort> digitsAt = stackalloc ushort[9];
        Span<ushort> unions = stackalloc ushort[1 << 9];
        foreach (var house in HouseSet.All)
        {
            var open = (board.Open & house.Cells).PlacesIn(house);
            for (var place = 0; place < 9; place++)
                digitsAt[place] = (ushort)board[house.CellAt(place)].Bits;
            for (var places = 1; places < 1 << 9; places++)
            {
                if ((places & ~open) != 0)
                    continue;
                var lowest = BitOperations.TrailingZeroCount(places);
                var union = unions[places & places - 1] | digitsAt[lowest];
                unions[places] = (ushort)union;
                var size = BitOperations.PopCount((uint)places);
                if (size < 2 || size > MostCells || BitOperations.PopCount((uint)union) != size + 1)
                    continue;
                var cells = house.CellsAt(places);
                if (cells.CommonHouses.First == house && !HasNakedSubset(places, unions)) // The first: else found before.
                    found.Add(new(cells, new DigitSet(union)));
            }
        }
    }

    private static bool HasNakedSubset(int places, ReadOnlySpan<ushort> unions)
    {
        for (var part = places - 1 & places; part != 0; part = part - 1 & places)
        {
            if (BitOperations.PopCount(unions[part]) <= BitOperations.PopCount((uint)part))
                return true;
        }

        return false;
    }
}
