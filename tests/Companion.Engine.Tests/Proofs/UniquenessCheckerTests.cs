using Companion.Engine.Proofs;
using Companion.Engine.Rules;
using Companion.Engine.Search;
using Companion.Engine.Tests.Rules;

namespace Companion.Engine.Tests.Proofs;

/// <summary>The checker of what assumes one solution: it knows nothing of the rules, and must agree with them.</summary>
public class UniquenessCheckerTests
{
    private static readonly IRule[] Family = [.. Ladder.Whole.Rules.Where(rule => rule.AssumesOneSolution)];

    public static TheoryData<string> Rules => [.. OneOfEachRule.AssumingOneSolution.Keys];

    [Fact]
    public void Each_rule_that_assumes_one_solution_is_drawn_here() =>
        Assert.Equal(Family.Select(rule => rule.Id.Value).Order(), OneOfEachRule.AssumingOneSolution.Keys.Order());

    [Theory]
    [MemberData(nameof(Rules))]
    public void A_good_deduction_holds(string rule)
    {
        var (board, deduction) = OneOfEachRule.On(rule);

        Assert.Equal(new ProofVerdict.Proven(), UniquenessChecker.Check(board, deduction));
    }

    [Theory]
    [MemberData(nameof(Rules))]
    public void The_other_checker_does_not_decide_it(string rule)
    {
        var (board, deduction) = OneOfEachRule.On(rule);

        var verdict = ProofChecker.Check(board, deduction);

        Assert.Equal(new ProofVerdict.NeedsOneSolution(), verdict);
        Assert.False(verdict.Holds);
        Assert.Equal("It holds only if the puzzle has one solution, which is not assumed here.", verdict.Sentence);
    }

    // The whole reach of each pattern: nothing that follows is refused and nothing else is proven.
    [Theory]
    [InlineData("unique-rectangle", "r2c4=58")]
    [InlineData("unique-rectangle-with-extra-digit", "c4=3 b2=3")]
    [InlineData("unique-rectangle-with-subset", "r2=13")]
    [InlineData("hidden-unique-rectangle", "r2c4=8")]
    public void A_pattern_proves_all_that_it_removes_and_nothing_else(string rule, string removed)
    {
        var (board, deduction) = OneOfEachRule.On(rule);
        var pattern = deduction.PatternCells;
        var expected = DrawnDeduction.Candidates(removed, pattern) & board.Candidates;

        // What goes by plain logic alone, such as 8 beside a naked pair, is not asked about.
        var proven = board.Candidates
            .Where(candidate => UniquenessChecker.Check(board, deduction.Removing(candidate)).Holds)
            .Where(candidate => !WithoutTheAssumption(board, deduction.Removing(candidate)));

        Assert.Equal(expected.ToString(), CandidateSet.Of([.. proven]).ToString());
    }

    // A link holds though its house has a third place, if a corner forced before sees that; and with a third candidate in another
    // cell of a grave some of its cells may still have an exchange among themselves. But links and graves are what is seen.
    [Theory]
    [InlineData("unique-rectangle")]
    [InlineData("unique-rectangle-with-extra-digit")]
    [InlineData("unique-rectangle-with-subset")]
    public void No_absent_candidate_of_a_minimal_pattern_can_be_spared(string rule)
    {
        var (_, deduction) = OneOfEachRule.On(rule);

        foreach (var spared in deduction.RestsOn)
        {
            var mutant = deduction.RestingOn(deduction.RestsOn.Without(spared));
            Assert.IsType<ProofVerdict.NotForced>(UniquenessChecker.Check(Board.Blank.Remove(mutant.RestsOn), mutant));
        }
    }

    [Fact]
    public void Every_deduction_on_the_ways_through_our_own_puzzles_holds()
    {
        var found = new HashSet<RuleId>();
        foreach (var (board, _) in SolvingPath.OwnPositions)
        {
            foreach (var deduction in Family.SelectMany(rule => RuleCheck.Find(rule, board)))
            {
                Assert.True(UniquenessChecker.Check(board, deduction).Holds, $"{deduction}\n{board}");
                found.Add(deduction.Rule);
            }
        }

        Assert.InRange(found.Count, Family.Length - 1, Family.Length); // A bivalue universal grave is rare.
    }

    [Fact]
    public void Every_deduction_on_positions_made_for_its_rule_holds()
    {
        foreach (var rule in Family)
        {
            foreach (var board in RarePositions.For(rule.Id.Value))
            {
                foreach (var deduction in RuleCheck.Find(rule, board))
                    Assert.True(UniquenessChecker.Check(board, deduction).Holds, $"{deduction}\n{board.Candidates}");
            }
        }
    }

    [Fact]
    public void No_true_digit_is_ever_proven_to_go_from_a_puzzle_with_one_solution()
    {
        var tried = 0;
        foreach (var (board, solution) in SolvingPath.OwnPositions)
        {
            foreach (var deduction in Family.SelectMany(rule => RuleCheck.Find(rule, board)))
            {
                foreach (var cell in deduction.PatternCells | deduction.Removes.Cells)
                {
                    var mutant = deduction.AlsoRemoving(new(cell, solution[cell]));
                    Assert.IsType<ProofVerdict.NotForced>(UniquenessChecker.Check(board, mutant));
                    tried++;
                }
            }
        }

        Assert.InRange(tried, 5_000, int.MaxValue);
    }

    [Fact]
    public void A_rectangle_in_four_blocks_has_no_exchange()
    {
        var deduction = DrawnDeduction.Read(
            "own 58 floor r1c1 r1c4 r5c1 roof r5c4 removes r5c4=58 rests r1c1=-58 r1c4=-58 r5c1=-58", assumesOneSolution: true);

        Assert.IsType<ProofVerdict.NotForced>(UniquenessChecker.Check(Board.Blank.Remove(deduction.RestsOn), deduction));
    }

    [Fact]
    public void A_filled_corner_may_be_a_given()
    {
        var (_, deduction) = OneOfEachRule.On("unique-rectangle");
        var board = Board.Blank.Place(Candidate.Parse("r1c1=5"));

        Assert.Equal(new ProofVerdict.FilledCell(Cell.Parse("r1c1")), UniquenessChecker.Check(board, deduction));
    }

    [Fact]
    public void With_several_solutions_the_assumption_proves_what_is_false()
    {
        var (board, deduction) = OneOfEachRule.On("unique-rectangle");

        Assert.True(UniquenessChecker.Check(board, deduction).Holds);
        Assert.Equal(1, SolutionCounter.Count(board.Place(Candidate.Parse("r2c4=8")), limit: 1));
    }

    private static bool WithoutTheAssumption(Board board, Deduction deduction) => ProofChecker.Check(board, new()
    {
        Rule = deduction.Rule,
        Cells = deduction.Cells,
        Houses = deduction.Houses,
        Digits = deduction.Digits,
        RestsOn = deduction.RestsOn,
        Removes = deduction.Removes,
    }).Holds;
}
