using Companion.Engine.Rules;

namespace Companion.Engine.Tests.Rules;

public sealed class FinnedSwordfishTests
{
    [Fact]
    public void Two_fins_in_a_block_leave_the_cover_cells_of_that_block_to_clear() => RuleCheck.Finds(
        new FinnedSwordfish(),
        Drawing.Board("""
            -9 . -9 | .  .  .  | -9 -9 -9
            .  . .  | .  .  .  | .  .  .
            .  . .  | .  .  .  | .  .  .
            --------+----------+---------
            .  . .  | .  .  .  | .  .  .
            -9 . -9 | -9 -9 -9 | .  -9 -9
            .  . .  | .  .  .  | .  .  .
            --------+----------+---------
            .  . .  | .  .  .  | .  .  .
            -9 -9 -9 | -9 -9 .  | .  -9 -9
            """),
        new Found("finned-swordfish 9 base r1c2 r1c6 r5c2 r5c7 r8c6 r8c7 fin r1c4 r1c5 in r1 r5 r8", """
            . . . | . . . | . . .
            . . . | . . 9 | . . .
            . . . | . . 9 | . . .
            """)
        {
            RestsOn = """
            9 . 9 | . . . | . 9 9
            . . . | . . . | . . .
            . . . | . . . | . . .
            ------+-------+------
            . . . | . . . | . . .
            9 . 9 | 9 9 . | . 9 9
            . . . | . . . | . . .
            ------+-------+------
            . . . | . . . | . . .
            9 . 9 | 9 9 . | . 9 9
            """,
        });

    [Fact]
    public void Sashimi_the_base_column_with_the_fin_has_one_place_beside_it() => RuleCheck.Finds(
        new FinnedSwordfish(),
        Drawing.Board("""
            -3 . . | -3 . . | -3 . .
            .  . . | -3 . . | -3 . .
            -3 . . | -3 . . | .  . .
            -------+--------+-------
            -3 . . | -3 . . | -3 . .
            .  . . | .  . . | -3 . .
            -3 . . | -3 . . | -3 . .
            -------+--------+-------
            -3 . . | -3 . . | -3 . .
            -3 . . | .  . . | .  . .
            -3 . . | -3 . . | -3 . .
            """),
        new Found("finned-swordfish 3 base r5c1 r5c4 r8c4 r3c7 r8c7 fin r2c1 in c1 c4 c7", """
            . . . | . . . | . . .
            . . . | . . . | . . .
            . 3 3 | . . . | . . .
            """),
        new Found("finned-swordfish 3 base r2c1 r5c1 r5c4 r8c4 r8c7 fin r3c7 in c1 c4 c7", """
            . . . | . . . | . . .
            . . . | . . . | . 3 3
            """));

    [Fact]
    public void Nothing_counts_where_a_finned_x_wing_in_two_of_the_rows_removes_the_same() => RuleCheck.FindsNothing(
        new FinnedSwordfish(),
        Drawing.Board("""
            -7 -7 . | -7 -7 -7 | .  -7 -7
            .  .  . | .  .  .  | .  .  .
            .  .  . | .  .  .  | .  .  .
            --------+----------+---------
            -7 -7 . | -7 -7 -7 | .  .  -7
            .  .  . | .  .  .  | .  .  .
            .  .  . | .  .  .  | .  .  .
            --------+----------+---------
            -7 -7 . | .  -7 -7 | .  -7 -7
            """));
}
