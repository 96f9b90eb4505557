using Companion.Engine.Rules;

namespace Companion.Engine.Tests.Rules;

public sealed class FinnedJellyfishTests
{
    [Fact]
    public void A_fin_beside_a_jellyfish_leaves_the_cover_cells_of_its_block_to_clear() => RuleCheck.Finds(
        new FinnedJellyfish(),
        Drawing.Board("""
            .  .  -9 | .  -9 -9 | -9 -9 -9
            .  -9 .  | .  .  .  | .  .  .
            .  -9 .  | .  .  .  | .  .  .
            ---------+----------+---------
            -9 -9 -9 | .  -9 -9 | -9 .  -9
            .  -9 -9 | -9 -9 .  | -9 -9 -9
            .  .  .  | .  .  .  | .  .  .
            ---------+----------+---------
            -9 -9 -9 | -9 -9 .  | -9 .  -9
            """),
        new Found("finned-jellyfish 9 base r1c1 r1c4 r4c4 r4c8 r5c1 r5c6 r7c6 r7c8 fin r1c2 in r1 r4 r5 r7", """
            . . . | . . . | . . .
            9 . . | . . . | . . .
            9 . . | . . . | . . .
            """)
        {
            RestsOn = """
            . . . | . 9 . | 9 . 9
            . . . | . . . | . . .
            . . . | . . . | . . .
            ------+-------+------
            . 9 9 | . 9 . | 9 . 9
            . 9 9 | . 9 . | 9 . 9
            . . . | . . . | . . .
            ------+-------+------
            . 9 9 | . 9 . | 9 . 9
            """,
        });

    [Fact]
    public void A_fin_off_the_block_in_another_row_spoils_it() => RuleCheck.FindsNothing(
        new FinnedJellyfish(),
        Drawing.Board("""
            .  .  -9 | .  -9 -9 | -9 -9 -9
            .  -9 .  | .  .  .  | .  .  .
            .  -9 .  | .  .  .  | .  .  .
            ---------+----------+---------
            -9 -9 -9 | .  -9 -9 | -9 .  -9
            .  .  -9 | -9 -9 .  | -9 -9 -9
            .  .  .  | .  .  .  | .  .  .
            ---------+----------+---------
            -9 -9 -9 | -9 -9 .  | -9 .  -9
            """));
}
