using System.Numerics;
using System.Runtime.Intrinsics;

namespace Companion.Engine.Search;

/// <summary>
/// What the search does with the places of one digit. All 81 places lie in one register, so that a step treats all nine rows,
/// columns and blocks at once, without a table and without a branch.
/// </summary>
/// <remarks>
/// <code>
/// lane   0: band 1    1: band 2    2: band 3    3: always 0
/// bit    31 30 | 29 28..20 | 19 18..10 | 9 8..0
///         none | 0  row 3  | 0  row 2  | 0 row 1     column 1 is the lowest bit of its row
/// </code>
/// A row takes ten bits, nine places and a spare that stays 0 between steps: additions and subtractions stop at it, and a bit
/// shifted past the end of its row falls on it or where no mask looks. 3 x 10 = 30 bits fit in the lane's 32.
/// </remarks>
internal static class Plane
{
    private const int Row = 10;
    private const uint EachRow = 1 | 1 << Row | 1 << (2 * Row);
    private const uint FirstInBlock = 0b001001001;

    /// <summary>Every place.</summary>
    internal static Vector128<uint> All => Bands(0b111111111 * EachRow);

    /// <summary>The place of one cell.</summary>
    internal static Vector128<uint> Of(int cell) => Vector128.Create(
        cell < 27 ? Bit(cell) : 0, cell is >= 27 and < 54 ? Bit(cell - 27) : 0, cell >= 54 ? Bit(cell - 54) : 0, 0u);

    /// <summary>The places of a set of cells.</summary>
    internal static Vector128<uint> Of(CellSet cells) => Vector128.Create(Spread(cells.Band(0)), Spread(cells.Band(1)), Spread(cells.Band(2)), 0u);

    /// <summary>The cell of the first place in reading order; there must be one.</summary>
    internal static int First(Vector128<uint> places)
    {
        var band = places[0] != 0 ? 0 : places[1] != 0 ? 1 : 2;
        var bit = BitOperations.TrailingZeroCount(places[band]);
        return band * 27 + bit - bit / Row;
    }

    /// <summary>The places that share a row, column or block with one of these, without these.</summary>
    internal static Vector128<uint> Seen(Vector128<uint> places)
    {
        var rows = RowsWithAny(places);
        var column = Shadow(places) & Bands(0b111111111);
        var columns = column | NextBand(column) | BandAfter(column);
        var triples = Shadow(Triples(places)) & Bands(FirstInBlock);
        return (rows | InEachRow(columns | WholeTriples(triples))) & ~places;
    }

    /// <summary>
    /// The places without those that cannot be filled for want of room elsewhere. In a band the digit takes one triple (three
    /// cells where a row and a block meet) in each row and in each block, so the three form a permutation of rows to blocks; a
    /// triple that is in no such permutation goes. In a stack the same holds of columns and bands. This covers all that follows
    /// where a block's places lie in one line or a line's in one block.
    /// </summary>
    /// <returns>The places left; none at all, now or when called again, if the digit has no way to stand in a band.</returns>
    internal static Vector128<uint> Confine(Vector128<uint> places)
    {
        var triples = Triples(places);
        var oneOn = (triples >>> 3 | triples << 6) & Bands(FirstInBlock * EachRow);
        var twoOn = (triples >>> 6 | triples << 3) & Bands(FirstInBlock * EachRow);
        // A triple can be filled if the other two rows can serve the other two blocks, in one order or the other.
        places &= WholeTriples(NextRow(oneOn) & RowAfter(twoOn) | NextRow(twoOn) & RowAfter(oneOn));

        var columns = Shadow(places);
        oneOn = columns >>> 1 & Bands(0b011011011) | columns << 2 & Bands(0b100100100);
        twoOn = columns >>> 2 & Bands(0b001001001) | columns << 1 & Bands(0b110110110);
        return places & InEachRow(NextBand(oneOn) & BandAfter(twoOn) | NextBand(twoOn) & BandAfter(oneOn));
    }

    /// <summary>The places that are the only one in their row: the digit's cells that are known.</summary>
    internal static Vector128<uint> Lone(Vector128<uint> places)
    {
        // Lends each row its spare bit, so that taking 1 from each clears the lowest place of each and no more.
        var butFirst = places & ((places | Bands(EachRow << 9)) - Bands(EachRow));
        return places & ~RowsWithAny(butFirst);
    }

    // All nine places of each row that has one of these.
    private static Vector128<uint> RowsWithAny(Vector128<uint> places)
    {
        var spare = places + Bands(0b111111111 * EachRow) & Bands(EachRow << 9);
        return spare - (spare >>> 9);
    }

    // For each triple that has one of these places, its first.
    private static Vector128<uint> Triples(Vector128<uint> places) =>
        (places | places >>> 1 | places >>> 2) & Bands(FirstInBlock * EachRow);

    // From the first of each triple to all three: 8x - x = x + 2x + 4x.
    private static Vector128<uint> WholeTriples(Vector128<uint> firsts) => (firsts << 3) - firsts;

    // The three rows of a band laid over each other, in the place of its first; above it lies what is left over.
    private static Vector128<uint> Shadow(Vector128<uint> places) => places | places >>> Row | places >>> (2 * Row);

    private static Vector128<uint> InEachRow(Vector128<uint> row) => row | row << Row | row << (2 * Row);

    private static Vector128<uint> NextRow(Vector128<uint> places) => places >>> Row | places << (2 * Row);

    private static Vector128<uint> RowAfter(Vector128<uint> places) => places >>> (2 * Row) | places << Row;

    private static Vector128<uint> NextBand(Vector128<uint> places) => Vector128.Shuffle(places, Vector128.Create(1u, 2, 0, 3));

    private static Vector128<uint> BandAfter(Vector128<uint> places) => Vector128.Shuffle(places, Vector128.Create(2u, 0, 1, 3));

    private static Vector128<uint> Bands(uint bits) => Vector128.Create(bits, bits, bits, 0);

    private static uint Bit(int cellInBand) => 1u << (cellInBand + cellInBand / 9);

    private static uint Spread(uint band) => band & 0x1FF | (band & 0x1FF << 9) << 1 | (band & 0x1FF << 18) << 2;
}
