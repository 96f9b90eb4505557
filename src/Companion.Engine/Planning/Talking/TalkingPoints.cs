using System.Collections.Immutable;
using Companion.Engine.Proofs;
using Companion.Engine.Rules;
using Companion.Engine.Search;

namespace Companion.Engine.Planning.Talking;

/// <summary>Finds what is worth saying about a planned route.</summary>
public static class TalkingPoints
{
    private static readonly ImmutableArray<IRule> Singles = [new FullHouse(), new HiddenSingle(), new NakedSingle()];
    private static readonly ImmutableHashSet<RuleId> SingleRules = [.. Singles.Select(rule => rule.Id)];
    private static readonly RuleId XYWing = new XYWing().Id;
    private static readonly ImmutableHashSet<RuleId> Wings = [XYWing, new XYZWing().Id];
    private static readonly ImmutableHashSet<RuleId> Pairs = [new NakedPair().Id, new HiddenPair().Id];

    /// <summary>Everything that can be said, in the order of the steps.</summary>
    /// <param name="plan">The route.</param>
    public static IEnumerable<TalkingPoint> Of(RunPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var told = new HashSet<RuleId>();
        for (var at = 0; at < plan.Steps.Length; at++)
        {
            var step = plan.Steps[at];
            if (SingleRules.Contains(step.Deduction.Rule))
                continue;
            if (told.Add(step.Deduction.Rule) && IsNeeded(plan, step))
                yield return new TalkingPoint.Needs(at, step.Deduction.Rule);
            foreach (var point in OfWing(step, at).Concat(OfPair(step, at)).Concat(OfEffect(step, at)).Concat(OneInTheWay(plan, at)))
                yield return point;
        }

        foreach (var point in OfRoute(plan))
            yield return point;
    }

    // A featured rule may have its turn where easier ones lead to the solution: such a detour is not needed.
    private static bool IsNeeded(RunPlan plan, PlannedStep step) =>
        !step.IsFeatured || !Route.From(plan.Start, plan.Ladder.Below(step.Deduction.Rule)).IsComplete;

    private static IEnumerable<TalkingPoint> OfWing(PlannedStep step, int at)
    {
        if (!Wings.Contains(step.Deduction.Rule))
            yield break;
        var pivot = step.Deduction.Cells.First(cell => cell.Role == Role.Pivot).Cell;
        var pincers = step.Deduction.PatternCells.Without(pivot);
        yield return new TalkingPoint.BivalueCells(at, step.Deduction.Rule, step.Board.CellsWith(2).Count);
        // Of every XYZ-wing one pincer lies there, or nothing would see all three cells: that is no remark.
        foreach (var pincer in pincers.Where(pincer => step.Deduction.Rule == XYWing && pincer.Block == pivot.Block))
            yield return new TalkingPoint.PincerInBlock(at, pivot, pincer, House.Block(pivot.Block));
        if (step.Deduction.PatternCells.Select(cell => cell.Block).Distinct().Count() == 3)
            yield return new TalkingPoint.WingOverThreeBlocks(at, pivot, pincers);

        var others = new Findings();
        step.Rung.Rule.Find(step.Board, others);
        if (others.FirstOrDefault(other => other.PatternCells != step.Deduction.PatternCells
            && other.Cells.Any(cell => cell.Role == Role.Pivot && cell.Cell == pivot)) is { } second)
        {
            yield return new TalkingPoint.PivotOfTwoWings(at, pivot, second.PatternCells.Without(pivot));
        }
    }

    private static IEnumerable<TalkingPoint> OfPair(PlannedStep step, int at)
    {
        var cells = step.Deduction.PatternCells;
        var common = cells.CommonHouses.ToList();
        if (Pairs.Contains(step.Deduction.Rule) && common.Count == 2 && common.TrueForAll(house => IsPair(step.Board, house, cells, step.Deduction.Digits)))
            yield return new TalkingPoint.PairInTwoHouses(at, cells, step.Deduction.Digits, common.Find(house => house.IsLine), common.Find(house => !house.IsLine));
    }

    // Naked, the cells hold nothing else; hidden, the house has no other places. Either is a pair of the house.
    private static bool IsPair(Board board, House house, CellSet cells, DigitSet digits) =>
        cells.All(cell => digits.ContainsAll(board[cell])) || digits.All(digit => cells.ContainsAll(board[digit] & house.Cells));

    private static IEnumerable<TalkingPoint> OfEffect(PlannedStep step, int at)
    {
        var after = step.Board.Apply(step.Deduction);
        foreach (var digit in step.Deduction.Removes.Digits)
        {
            for (var number = 1; number <= 9; number++)
            {
                var block = House.Block(number);
                if ((step.Board[digit] & block.Cells).Count == 2 && (after[digit] & block.Cells) is { Count: 1 } left)
                    yield return new TalkingPoint.BlockDecided(at, block, digit, left.First);
            }
        }

        // Without what the step places itself, which is no work of singles.
        var filled = (Fixpoint.Of(after, Singles).Filled - Fixpoint.Of(step.Board, Singles).Filled - step.Deduction.Places.Cells).Count;
        if (filled > 0)
            yield return new TalkingPoint.Fills(at, filled);
    }

    // The earliest step before which nothing but one candidate was in the way, and it stood there until this one.
    private static IEnumerable<TalkingPoint> OneInTheWay(RunPlan plan, int at)
    {
        TalkingPoint.OneInTheWay? point = null;
        for (var earlier = at - 1; earlier >= 0; earlier--)
        {
            var before = plan.Steps[earlier].Board;
            var standing = before.Candidates & plan.Steps[at].Deduction.RestsOn;
            if (standing.Count != 1 || standing.First() != (point?.InTheWay ?? standing.First()) || !Pruning.IsProved(before.Remove(standing), plan.Steps[at].Deduction))
                break;
            point = new(at, standing.First(), earlier);
        }

        return point is null ? [] : [point];
    }

    private static IEnumerable<TalkingPoint> OfRoute(RunPlan plan)
    {
        if (plan.Steps.IsEmpty)
            yield break;
        var blocks = Enumerable.Range(1, 9).Select(House.Block)
            .Select(block => (Block: block, Steps: RestingSteps.CountOf(plan, block))).OrderByDescending(its => its.Steps).ToList();
        if (blocks[0].Steps > Math.Max(1, blocks[1].Steps))
            yield return new TalkingPoint.KeyBlock(blocks[0].Block, blocks[0].Steps, plan.Steps.Length);
        if (Digit.All.Any(digit => IsFinished(plan.Start, digit)))
            yield break;
        for (var at = 0; at < plan.Steps.Length; at++)
        {
            var after = plan.Steps[at].Board.Apply(plan.Steps[at].Deduction);
            foreach (var digit in plan.Steps[at].Deduction.Places.Digits.Where(digit => IsFinished(after, digit)))
            {
                yield return new TalkingPoint.FirstDigit(digit, at);
                yield break;
            }
        }
    }

    private static bool IsFinished(Board board, Digit digit) => board.Filled.Count(cell => board.DigitAt(cell) == digit) == 9;
}
