using Companion.Engine.Rules;

namespace Companion.Engine.Tests.Rules;

public sealed class JointForcingChainTests
{
    private const string TwoCells = """
        .  . 19  | . . . | 39  89 .
        .  . .   | . . . | .   .  .
        .  . .   | . . . | .   .  .
        ---------+-------+---------
        .  . .   | . . . | .   48 .
        29 . 125 | . . . | 345 .  .
        """;

    [Fact]
    public void Two_cells_that_cannot_both_be_five_lead_to_the_same_conclusion_by_all_else() => RuleCheck.Finds(
        new JointForcingChain(),
        Drawing.Board(TwoCells),
        new Found("joint-forcing-chain 1234589 start r5c3 r5c7 chain r1c3 r5c1 r1c7 set r1c8 r4c8 sets r1c8+r4c8", """
            9 . . | . . . | . . .
            """)
        {
            Links = "r5c3=5 - r5c7=5, r5c3=1 - r1c3=1, r1c3=1 = r1c3=9, r1c3=9 - r1c1=9, r5c3=2 - r5c1=2, r5c1=2 = r5c1=9, "
                + "r5c1=9 - r1c1=9, r5c7=3 - r1c7=3, r1c7=3 = r1c7=9, r1c7=9 - r1c1=9, r5c7=4 - r4c8=4, r4c8=4 = r1c8=9, r1c8=9 - r1c1=9",
            RestsOn = """
            .       . 2345678 | . . . | 1245678 1234567 .
            .       . .       | . . . | .       .       .
            .       . .       | . . . | .       .       .
            ------------------+-------+------------------
            .       . .       | . . . | .       1235679 .
            1345678 . 346789  | . . . | 126789  .       .
            """,
        });

    [Fact]
    public void A_candidate_without_a_chain_leaves_all_open() => RuleCheck.FindsNothing(
        new JointForcingChain(),
        Drawing.Board(TwoCells.Replace("48", "47", StringComparison.Ordinal)));

    [Fact]
    public void Two_cells_that_do_not_see_each_other_may_both_be_five() => RuleCheck.FindsNothing(
        new JointForcingChain(),
        Drawing.Board("""
            .  . 19  | . . . | 39  89 .
            .  . .   | . . . | .   .  .
            .  . .   | . . . | .   .  .
            ---------+-------+---------
            .  . .   | . . . | 345 48 .
            29 . 125 | . . . | .   .  .
            """));

    [Fact]
    public void A_digit_cannot_be_in_one_column_in_two_rows() => RuleCheck.Finds(
        new JointForcingChain(),
        Drawing.Board("""
            .  .  .  | .  .  .  | .  .  .
            -5 .  -5 | -5 .  -5 | .  -5 -5
            .  .  .  | .  .  .  | .  .  .
            ---------+----------+---------
            .  .  .  | .  59 .  | .  .  .
            .  .  .  | .  .  .  | .  .  .
            .  59 .  | .  .  .  | .  .  .
            ---------+----------+---------
            -5 -5 .  | -5 -5 .  | .  -5 -5
            59 .  .  | .  .  .  | .  .  .
            79 .  .  | .  .  57 | .  .  .
            """),
        new Found("joint-forcing-chain 579 start r2c2 r2c5 r7c3 r7c6 chain r2c7 r7c7 r6c2 r4c5 r8c1 set r9c1 r9c6 sets r9c1+r9c6 in r2 r7", """
            . . . | . . . | . . .
            . . . | . . . | . . .
            . . . | . . . | . . .
            ------+-------+------
            9 . . | . . . | . . .
            """));

    [Fact]
    public void Two_digits_cannot_both_be_in_one_cell() => RuleCheck.Finds(
        new JointForcingChain(),
        Drawing.Board("""
            .  .  .  | .  -2 .  | .  .  .
            .  .  .  | .  .  .  | .  .  29
            .  .  .  | .  -2 .  | .  .  .
            ---------+----------+---------
            19 .  .  | .  -2 .  | .  .  .
            -1 .  -1 | -1 .  -1 | -1 .  -1
            .  .  .  | .  -2 .  | .  .  19
            ---------+----------+---------
            .  .  .  | .  -2 28 | .  .  89
            .  .  .  | .  .  .  | .  .  .
            .  .  .  | .  -2 .  | .  .  .
            """),
        new Found("joint-forcing-chain 1289 start r5c2 r5c8 r2c5 r8c5 chain r5c5 r2c9 r4c1 r6c9 set r7c6 r7c9 sets r7c6+r7c9 in r5 c5", """
            . . . | . . . | . . .
            . . . | . . . | . . .
            . . . | . . . | . . .
            ------+-------+------
            . . . | . . . | . . 9
            """));

    [Fact]
    public void A_chain_may_go_through_an_X_wing_that_lacks_its_fin() => RuleCheck.Finds(
        new JointForcingChain(),
        Drawing.Board("""
            .  .  19  | .  .  .  | 39  .  79
            .  .  .   | .  .  .  | .   .  .
            .  .  .   | .  .  .  | .   .  .
            ----------+----------+----------
            .  .  .   | .  .  .  | .   .  .
            29 .  125 | .  47 .  | 345 .  .
            -7 .  -7  | -7 -7 -7 | -7  -7 .
            ----------+----------+----------
            .  .  .   | .  .  .  | .   .  .
            .  .  .   | .  .  .  | .   .  .
            -7 .  -7  | -7 .  -7 | -7  -7 .
            """),
        new Found(
            "joint-forcing-chain 1234579 start r5c3 r5c7 chain r1c3 r5c1 r1c7 r5c5 base r6c2 r6c9 r9c2 r9c5 r9c9 chain r1c9 in r6 r9", """
            9 . . | . . . | . . .
            """)
        {
            Links = "r5c3=5 - r5c7=5, r5c3=1 - r1c3=1, r1c3=1 = r1c3=9, r1c3=9 - r1c1=9, r5c3=2 - r5c1=2, r5c1=2 = r5c1=9, "
                + "r5c1=9 - r1c1=9, r5c7=3 - r1c7=3, r1c7=3 = r1c7=9, r1c7=9 - r1c1=9, r5c7=4 - r5c5=4, r5c5=4 = r5c5=7, "
                + "r5c5=7 - r9c5=7, r9c5=7 = r6c9+r9c9=7, r6c9+r9c9=7 - r1c9=7, r1c9=7 = r1c9=9, r1c9=9 - r1c1=9",
        });
}
