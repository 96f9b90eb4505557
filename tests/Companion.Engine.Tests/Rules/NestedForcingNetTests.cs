using Companion.Engine.Rules;

namespace Companion.Engine.Tests.Rules;

public sealed class NestedForcingNetTests
{
    [Fact]
    public void A_candidate_goes_where_a_pair_comes_up_on_the_way() => NetCheck.Finds(
        new NestedForcingNet(),
        Drawing.Board("""
            .   . . | 12  . . | . .  .
            .   . . | .   . . | . .  .
            .   . . | .   . . | . .  .
            --------+---------+-------
            145 . . | 245 . . | . 45 .
            """),
        """
        1 . . | . . . | . . .
        """,
        "if r1c1=1 then r1c4=2, -r4c1=4-r4c1=5, but r4c1 is empty");

    [Fact]
    public void What_the_pair_needs_must_be_there() => RuleCheck.FindsNothing(
        new NestedForcingNet(),
        Drawing.Board("""
            .   . . | 12  . . | . .   .
            .   . . | .   . . | . .   .
            .   . . | .   . . | . .   .
            --------+---------+--------
            145 . . | 245 . . | . 456 .
            """));

    [Fact]
    public void Where_easy_rules_are_stuck_others_are_supposed_in_turn()
    {
        var net = Assert.Single(RuleCheck.Find(new NestedForcingNet(), NetPositions.All[18]));

        Assert.Equal(CandidateSet.Parse("r7c4=9"), net.Removes);
        Assert.Contains(net.Branches[0].Steps, step => !step.Branches.IsEmpty);
    }
}
