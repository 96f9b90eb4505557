using Companion.Engine.Proofs;
using static Companion.Engine.Tests.Rules.Literal;

namespace Companion.Engine.Tests.Rules;

using Place = (int Row, int Column);

/// <summary>Reads a chain or loop that a rule found, link by link, and compares it with the words of the definition.</summary>
internal static class LiteralChain
{
    /// <summary>Asserts that the links are what they say, follow each other by turns, and conclude what the deduction does.</summary>
    public static void AssertIsOne(Deduction deduction, LiteralGrid grid, bool groups = false)
    {
        var sets = deduction.Sets.Select(set => new LiteralSet([.. set.Select(Of)], Union([.. set.Select(Of)], grid.Candidates))).ToList();
        Check(sets.TrueForAll(set => set.Digits.Count == set.Cells.Count + 1), "its sets are almost locked");
        Check(sets.TrueForAll(set => LiteralGrid.Houses.Exists(house => set.Cells.TrueForAll(house.Has))), "its sets lie in a house");

        var links = deduction.Links.Select(link => (From: FromOf(link), To: ToOf(link), link.IsStrong)).ToList();
        var isLoop = !links[^1].IsStrong;
        for (var at = 0; at < links.Count; at++)
        {
            var (from, to, isStrong) = links[at];
            Check(isStrong == (at % 2 == 0), "strong and weak links take turns");
            Check(isStrong ? AreAll(from, to, grid) || SetOf(from, to) is not null : from.Excludes(to, withinCells: true), $"link {at + 1} is what it says");
            Check(at == 0 || from.Is(links[at - 1].To), "each link begins where the one before ends");
            Check(groups || from.Cells.Count == 1, "it goes by single candidates");
        }

        var nodes = links.Where(link => link.IsStrong).SelectMany(link => new[] { link.From, link.To }).ToList();
        for (var at = 1; at < nodes.Count; at++)
        {
            var closes = at == nodes.Count - 1 && nodes[at].Is(nodes[0]) && !isLoop;
            Check(closes || !nodes.Take(at).Any(nodes[at].Is), "it comes to no node twice");
        }

        if (isLoop)
            Check(links[^1].To.Is(links[0].From), "the loop closes");
        var both = isLoop ? links.FindAll(link => !link.IsStrong).ConvertAll(link => (link.From, link.To)) : [(links[0].From, links[^1].To)];
        var locked = isLoop ? links.Where(link => link.IsStrong && link.From.Digit != link.To.Digit).SelectMany(LockedOut).ToList() : [];
        var isPlacement = !isLoop && nodes[0].Is(nodes[^1]) && nodes[0].Cells.Count == 1;
        var placed = isPlacement ? nodes[0].Cells.Select(cell => (cell, nodes[0].Digit)) : [];
        var removed = isPlacement ? [] : Standing(grid).Where(candidate => both.Exists(pair =>
            candidate.Excludes(pair.Item1, withinCells: true) && candidate.Excludes(pair.Item2, withinCells: true))
            || locked.Exists(node => candidate.Excludes(node, withinCells: false)))
            .Select(candidate => (candidate.Cells[0], candidate.Digit));
        Assert.Equal(placed.Order(), Plain(deduction.Places));
        Assert.Equal(removed.Order(), Plain(deduction.Removes));

        LiteralSet? SetOf(LiteralNode one, LiteralNode other) => sets
            .Where(set => set.Digits.Contains(one.Digit) && set.Digits.Contains(other.Digit)
                && one.Is(set.Node(one.Digit, grid)) && other.Is(set.Node(other.Digit, grid)))
            .MinBy(set => set.Cells.Count);

        // In a loop a set holds all its digits but those that link it.
        IEnumerable<LiteralNode> LockedOut((LiteralNode From, LiteralNode To, bool) link) => SetOf(link.From, link.To) is { } set
            ? set.Digits.Except([link.From.Digit, link.To.Digit]).Select(digit => set.Node(digit, grid))
            : [];

        void Check(bool holds, string what)
        {
            if (!holds)
                Assert.Fail($"It must hold that {what}: {deduction} {string.Join(", ", deduction.Links)}");
        }
    }

    /// <summary>The candidates of a set as plain numbers, in order.</summary>
    public static IEnumerable<(Place Cell, int Digit)> Plain(CandidateSet candidates) =>
        candidates.Select(candidate => (Of(candidate.Cell), candidate.Digit.Value)).Order();

    private static LiteralNode FromOf(Link link) => NodeOf(link.From, link.FromGroup);

    private static LiteralNode ToOf(Link link) => NodeOf(link.To, link.ToGroup);

    private static LiteralNode NodeOf(Candidate candidate, CellSet group)
    {
        Assert.True(group.IsEmpty || (group.Count > 1 && group.Contains(candidate.Cell)));
        return new(candidate.Digit.Value, group.IsEmpty ? [Of(candidate.Cell)] : [.. group.Select(Of)]);
    }

    private static Place Of(Cell cell) => (cell.Row, cell.Column);

    private static IEnumerable<LiteralNode> Standing(LiteralGrid grid) =>
        LiteralGrid.AllCells.SelectMany(cell => grid.Candidates(cell).Select(digit => new LiteralNode(digit, [cell])));

    // Whether one of the two must be true: the two candidates of a cell, or all places of a digit in a house.
    private static bool AreAll(LiteralNode one, LiteralNode other, LiteralGrid grid)
    {
        if (one.Digit != other.Digit)
            return one.Cells.Count == 1 && one.Cells.SequenceEqual(other.Cells) && grid.Candidates(one.Cells[0]).Count == 2;
        return LiteralGrid.Houses.Exists(house => grid.Places(house, one.Digit).SequenceEqual(one.Cells.Concat(other.Cells).Order()));
    }
}
