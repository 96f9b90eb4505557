using Companion.Engine.Proofs;
using Companion.Engine.Rules;

namespace Companion.Engine.Tests.Rules;

/// <summary>Every net that a last resort finds is gone through step by step, on the board that is supposed.</summary>
public sealed class NetStepsTests(ITestOutputHelper output)
{
    public static TheoryData<string> Rules => [.. NetRules.All];

    [Theory]
    [MemberData(nameof(Rules))]
    public void Each_step_follows_from_those_before_it_and_the_last_one_leaves_nothing_where_it_says(string name)
    {
        var (nets, steps, within) = (0, 0, 0);
        foreach (var board in NetPositions.All)
        {
            foreach (var net in RuleCheck.Find(Rule(name), board))
            {
                var branch = Assert.Single(net.Branches);
                Assert.Equal(CandidateSet.Of(branch.Supposed), net.Removes);
                GoThrough(board, branch);
                nets++;
                steps += branch.Steps.Length;
                within += branch.Steps.Sum(step => step.Branches.Length);
            }
        }

        output.WriteLine($"{name}: {nets} nets, {steps} steps, {within} suppositions within.");
        Assert.True(nets > 40);
        Assert.Equal(name == "nested-forcing-net", within > 0);
    }

    [Theory]
    [MemberData(nameof(Rules))]
    public void Without_any_of_its_steps_a_net_does_not_come_to_its_end(string name)
    {
        foreach (var board in NetPositions.All.Where((_, place) => place % 3 == 0))
        {
            foreach (var branch in RuleCheck.Find(Rule(name), board).SelectMany(net => net.Branches))
            {
                for (var left = 0; left < branch.Steps.Length; left++)
                    Assert.False(ComesToItsEnd(board, branch with { Steps = branch.Steps.RemoveAt(left) }), $"{branch.Supposed} on {board}");
            }
        }
    }

    [Theory]
    [MemberData(nameof(Rules))]
    public void A_last_resort_that_is_called_off_adds_nothing_more(string name)
    {
        using var cancel = new CancellationTokenSource();
        var found = new Findings(cancel: cancel.Token);
        cancel.Cancel();

        Rule(name).Find(NetPositions.All[0], found);

        Assert.Empty(found);
    }

    private static void GoThrough(Board real, Branch branch)
    {
        var board = real.Place(branch.Supposed);
        foreach (var step in branch.Steps)
        {
            Assert.True(ProofChecker.Check(board, step).Holds, $"{step} on {board}");
            foreach (var within in step.Branches)
                GoThrough(board, within);
            board = board.Apply(step);
        }

        Assert.True(IsAt(branch.End, board));
    }

    // Each step that still holds is made, and those after it that still hold.
    private static bool ComesToItsEnd(Board real, Branch branch)
    {
        var board = real.Place(branch.Supposed);
        foreach (var step in branch.Steps)
        {
            if ((step.RestsOn & board.Candidates).IsEmpty && board.Candidates.ContainsAll(step.Places) && ProofChecker.Check(board, step).Holds)
                board = board.Apply(step);
        }

        return IsAt(branch.End, board);
    }

    private static bool IsAt(DeadEnd end, Board board) => end.Cell is { } cell
        ? board.DeadCells.Contains(cell)
        : !board[end.Digits.First].Overlaps(end.House!.Value.Cells) && board.MissingFrom(end.House.Value).Contains(end.Digits.First);

    private static IRule Rule(string name) => Ladder.Standard[new(name)].Rule;
}
