using System.Numerics;

namespace Companion.Engine.Rules.Chains;

/// <summary>An almost locked set: cells of a house with one candidate more between them than there are cells.</summary>
/// <param name="Cells">The cells.</param>
/// <param name="Digits">Their candidates.</param>
internal readonly record struct LockedSet(CellSet Cells, DigitSet Digits)
{
    /// <summary>
    /// Adds every almost locked set of two cells or more, each once: by house (rows, columns, blocks), then by cells.
    /// </summary>
    internal static void FindAlmost(Board board, List<LockedSet> found)
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
                if (size < 2 || BitOperations.PopCount((uint)union) != size + 1)
                    continue;
                var cells = house.CellsAt(places);
                if (size > 3 || cells.CommonHouses.First == house) // Else found in that one before.
                    found.Add(new(cells, new DigitSet((ushort)union)));
            }
        }
    }
}
