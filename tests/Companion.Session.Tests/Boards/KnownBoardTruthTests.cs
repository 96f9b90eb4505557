using Companion.Engine;
using Companion.Session.Boards;
using Companion.Session.Commands;

namespace Companion.Session.Tests.Boards;

/// <summary>
/// Plays sloppily: wrong digits and strikes, deductions said on the wrong board that they make, and all of it taken back and done
/// right. The known board of a right grid must not have lost a true candidate to what was said.
/// </summary>
public sealed class KnownBoardTruthTests
{
    [Theory]
    [MemberData(nameof(ReplayTests.FewSeeds), MemberType = typeof(ReplayTests))]
    public void What_was_said_on_a_wrong_board_costs_a_right_one_no_true_candidate(int seed)
    {
        var random = new Random(seed);
        var session = PlayedSession.Of(seed % 2 == 0 ? Puzzles.Demo : Puzzles.Hard);
        var solution = session.State.Grid.Puzzle!.Solution;
        for (var round = 0; round < 40; round++)
        {
            var slips = Enumerable.Range(0, 3).Count(_ => Slip(session, random));
            var open = session.Scan().Open.Where(found => !found.Deduction.Removes.IsEmpty).ToArray();
            foreach (var found in open.Length == 0 ? [] : random.GetItems(open, 12))
                session.Try(new MarkUsed(found.Deduction));
            for (; slips > 0; slips--)
                session.Undo();
            HoldsTheTruth(session, solution);

            var candidate = Any(session.State.Grid.Filled, random);
            session.Do(new PlaceDigit(candidate.Cell, solution[candidate.Cell]));
            HoldsTheTruth(session, solution);
        }
    }

    private static void HoldsTheTruth(PlayedSession session, Solution solution)
    {
        var open = ~session.State.Grid.Filled;
        var truth = CandidateSet.Of([.. open.Select(cell => new Candidate(cell, solution[cell]))]);
        Assert.Equal(truth, KnownBoard.Of(session.State).Value!.Candidates & truth);
    }

    // Any digit or strike that leaves a board that can be scanned, as slips do that are not noticed at once.
    private static bool Slip(PlayedSession session, Random random)
    {
        var (cell, digit) = Any(session.State.Grid.Filled, random);
        session.Do(random.Next(2) == 0 ? new PlaceDigit(cell, digit) : new ToggleStrike(CellSet.Of(cell), digit));
        if (KnownBoard.Of(session.State) is { Value: { } known } && !Contradiction.On(known).Any())
            return true;
        session.Undo();
        return false;
    }

    private static Candidate Any(CellSet filled, Random random) =>
        new((~filled).ElementAt(random.Next((~filled).Count)), Digit.Of(random.Next(1, 10)));
}
