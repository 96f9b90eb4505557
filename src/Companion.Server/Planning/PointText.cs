using System.Globalization;
using Companion.Engine;
using Companion.Engine.Planning.Talking;
using Companion.Engine.Proofs;

namespace Companion.Server.Planning;

/// <summary>Says a talking point.</summary>
internal static class PointText
{
    /// <summary>The remark in one sentence.</summary>
    /// <param name="point">The remark.</param>
    /// <param name="wording">The names of rules.</param>
    /// <param name="rarity">How often such remarks are true.</param>
    public static string Of(TalkingPoint point, Wording wording, Rarity rarity) => point switch
    {
        TalkingPoint.PincerInBlock its => $"The pincer {its.Pincer} lies in the pivot's block, block {its.Block.Number}.",
        TalkingPoint.WingOverThreeBlocks its => $"The wing spans three blocks: pivot {its.Pivot}, pincers {Cells(its.Pincers)}.",
        TalkingPoint.PivotOfTwoWings its => $"The pivot {its.Pivot} serves a second wing, with {Cells(its.Other)}.",
        TalkingPoint.PairInTwoHouses its =>
            $"{Digits(its.Digits)} in {Cells(its.Cells)} are a pair in {Name(its.Line)} and in {Name(its.Block)} at once.",
        TalkingPoint.BivalueCells its => $"{its.Count} bivalue cells stand when this {wording.NameOf(its.Rule)} is open.",
        TalkingPoint.BlockDecided its => $"It decides between two places: the {its.Digit} of block {its.Block.Number} goes in {its.Cell}.",
        TalkingPoint.Fills { Cells: 1 } => "It lets singles fill one more cell.",
        TalkingPoint.Fills its => $"It lets singles alone fill {its.Cells} more cells.",
        TalkingPoint.OneInTheWay its when its.At == its.Earlier + 1 => $"Until the step before it only {its.InTheWay} was in its way.",
        TalkingPoint.OneInTheWay its => $"For {its.At - its.Earlier} steps before it only {its.InTheWay} was in its way.",
        TalkingPoint.Needs its when !rarity.IsKnown(its) => $"None of the {rarity.Puzzles} puzzles counted comes to {wording.OneOf(its.Rule)} on its way; this one does.",
        TalkingPoint.Needs its => $"{Often(its, rarity)} {(rarity.OneIn(its) < 2 ? "come" : "comes")} to {wording.OneOf(its.Rule)} on the way.",
        TalkingPoint.KeyBlock its => $"{its.Steps} of the {its.All} steps ahead rest on what is placed or goes in block {its.Block.Number}, more than on any other.",
        TalkingPoint.FirstDigit its => $"The {its.Digit}s are the first to be finished.",
        _ => throw new ArgumentOutOfRangeException(nameof(point)),
    };

    // One puzzle in 40; most of those that are had by more than half.
    private static string Often(TalkingPoint point, Rarity rarity) => rarity.OneIn(point) switch
    {
        null => "Puzzles",
        < 2 => $"{100 / rarity.OneIn(point)!.Value:F0} of 100 puzzles",
        { } oneIn => string.Create(CultureInfo.InvariantCulture, $"One puzzle in {oneIn:F0}"),
    };

    private static string Cells(CellSet cells) => string.Join(" and ", cells);

    private static string Digits(DigitSet digits) => string.Join(" and ", digits);

    private static string Name(House house) => $"{house.Kind.ToString().ToLowerInvariant()} {house.Number}";
}
