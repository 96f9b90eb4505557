using System.Collections.Concurrent;
using Companion.Engine.Planning;
using Companion.Engine.Proofs;
using Companion.Engine.Rules;
using Companion.Engine.Search;
using Companion.Engine.Tests.Rules;
using Companion.Engine.Tests.Search;

namespace Companion.Engine.Tests.Planning;

public sealed class PuzzleMakerTests
{
    private static readonly Ladder Ladder = ShippedLadder.Ladder.WithoutUniqueness().UpTo(new("xyz-wing"));

    [Fact]
    public void What_is_made_follows_from_the_seed_and_not_from_how_many_cores_there_are()
    {
        var order = Wanting("naked-pair");

        Assert.Equal(Texts(order, seed: 5, cores: 1), Texts(order, seed: 5, cores: 3));
        Assert.NotEqual(Texts(order, seed: 5, cores: 1), Texts(order, seed: 6, cores: 1));
    }

    [Fact]
    public void The_seed_of_a_puzzle_makes_that_very_puzzle_first()
    {
        var order = Wanting("naked-pair");

        Assert.All(Made(order, seed: 5, cores: 2), made => Assert.Equal(
            (made.Seed, made.Puzzle.Board.ToString()),
            PuzzleMaker.Make(order, made.Seed, cores: 1, cancel: Stop).Select(again => (again.Seed, again.Puzzle.Board.ToString())).First()));
    }

    [Theory]
    [InlineData("naked-pair")]
    [InlineData("x-wing")]
    [InlineData("xy-wing")]
    [InlineData("hidden-pair,xy-wing")]
    public void Each_puzzle_needs_what_it_features_and_is_solved_by_the_ladder(string rules)
    {
        foreach (var made in Made(Wanting(rules.Split(',')), seed: 1, cores: 2))
        {
            Assert.All(rules.Split(','), rule =>
                Assert.Equal(Need.Needed, RuleNeed.Of(made.Puzzle.Board, Ladder, new(rule), Stop).Need));
            Assert.Equal(made.Puzzle.Solution.ToString(), made.Route.End.ToString());
            Assert.True(Minimality.IsMinimal(made.Puzzle));
        }
    }

    [Fact]
    public void A_constraint_solver_finds_the_one_solution_of_what_is_made()
    {
        Assert.All(Made(Wanting("xy-wing"), seed: 3, cores: 2), made =>
            Assert.Equal([made.Puzzle.Solution.ToString()], ConstraintSolver.Solutions(made.Puzzle.Board, limit: 2)));
    }

    // D. Berthier, CISSE 2009 (DOI 10.1007/978-90-481-9112-3_16), found 24.38 clues in the mean (from memory) and 41.76 % solved by
    // singles among minimal puzzles that a top-down generator made, 23.87 (from memory) and 46.27 % of a bottom-up one; 35.08 % is his
    // estimate for all minimal puzzles. Ours is top-down and must be biased like one: four standard deviations to each side.
    [Fact]
    public void Minimal_puzzles_are_biased_like_those_of_other_generators_that_take_away()
    {
        const int Count = 1_200;
        var boards = Enumerable.Range(20_000, Count).AsParallel().Select(seed => Generator.Make((ulong)seed, new() { Symmetry = null }).Board).ToList();

        Assert.Equal(24.38, boards.Average(board => board.Givens.Count), tolerance: 4 * 1.12 / Math.Sqrt(Count));
        Assert.Equal(
            0.4176,
            boards.Count(board => PuzzleCounts.Of(board).FilledAfterSingles == Cell.Count) / (double)Count,
            tolerance: 4 * Math.Sqrt(0.4176 * 0.5824 / Count));
    }

    [Fact]
    public void It_tells_how_many_it_tried_and_stops_when_asked()
    {
        using var cancel = new CancellationTokenSource();
        var told = new List<long>();
        var never = new Order(Ladder, new() { Symmetry = null }, [new("full-house"), new("xyz-wing")]);

        Assert.ThrowsAny<OperationCanceledException>(() =>
            PuzzleMaker.Make(never, 1, 1, new Telling(tried => Stop(tried)), cancel: cancel.Token).Take(1_000).Count());
        Assert.Equal([1, 2, 3], told);

        void Stop(long tried)
        {
            told.Add(tried);
            if (told.Count == 3)
                cancel.Cancel();
        }
    }

    [Fact]
    public void It_tries_no_more_than_it_is_told_on_however_many_cores()
    {
        var never = new Order(Ladder, new() { Symmetry = null }, [new("full-house"), new("xyz-wing")]);
        var told = new ConcurrentBag<long>();

        Assert.Empty(PuzzleMaker.Make(never, 1, 2, new Telling(told.Add), most: 150, cancel: Stop));
        Assert.Equal(Enumerable.Range(1, 150).Select(tried => (long)tried), told.Order());
    }

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    private static Order Wanting(params string[] rules) => new(Ladder, new() { Symmetry = null }, [.. rules.Select(rule => new RuleId(rule))]);

    private static List<MadePuzzle> Made(Order order, ulong seed, int cores) => [.. PuzzleMaker.Make(order, seed, cores, cancel: Stop).Take(4)];

    private static IEnumerable<string> Texts(Order order, ulong seed, int cores) =>
        Made(order, seed, cores).Select(made => $"{made.Seed} {made.Puzzle.Board}");

    private sealed class Telling(Action<long> tell) : IProgress<long>
    {
        public void Report(long value) => tell(value);
    }
}
