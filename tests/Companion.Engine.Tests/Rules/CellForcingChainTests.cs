using Companion.Engine.Rules;

namespace Companion.Engine.Tests.Rules;

public sealed class CellForcingChainTests
{
    [Fact]
    public void Whatever_the_cell_holds_a_chain_leads_to_the_same_conclusion() => RuleCheck.Finds(
        new CellForcingChain(),
        Drawing.Board("""
            .  . .  | . 29  . | . . .
            .  . .  | . .   . | . . .
            .  . .  | . .   . | . . .
            --------+---------+------
            .  . .  | . .   . | . . .
            19 . .  | . 123 . | . . .
            .  . .  | . .   . | . . .
            --------+---------+------
            .  . .  | . .   . | . . .
            79 . .  | . .   . | . . .
            .  . 78 | . 38  . | . . .
            """),
        new Found("cell-forcing-chain 123789 start r5c5", """
            9 . . | . . . | . . .
            """));

    [Fact]
    public void A_candidate_without_a_chain_leaves_all_open() => RuleCheck.FindsNothing(
        new CellForcingChain(),
        Drawing.Board("""
            .  . .  | . 29   . | . . .
            .  . .  | . .    . | . . .
            .  . .  | . .    . | . . .
            --------+----------+------
            .  . .  | . .    . | . . .
            19 . .  | . 1234 . | . . .
            .  . .  | . .    . | . . .
            --------+----------+------
            .  . .  | . .    . | . . .
            79 . .  | . .    . | . . .
            .  . 78 | . 38   . | . . .
            """));

    [Fact]
    public void Chains_of_one_set_each_are_left_to_the_blossom() => RuleCheck.FindsNothing(
        new CellForcingChain(),
        Drawing.Board("""
            .  . . | . 29  . | . . .
            .  . . | . .   . | . . .
            .  . . | . .   . | . . .
            -------+---------+------
            .  . . | . .   . | . . .
            19 . . | . 123 . | . . .
            .  . . | . .   . | . . .
            -------+---------+------
            .  . . | . .   . | . . .
            .  . . | . .   . | . . .
            89 . . | . 38  . | . . .
            """));
}
