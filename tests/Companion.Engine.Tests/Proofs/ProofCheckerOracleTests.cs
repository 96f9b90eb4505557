using Companion.Engine.Proofs;

namespace Companion.Engine.Tests.Proofs;

public class ProofCheckerOracleTests
{
    // With many digits named, most cells are to be filled with one of them, so that sets and houses decide much.
    [Theory]
    [InlineData(0, 0.35)]
    [InlineData(5_000, 0.6)]
    [InlineData(10_000, 0.8)]
    public void The_checker_agrees_with_writing_every_digit_into_every_named_cell(int firstSeed, double named)
    {
        var (proven, refused) = (0, 0);
        for (var seed = firstSeed; seed < firstSeed + 5_000; seed++)
        {
            var (board, deduction) = RandomClaim(new Random(seed), named);
            if ((deduction.Places | deduction.Removes).IsEmpty)
                continue;

            var holds = ProofChecker.Check(board, deduction).Holds;

            Assert.True(holds == ExhaustiveEnumeration.Follows(board, deduction), $"seed {seed}: {deduction}\n{board}");
            _ = holds ? proven++ : refused++;
        }

        // The claims are mixed enough for an answer that is always the same to fail.
        Assert.InRange(proven, 400, int.MaxValue);
        Assert.InRange(refused, 400, int.MaxValue);
    }

    // A few open cells in one corner of a full grid, some of their absent candidates, sets of them that may mean something or not,
    // and a claim that may be right or wrong.
    private static (Board Board, Deduction Deduction) RandomClaim(Random random, double shareOfNamed)
    {
        var corner = House.Row(1).Cells | House.Row(2).Cells | House.Block(1).Cells;
        var open = CellSet.Of([.. corner.Where(_ => random.NextDouble() < 0.35)]);
        var board = TruePositions.Opened(open);
        var pattern = open.Where(_ => random.NextDouble() < 0.4).Take(4).ToList();
        House[] corners = [House.Row(1), House.Row(2), House.Block(1)];
        var houses = HouseSet.Of([.. corners.Where(house => (house.Cells & open).Count <= 4 && random.NextDouble() < 0.4)]);
        var named = DigitSet.Of([.. Digit.All.Where(_ => random.NextDouble() < shareOfNamed)]);
        var absent = CandidateSet.Of(open, DigitSet.All) - board.Candidates;
        var restsOn = CandidateSet.Of([.. absent.Where(_ => random.NextDouble() < 0.9)]);
        var claim = CandidateSet.Of([.. board.Candidates.Where(_ => random.NextDouble() < 0.1).Take(2)]);
        var places = random.NextDouble() < 0.5;
        CellSet[] sets = [.. corners.Select(house => CellSet.Of([.. (house.Cells & open).Where(_ => random.NextDouble() < 0.6)]))];
        return (board, new Deduction
        {
            Rule = new("own"),
            Cells = [.. pattern.Select(cell => new PatternCell(cell, Role.Subset))],
            Houses = houses,
            Digits = named,
            Sets = [.. sets.Where(set => !set.IsEmpty)],
            RestsOn = restsOn,
            Places = places ? claim : default,
            Removes = places ? default : claim,
        });
    }
}
