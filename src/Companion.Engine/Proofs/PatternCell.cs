using System.Collections.Immutable;
using System.Runtime.InteropServices;

namespace Companion.Engine.Proofs;

/// <summary>A cell of a pattern with what it does there.</summary>
/// <param name="Cell">The cell.</param>
/// <param name="Role">What it does.</param>
public readonly record struct PatternCell(Cell Cell, Role Role)
{
    /// <summary>Every cell of the sets in the same role: set by set, each in reading order.</summary>
    internal static ImmutableArray<PatternCell> Each(Role role, params ReadOnlySpan<CellSet> sets)
    {
        var count = 0;
        foreach (var set in sets)
            count += set.Count;
        var pattern = new PatternCell[count];
        var next = 0;
        foreach (var set in sets)
        {
            foreach (var cell in set)
                pattern[next++] = new(cell, role);
        }

        return ImmutableCollectionsMarshal.AsImmutableArray(pattern);
    }

    /// <summary>Every cell of the parts in its role: part by part, each in reading order.</summary>
    internal static ImmutableArray<PatternCell> Each(params ReadOnlySpan<(Role Role, CellSet Cells)> parts)
    {
        var count = 0;
        foreach (var (_, cells) in parts)
            count += cells.Count;
        var pattern = new PatternCell[count];
        var next = 0;
        foreach (var (role, cells) in parts)
        {
            foreach (var cell in cells)
                pattern[next++] = new(cell, role);
        }

        return ImmutableCollectionsMarshal.AsImmutableArray(pattern);
    }
}
