using System.Numerics;

namespace Companion.Engine.Rules;

/// <summary>
/// The search that subsets and fish share: of nine sets of at most nine members, choose as many as their union has members, so
/// that no part of the choice does the same. For a naked subset the sets are the candidates of a house's cells, for a hidden
/// one the places of its digits, for a fish the places of a digit in parallel lines.
/// </summary>
internal static class TightChoices
{
    /// <summary>The most that can be found: choices of four of nine.</summary>
    internal const int Most = 126;

    /// <summary>A choice.</summary>
    /// <param name="Chosen">Bit i: set i is chosen.</param>
    /// <param name="Union">The members of the chosen sets.</param>
    internal readonly record struct Choice(ushort Chosen, ushort Union);

    /// <summary>
    /// Every choice of this size, in ascending order of the indices chosen. Sets of fewer than two members never count.
    /// </summary>
    /// <param name="sets">Nine sets, bit m for the member m.</param>
    /// <param name="size">2 to 4.</param>
    /// <param name="room">Where to write them; <see cref="Most"/> are enough.</param>
    internal static ReadOnlySpan<Choice> Find(ReadOnlySpan<ushort> sets, int size, Span<Choice> room)
    {
        var fit = 0;
        for (var index = 0; index < sets.Length; index++)
        {
            if (BitOperations.PopCount(sets[index]) is var members && members >= 2 && members <= size)
                fit |= 1 << index;
        }

        return room[..Extend(default, fit, size, sets, room, 0)];
    }

    private static int Extend(Choice choice, int rest, int missing, ReadOnlySpan<ushort> sets, Span<Choice> room, int count)
    {
        var size = BitOperations.PopCount(choice.Chosen) + missing;
        for (; BitOperations.PopCount((uint)rest) >= missing; rest &= rest - 1)
        {
            var index = BitOperations.TrailingZeroCount(rest);
            var wider = new Choice((ushort)(choice.Chosen | 1 << index), (ushort)(choice.Union | sets[index]));
            var members = BitOperations.PopCount(wider.Union);
            if (members > size)
                continue;
            if (missing > 1)
                count = Extend(wider, rest & rest - 1, missing - 1, sets, room, count);
            else if (members == size && !HasTightPart(wider.Chosen, sets))
                room[count++] = wider;
        }

        return count;
    }

    private static bool HasTightPart(int chosen, ReadOnlySpan<ushort> sets)
    {
        for (var part = (chosen - 1) & chosen; part != 0; part = (part - 1) & chosen)
        {
            var union = 0;
            for (var rest = part; rest != 0; rest &= rest - 1)
                union |= sets[BitOperations.TrailingZeroCount(rest)];
            if (BitOperations.PopCount((uint)union) == BitOperations.PopCount((uint)part))
                return true;
        }

        return false;
    }
}
