using Companion.Engine.Rules;

namespace Companion.Engine.Tests.Rules;

public sealed class CellForcingChainTests
{
    [Fact]
    public void Whatever_the_cell_holds_a_chain_leads_to_the_same_conclusion() => RuleCheck.Finds(
        new CellForcingChain(),
        Drawing.Board("""
            .  .  .  | .  29  .  | .  39 .
            -3 -3 -3 | -3 .   -3 | -3 .  -3
            .  .  .  | .  .   .  | .  .  .
            ---------+-----------+---------
            .  .  .  | .  .   .  | .  .  .
            19 .  .  | .  123 .  | .  .  .
            """),
        new Found("cell-forcing-chain 1239 start r5c5 chain r5c1 r1c5 r2c5 r2c8 r1c8 in r2", """
            9 . . | . . . | . . .
            """)
        {
            Links = "r5c5=1 - r5c1=1, r5c1=1 = r5c1=9, r5c1=9 - r1c1=9, r5c5=2 - r1c5=2, r1c5=2 = r1c5=9, r1c5=9 - "
                + "r1c1=9, r5c5=3 - r2c5=3, r2c5=3 = r2c8=3, r2c8=3 - r1c8=3, r1c8=3 = r1c8=9, r1c8=9 - r1c1=9",
            RestsOn = """
            .       .  .  | .  1345678 .  | .  1245678 .
            3       3  3  | 3  .       3  | 3  .       3
            .       .  .  | .  .       .  | .  .       .
            --------------+---------------+-------------
            .       .  .  | .  .       .  | .  .       .
            2345678 .  .  | .  456789  .  | .  .       .
            """,
        });

    [Fact]
    public void A_chain_may_go_through_an_almost_locked_set() => RuleCheck.Finds(
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
        new Found("cell-forcing-chain 123789 start r5c5 chain r5c1 r1c5 set r9c3 r9c5 chain r8c1 sets r9c3+r9c5", """
            9 . . | . . . | . . .
            """)
        {
            Links = "r5c5=1 - r5c1=1, r5c1=1 = r5c1=9, r5c1=9 - r1c1=9, r5c5=2 - r1c5=2, r1c5=2 = r1c5=9, r1c5=9 - "
                + "r1c1=9, r5c5=3 - r9c5=3, r9c5=3 = r9c3=7, r9c3=7 - r8c1=7, r8c1=7 = r8c1=9, r8c1=9 - r1c1=9",
        });

    [Fact]
    public void A_candidate_without_a_chain_leaves_all_open() => RuleCheck.FindsNothing(
        new CellForcingChain(),
        Drawing.Board("""
            .  .  .  | .  29   .  | .  39 .
            -3 -3 -3 | -3 .    -3 | -3 .  -3
            .  .  .  | .  .    .  | .  .  .
            ---------+------------+---------
            .  .  .  | .  .    .  | .  .  .
            19 .  .  | .  1234 .  | .  .  .
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
