namespace Companion.Engine.Tests.Rules;

/// <summary>
/// Every rule found a second time, slowly, by going through all combinations and comparing them with the words of the
/// definition. Nothing is shared with the rules.
/// </summary>
internal static class LiteralFinders
{
    /// <summary>The finder of each rule by the rule's name.</summary>
    public static IReadOnlyDictionary<string, Func<LiteralGrid, HashSet<string>>> All { get; } =
        new Dictionary<string, Func<LiteralGrid, HashSet<string>>>
        {
            ["full-house"] = LiteralSingles.FullHouse,
            ["hidden-single"] = LiteralSingles.HiddenSingle,
            ["naked-single"] = LiteralSingles.NakedSingle,
            ["pointing"] = grid => LiteralLocked.Locked(grid, LiteralGrid.Blocks, LiteralGrid.Lines),
            ["claiming"] = grid => LiteralLocked.Locked(grid, LiteralGrid.Lines, LiteralGrid.Blocks),
            ["two-block-claiming"] = LiteralLocked.TwoBlockClaiming,
            ["naked-pair"] = grid => LiteralSubsets.Naked(grid, 2),
            ["naked-triple"] = grid => LiteralSubsets.Naked(grid, 3),
            ["naked-quad"] = grid => LiteralSubsets.Naked(grid, 4),
            ["hidden-pair"] = grid => LiteralSubsets.Hidden(grid, 2),
            ["hidden-triple"] = grid => LiteralSubsets.Hidden(grid, 3),
            ["hidden-quad"] = grid => LiteralSubsets.Hidden(grid, 4),
            ["x-wing"] = grid => LiteralSubsets.Fish(grid, 2),
            ["swordfish"] = grid => LiteralSubsets.Fish(grid, 3),
            ["jellyfish"] = grid => LiteralSubsets.Fish(grid, 4),
            ["xy-wing"] = LiteralWings.XYWing,
            ["xyz-wing"] = LiteralWings.XYZWing,
            ["wxyz-wing"] = LiteralWXYZWing.Find,
            ["two-sector-disjoint-subsets"] = LiteralDisjointSubsets.Find,
            ["w-wing"] = LiteralStrongLinks.WWing,
            ["two-strong-links"] = LiteralStrongLinks.TwoStrongLinks,
            ["empty-rectangle"] = LiteralStrongLinks.EmptyRectangle,
            ["simple-colouring"] = LiteralColours.SimpleColouring,
            ["remote-pairs"] = LiteralColours.RemotePairs,
            ["unique-rectangle"] = LiteralRectangles.UniqueRectangle,
            ["unique-rectangle-with-extra-digit"] = LiteralRectangles.WithExtraDigit,
            ["unique-rectangle-with-subset"] = LiteralRectangles.WithSubset,
            ["hidden-unique-rectangle"] = LiteralHiddenRectangle.Find,
            ["bivalue-universal-grave"] = LiteralGrave.Find,
            ["finned-x-wing"] = grid => LiteralFinnedFish.Find(grid, 2),
            ["finned-swordfish"] = grid => LiteralFinnedFish.Find(grid, 3),
            ["finned-jellyfish"] = grid => LiteralFinnedFish.Find(grid, 4),
        };
}
