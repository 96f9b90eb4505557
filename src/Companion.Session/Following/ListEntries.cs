using System.Collections.Immutable;
using Companion.Engine;
using Companion.Session.Commands;

namespace Companion.Session.Following;

/// <summary>
/// The entries that write digits into candidate lists. A list counts once an entry is made elsewhere, so that none may be left half
/// written: cells with the same additions are written together, one such group after the other.
/// </summary>
internal static class ListEntries
{
    /// <summary>What is written into the list of one cell.</summary>
    /// <param name="Cell">The cell.</param>
    /// <param name="Before">What stands there already.</param>
    /// <param name="Added">What comes to it.</param>
    public readonly record struct Addition(Cell Cell, DigitSet Before, DigitSet Added);

    /// <summary>The entries, in order.</summary>
    /// <param name="additions">What is written, in reading order.</param>
    public static ImmutableArray<Command> For(IReadOnlyList<Addition> additions)
    {
        var written = additions.Where(each => !each.Added.IsEmpty).ToList();
        var groups = written.GroupBy(each => each.Added).ToList();
        var byGroup = groups.Sum(group => group.Key.Count);
        var taken = Surplus(written);
        return byGroup <= Digit.Count + taken.Length || written.Any(each => !each.Before.IsEmpty)
            ? [.. groups.SelectMany(group => group.Key.Select(digit => Toggle(group, digit)))]
            : [.. Digit.All.Select(digit => Toggle(written, digit)), .. taken];
    }

    // All candidates at once would be hundreds of entries. A full list says nothing: it is written everywhere, and what is not on the
    // screen is taken out, which leaves each list at every moment no shorter than it is meant.
    private static ImmutableArray<Command> Surplus(IReadOnlyList<Addition> written) =>
    [
        .. Digit.All.Select(digit => (digit, cells: written.Where(each => !each.Added.Contains(digit)).ToList()))
            .Where(each => each.cells.Count > 0).Select(each => Toggle(each.cells, each.digit)),
    ];

    private static ToggleCellMark Toggle(IEnumerable<Addition> cells, Digit digit) =>
        new ToggleCellMark(CellSet.Of([.. cells.Select(each => each.Cell)]), digit);
}
