using System.Numerics;
using Companion.Engine.Proofs;

namespace Companion.Engine.Rules;

/// <summary>A house with exactly two places for a digit: if one is false the other is true.</summary>
/// <param name="First">The first place in reading order.</param>
/// <param name="Second">The second.</param>
/// <param name="House">The house; where a line and a block share both places and no other, the line.</param>
internal readonly record struct StrongLink(Cell First, Cell Second, House House)
{
    /// <summary>The most that a digit can have: one for each house.</summary>
    internal const int Most = Engine.House.Count;

    /// <summary>Both places.</summary>
    internal CellSet Ends => CellSet.Of(First, Second);

    /// <summary>Every strong link of a digit, each pair of places once, by house (rows, columns, blocks).</summary>
    /// <param name="board">The board.</param>
    /// <param name="digit">The digit.</param>
    /// <param name="room">Where to write them; <see cref="Most"/> are enough.</param>
    internal static ReadOnlySpan<StrongLink> Find(Board board, Digit digit, Span<StrongLink> room)
    {
        var count = 0;
        foreach (var house in HouseSet.All)
        {
            var places = board[digit].PlacesIn(house);
            if (BitOperations.PopCount((uint)places) != 2)
                continue;
            var first = house.CellAt(BitOperations.TrailingZeroCount(places));
            var second = house.CellAt(BitOperations.Log2((uint)places));
            if (house.IsLine || !IsInLine(board[digit], first, second))
                room[count++] = new(first, second, house);
        }

        return room[..count];
    }

    /// <summary>The link as a picture draws it.</summary>
    internal Link Of(Digit digit) => new(new(First, digit), new(Second, digit), IsStrong: true);

    private static bool IsInLine(CellSet places, Cell first, Cell second)
    {
        var lines = first.Houses & second.Houses & HouseSet.Lines;
        return !lines.IsEmpty && (places & lines.First.Cells).Count == 2;
    }
}
