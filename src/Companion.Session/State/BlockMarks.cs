using System.Collections;
using System.Collections.Immutable;
using Companion.Engine;

namespace Companion.Session.State;

/// <summary>The block marks on a grid, at most one for each digit of each block. Immutable, compared by value.</summary>
public sealed class BlockMarks : IReadOnlyCollection<BlockMark>, IEquatable<BlockMarks>
{
    /// <summary>How many places a block mark has at most. With more it would say too little to be worth writing.</summary>
    public const int MostPlaces = 3;

    // Ordered by block, then digit, so that everything made from it has one order.
    private readonly ImmutableSortedDictionary<int, BlockMark> _marks;

    private BlockMarks(ImmutableSortedDictionary<int, BlockMark> marks) => _marks = marks;

    /// <summary>No block mark.</summary>
    public static BlockMarks None { get; } = new(ImmutableSortedDictionary<int, BlockMark>.Empty);

    /// <summary>How many there are, 0 to 81.</summary>
    public int Count => _marks.Count;

    /// <summary>The mark of this digit in this block, or null where there is none.</summary>
    public BlockMark? this[House block, Digit digit] => _marks.GetValueOrDefault(Key(block, digit));

    /// <summary>The cells with a place of a mark.</summary>
    public CellSet Cells => _marks.Values.Aggregate(CellSet.Empty, (cells, mark) => cells | mark.Places);

    /// <summary>The cells in which the digit is written as a block mark.</summary>
    public CellSet this[Digit digit] => _marks.Values.Where(mark => mark.Digit == digit)
        .Aggregate(CellSet.Empty, (cells, mark) => cells | mark.Places);

    /// <summary>The digits written as block marks in the cell.</summary>
    public DigitSet In(Cell cell)
    {
        var digits = DigitSet.Empty;
        foreach (var mark in _marks.Values)
        {
            if (mark.Places.Contains(cell))
                digits = digits.With(mark.Digit);
        }

        return digits;
    }

    /// <summary>The marks with the digit written into these cells too; they lie in one block.</summary>
    public BlockMarks With(CellSet cells, Digit digit)
    {
        var block = House.Block(cells.First.Block);
        var mark = this[block, digit];
        var places = cells | (mark?.Places ?? CellSet.Empty);
        return Set(new(block, digit, places, mark is { IsComplete: true } || places.Count > 1));
    }

    /// <summary>The marks with the digit taken out of these cells; a mark without places is gone.</summary>
    public BlockMarks Without(CellSet cells, Digit digit)
    {
        var marks = this;
        foreach (var mark in _marks.Values)
        {
            if (mark.Digit == digit && mark.Places.Overlaps(cells))
                marks = marks.Set(mark with { Places = mark.Places - cells });
        }

        return marks;
    }

    /// <summary>The marks with every digit taken out of these cells.</summary>
    public BlockMarks Without(CellSet cells)
    {
        var marks = this;
        foreach (var digit in Digit.All)
            marks = marks.Without(cells, digit);
        return marks;
    }

    /// <inheritdoc/>
    public bool Equals(BlockMarks? other) => other is not null && _marks.Values.SequenceEqual(other._marks.Values);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as BlockMarks);

    /// <inheritdoc/>
    public override int GetHashCode() => _marks.Values.Aggregate(0, HashCode.Combine);

    /// <summary>By block, then by digit.</summary>
    public IEnumerator<BlockMark> GetEnumerator() => _marks.Values.GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    private static int Key(House block, Digit digit) => block.Index * Digit.Count + digit.Index;

    private BlockMarks Set(BlockMark mark)
    {
        var key = Key(mark.Block, mark.Digit);
        return new(mark.Places.IsEmpty ? _marks.Remove(key) : _marks.SetItem(key, mark));
    }
}
