using System.Collections.Immutable;
using System.Text.Json;
using Companion.Engine;
using Companion.Engine.Planning;
using Companion.Engine.Planning.Talking;
using Companion.Engine.Proofs;

namespace Companion.Server.Planning;

/// <summary>What a talking point rests on; what a kind has not is empty or null.</summary>
/// <param name="Kind">The kind of remark, in kebab case: <c>pivot-of-two-wings</c>.</param>
/// <param name="Cells">
/// The cells: of a wing the pivot first; of <c>bivalue-cells</c> all of them; the cell that is decided, or that the candidate in the
/// way stands in.
/// </param>
/// <param name="Digits">The digits.</param>
/// <param name="Houses">The houses, as in <c>block 5</c>.</param>
/// <param name="Rule">The rule, where it is about one.</param>
/// <param name="Count">
/// How many: cells, steps, or for <c>needs</c> puzzles; for <c>one-in-the-way</c> for how many steps before it the candidate was the
/// only one in the way.
/// </param>
/// <param name="OutOf">Out of how many steps, or for <c>needs</c> puzzles that were counted.</param>
public sealed record PointFacts(
    string Kind, ImmutableArray<Cell> Cells, DigitSet Digits, ImmutableArray<string> Houses, RuleId? Rule, int? Count, int? OutOf)
{
    /// <summary>The facts of a remark.</summary>
    /// <param name="point">The remark.</param>
    /// <param name="plan">The route that it is about.</param>
    /// <param name="rarity">How often such remarks are true.</param>
    internal static PointFacts Of(TalkingPoint point, RunPlan plan, Rarity rarity)
    {
        var none = new PointFacts(JsonNamingPolicy.KebabCaseLower.ConvertName(point.GetType().Name), [], DigitSet.Empty, [], null, null, null);
        return point switch
        {
            TalkingPoint.PincerInBlock its => none with { Cells = [its.Pivot, its.Pincer], Houses = Names(its.Block) },
            TalkingPoint.WingOverThreeBlocks its => none with
            {
                Cells = [its.Pivot, .. its.Pincers],
                Houses = Names([.. its.Pincers.With(its.Pivot).Select(cell => cell.Block).Order().Select(House.Block)]),
            },
            TalkingPoint.PivotOfTwoWings its => none with { Cells = [its.Pivot, .. its.Other] },
            TalkingPoint.PairInTwoHouses its => none with { Cells = [.. its.Cells], Digits = its.Digits, Houses = Names(its.Line, its.Block) },
            TalkingPoint.BivalueCells its => none with { Cells = BivalueCells(plan.Steps[its.At].Board), Rule = its.Rule, Count = its.Count },
            TalkingPoint.BlockDecided its => none with { Cells = [its.Cell], Digits = DigitSet.Of(its.Digit), Houses = Names(its.Block) },
            TalkingPoint.Fills its => none with { Count = its.Cells },
            TalkingPoint.OneInTheWay its => none with
            {
                Cells = [its.InTheWay.Cell],
                Digits = DigitSet.Of(its.InTheWay.Digit),
                Count = its.At - its.Earlier,
            },
            TalkingPoint.Needs its => none with { Rule = its.Rule, Count = rarity.CountOf(its), OutOf = rarity.Puzzles },
            TalkingPoint.KeyBlock its => none with { Houses = Names(its.Block), Count = its.Steps, OutOf = its.All },
            TalkingPoint.FirstDigit its => none with { Digits = DigitSet.Of(its.Digit) },
            _ => throw new ArgumentOutOfRangeException(nameof(point)),
        };
    }

    private static ImmutableArray<Cell> BivalueCells(Board board) => [.. board.Open.Where(cell => board[cell].Count == 2)];

    private static ImmutableArray<string> Names(params ReadOnlySpan<House> houses)
    {
        var names = ImmutableArray.CreateBuilder<string>(houses.Length);
        foreach (var house in houses)
            names.Add($"{house.Kind.ToString().ToLowerInvariant()} {house.Number}");
        return names.ToImmutable();
    }
}
