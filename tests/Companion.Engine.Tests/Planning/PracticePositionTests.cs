using Companion.Engine.Planning;
using Companion.Engine.Proofs;
using Companion.Engine.Rules;
using Companion.Engine.Tests.Rules;

namespace Companion.Engine.Tests.Planning;

public sealed class PracticePositionTests
{
    private static readonly Ladder Ladder = ShippedLadder.Ladder;

    public static TheoryData<string> Rules => ["naked-pair", "x-wing", "xy-wing", "unique-rectangle", "w-wing"];

    [Theory]
    [MemberData(nameof(Rules))]
    public void On_each_position_the_rule_is_open_and_nothing_easier_is_and_the_answer_is_proved(string rule)
    {
        var found = 0;
        foreach (var made in Made(rule, 3))
        {
            foreach (var position in PracticePosition.Along(made.Puzzle.Board, Ladder, new(rule), Stop))
            {
                found++;
                Assert.Null(Ladder.Below(new(rule)).Easiest(position.Board, Stop));
                var open = new Findings();
                Ladder[new(rule)].Rule.Find(position.Board, open);
                Assert.Contains(position.Answer, open);
                Assert.Equal(open.Count - 1, position.Others);
                Assert.True(Proved(position.Board, position.Answer));
                Assert.All(position.Answer.Removes, gone => Assert.False(made.Puzzle.Solution.Holds(gone)));
                Assert.All(open, other => Assert.True((other.Places | other.Removes).Count <= (position.Answer.Places | position.Answer.Removes).Count));
            }
        }

        Assert.True(found >= 3);
    }

    [Fact]
    public void The_board_is_made_again_from_its_digits_and_what_is_gone()
    {
        foreach (var made in Made("xy-wing", 5))
        {
            var position = PracticePosition.Along(made.Puzzle.Board, Ladder, new("xy-wing"), Stop).First();

            Assert.Equal(position.Board.Candidates, Board.Parse(position.Board.ToString()).Remove(position.Gone).Candidates);
        }
    }

    [Fact]
    public void A_board_is_a_position_only_where_nothing_easier_is_open()
    {
        var start = Made("xy-wing", 1)[0].Puzzle.Board;
        var position = PracticePosition.Along(start, Ladder, new("xy-wing"), Stop).First();

        Assert.Null(PracticePosition.On(start, Ladder, new("xy-wing"), Stop));
        Assert.Equal(position.Answer, PracticePosition.On(position.Board, Ladder, new("xy-wing"), Stop)!.Answer);
        Assert.Null(PracticePosition.On(position.Board, Ladder, new("x-wing"), Stop));
        Assert.Null(PracticePosition.On(Board.Parse(Solved(start)), Ladder, new("xy-wing"), Stop));
    }

    [Fact]
    public void No_two_are_from_one_puzzle_as_long_as_there_are_enough()
    {
        var (a, b, c) = (Positions("a", 3), Positions("b", 1), Positions("c", 2));

        Assert.Equal("a0 b0", Chosen([a, b, c], 2));
        Assert.Equal("a0 b0 c0 a1 a2", Chosen([a, b, c], 5));
        Assert.Equal("a0 b0 c0 a1 a2 c1", Chosen([a, b, c], 60));
        Assert.Equal("", Chosen([[], []], 3));
    }

    [Fact]
    public void The_same_position_twice_counts_once() => Assert.Equal("a0", Chosen([Positions("a", 1), Positions("a", 1)], 2));

    [Fact]
    public void Puzzles_behind_the_last_one_that_is_needed_are_not_looked_at()
    {
        var looked = 0;
        var puzzles = Enumerable.Range(0, 100).Select(number =>
        {
            looked++;
            return Positions($"{number}", 1);
        });

        PracticePosition.Choose(puzzles, 2);

        Assert.InRange(looked, 2, 3);
    }

    // Positions of one puzzle: boards that differ, each with a pattern of its own.
    private static List<PracticePosition> Positions(string puzzle, int count)
    {
        var first = puzzle.Sum(letter => letter) % 9 + 1;
        return [.. Enumerable.Range(0, count).Select(place => new PracticePosition(
            Board.Blank.Place(new(Cell.Of(1 + place, 1), Digit.Of(first))),
            new() { Rule = new("xy-wing"), Cells = [new(Cell.Of(5, 1 + place), Role.Pivot)], Digits = default },
            0)
        {
            Source = $"{puzzle}{place}",
        })];
    }

    private static string Chosen(IEnumerable<IEnumerable<PracticePosition>> puzzles, int count) =>
        string.Join(' ', PracticePosition.Choose(puzzles, count).Select(position => position.Source));

    private static string Solved(Board board) => Puzzle.Parse(board.ToString()).Solution.ToString();

    private static bool Proved(Board board, Deduction answer) =>
        (answer.AssumesOneSolution ? UniquenessChecker.Check(board, answer) : ProofChecker.Check(board, answer)).Holds;

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    private static List<MadePuzzle> Made(string rule, int count) =>
        [.. PuzzleMaker.Make(new(Ladder.WithoutLastResorts(), new(), [new(rule)]), 11, Environment.ProcessorCount, cancel: Stop).Take(count)];
}
