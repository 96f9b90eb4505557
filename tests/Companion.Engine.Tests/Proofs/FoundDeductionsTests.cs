using Companion.Engine.Proofs;
using Companion.Engine.Rules;
using Companion.Engine.Tests.Rules;

namespace Companion.Engine.Tests.Proofs;

/// <summary>The rules and the checker know nothing of each other, and must agree.</summary>
public class FoundDeductionsTests
{
    // By argument, not by luck: with one of the absent candidates back, there is always a way to fill the pattern against the
    // conclusion. Not so where a removed cell happens to see that candidate (a fish, an XY-wing), or where a second house of
    // a naked subset happens to need its digits there.
    private static readonly string[] RestOnEach =
    [
        "hidden-single", "naked-single", "pointing", "claiming", "two-block-claiming",
        "hidden-pair", "hidden-triple", "hidden-quad", "xyz-wing",
    ];

    // Their proof is that the house needs the digit. A fish can lose a base line where another cell of the block helps out.
    private static readonly string[] NeedEachHouse =
    [
        "full-house", "hidden-single", "pointing", "claiming", "two-block-claiming",
        "hidden-pair", "hidden-triple", "hidden-quad",
    ];

    // Two colours go along every link, though for one cell that goes a single way through would do.
    private static readonly string[] RestOnMore = ["simple-colouring", "remote-pairs"];

    private static readonly IReadOnlyList<RuleId> LastResorts =
        [.. Ladder.Standard.Rules.Where(rule => rule.Effort == Effort.LastResort).Select(rule => rule.Id)];

    [Fact]
    public void Every_deduction_of_every_rule_holds()
    {
        var found = new HashSet<RuleId>();
        foreach (var (board, deduction) in Found(positions: 500, seed: 1))
        {
            Assert.True(ProofChecker.Check(board, deduction).Holds, $"{deduction}\n{board}\n{board.Candidates}");
            found.Add(deduction.Rule);
        }

        Assert.All(Ladder.Standard.WithoutLastResorts().Rules, rule => Assert.Contains(rule.Id, found));
    }

    [Fact]
    public void Every_deduction_of_the_last_resorts_holds_where_nothing_else_helps()
    {
        var found = new HashSet<RuleId>();
        foreach (var board in NetPositions.All)
        {
            foreach (var deduction in Ladder.Standard.Scan(board, Effort.LastResort, TestContext.Current.CancellationToken))
            {
                Assert.True(ProofChecker.Check(board, deduction).Holds, $"{deduction}\n{board}\n{board.Candidates}");
                found.Add(deduction.Rule);
            }
        }

        Assert.All(LastResorts, rule => Assert.Contains(rule, found));
    }

    [Fact]
    public void Every_deduction_on_the_way_through_95_hard_puzzles_holds()
    {
        // P. Norvig, "Solving Any Sudoku Puzzle" (2006): its 95 hard puzzles.
        foreach (var puzzle in OpenData.Lines("essay-top95.txt"))
        {
            for (var board = Board.Parse(puzzle); ;)
            {
                var found = Ladder.Standard.Scan(board, TestContext.Current.CancellationToken);
                foreach (var deduction in found)
                    Assert.True(ProofChecker.Check(board, deduction).Holds, $"{deduction}\n{board}");
                if (found.Count == 0)
                    break;
                board = board.Apply(found[0]);
            }
        }
    }

    [Fact]
    public void No_true_digit_is_ever_proven_to_go()
    {
        var (tried, tooWide) = (0, 0);
        foreach (var (board, deduction) in Found(positions: 200, seed: 2))
        {
            foreach (var cell in deduction.PatternCells | deduction.Removes.Cells)
            {
                var mutant = deduction.AlsoRemoving(new(cell, TruePositions.TrueDigit(cell)));
                var verdict = ProofChecker.Check(board, mutant);
                if (verdict is not ProofVerdict.TooWide) // Of a forcing chain with many cells, now and then.
                    Assert.IsType<ProofVerdict.NotForced>(verdict);
                tooWide += verdict is ProofVerdict.TooWide ? 1 : 0;
                tried++;
            }
        }

        Assert.InRange(tried, 5_000, int.MaxValue);
        Assert.InRange(tooWide, 0, tried / 1_000);
    }

    [Fact]
    public void A_deduction_without_one_of_the_absent_candidates_is_refused()
    {
        var refusals = Count(seed: 3, static deduction => deduction.RestsOn
            .Select(spared => deduction.RestingOn(deduction.RestsOn.Without(spared))));

        Assert.All(RestOnEach, rule => Assert.Equal(1, refusals[rule].Share));
        foreach (var rule in refusals.Keys.Except(["full-house", "nested-forcing-net"])) // It rests on no absent candidate; a last resort is not tried here.
        {
            Assert.InRange(refusals[rule].Tried, 200, int.MaxValue);
            Assert.InRange(refusals[rule].Share, RestOnMore.Contains(rule) ? 0.3 : 0.5, 1);
        }
    }

    [Fact]
    public void A_deduction_without_one_of_its_houses_is_refused_where_the_house_is_the_argument()
    {
        var refusals = Count(seed: 4, static deduction => deduction.Houses
            .Select(house => deduction.About(deduction.Houses - HouseSet.Of(house), deduction.Digits)));

        Assert.All(NeedEachHouse, rule => Assert.Equal(1, refusals[rule].Share));
        Assert.All(NeedEachHouse, rule => Assert.InRange(refusals[rule].Tried, 20, int.MaxValue));
    }

    private static IEnumerable<(Board Board, Deduction Deduction)> Found(int positions, int seed) =>
        from board in TruePositions.Of(positions, seed)
        from deduction in Ladder.Standard.Scan(board).Concat(Ladder.Standard.Scan(board, Effort.LastResort))
        select (board, deduction);

    private static IEnumerable<(Board Board, Deduction Deduction)> FoundRare() =>
        from rule in Ladder.Standard.Rules
        where RarePositions.Has(rule.Id.Value)
        from board in RarePositions.For(rule.Id.Value)
        from deduction in RuleCheck.Find(rule, board)
        select (board, deduction);

    private static Dictionary<string, Refusals> Count(int seed, Func<Deduction, IEnumerable<Deduction>> mutate)
    {
        var refusals = Ladder.Standard.Rules.ToDictionary(rule => rule.Id.Value, _ => new Refusals());
        foreach (var (board, deduction) in Found(positions: 200, seed).Concat(FoundRare()))
        {
            foreach (var mutant in mutate(deduction))
                refusals[deduction.Rule.Value].Add(refused: !ProofChecker.Check(board, mutant).Holds);
        }

        return refusals;
    }

    private sealed class Refusals
    {
        private int _refused;

        internal int Tried { get; private set; }

        internal double Share => _refused / (double)Tried;

        internal void Add(bool refused)
        {
            Tried++;
            _refused += refused ? 1 : 0;
        }
    }
}
