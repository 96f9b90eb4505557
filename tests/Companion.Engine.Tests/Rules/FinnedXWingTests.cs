using Companion.Engine.Rules;

namespace Companion.Engine.Tests.Rules;

public sealed class FinnedXWingTests
{
    [Fact]
    public void A_fin_leaves_only_the_cover_cells_that_it_sees_to_clear() => RuleCheck.Finds(
        new FinnedXWing(),
        Drawing.Board("""
            -7 -7 . | -7 -7 -7 | . -7 -7
            .  .  . | .  .  .  | . .  .
            .  .  . | .  .  .  | . .  .
            --------+----------+--------
            -7 -7 . | -7 -7 -7 | . .  -7
            """),
        new Found("finned-x-wing 7 base r1c3 r1c7 r4c3 r4c7 fin r4c8 in r1 r4", """
            . . . | . . . | . . .
            . . . | . . . | . . .
            . . . | . . . | . . .
            ------+-------+------
            . . . | . . . | . . .
            . . . | . . . | 7 . .
            . . . | . . . | 7 . .
            """)
        {
            RestsOn = """
            7 7 . | 7 7 7 | . 7 7
            . . . | . . . | . . .
            . . . | . . . | . . .
            ------+-------+------
            7 7 . | 7 7 7 | . . .
            """,
            Links = "",
        });

    [Fact]
    public void Sashimi_the_base_line_with_the_fin_has_one_place_beside_it() => RuleCheck.Finds(
        new FinnedXWing(),
        Drawing.Board("""
            -7 -7 . | -7 -7 -7 | .  -7 -7
            .  .  . | .  .  .  | .  .  .
            .  .  . | .  .  .  | .  .  .
            --------+----------+---------
            -7 -7 . | -7 -7 -7 | -7 .  -7
            """),
        new Found("finned-x-wing 7 base r1c3 r4c3 r4c8 fin r1c7 in r1 r4", """
            . . . | . . . | . . .
            . . . | . . . | . 7 .
            . . . | . . . | . 7 .
            """),
        new Found("finned-x-wing 7 base r1c3 r1c7 r4c3 fin r4c8 in r1 r4", """
            . . . | . . . | . . .
            . . . | . . . | . . .
            . . . | . . . | . . .
            ------+-------+------
            . . . | . . . | . . .
            . . . | . . . | 7 . .
            . . . | . . . | 7 . .
            """));

    [Fact]
    public void Fins_may_lie_in_both_base_lines_and_their_block_may_choose_its_cover_line() => RuleCheck.Finds(
        new FinnedXWing(),
        Drawing.Board("""
            .  .  .  | .  .  .  | .  .  .
            .  .  .  | .  .  .  | .  .  .
            .  .  .  | .  .  .  | .  .  .
            ---------+----------+--------
            .  -7 -7 | -7 -7 -7 | .  . -7
            .  .  .  | .  .  .  | .  . -7
            .  -7 -7 | -7 -7 -7 | .  . -7
            """),
        new Found("finned-x-wing 7 base r4c1 r4c8 r6c1 r6c8 fin r4c7 r6c7 in r4 r6", """
            . . . | . . . | . . .
            . . . | . . . | . . .
            . . . | . . . | . . .
            ------+-------+------
            . . . | . . . | . . .
            . . . | . . . | . 7 .
            """),
        new Found("finned-x-wing 7 base r4c1 r4c7 r6c1 r6c7 fin r4c8 r6c8 in r4 r6", """
            . . . | . . . | . . .
            . . . | . . . | . . .
            . . . | . . . | . . .
            ------+-------+------
            . . . | . . . | . . .
            . . . | . . . | 7 . .
            """));

    [Fact]
    public void Fins_in_two_blocks_clear_nothing() => RuleCheck.FindsNothing(
        new FinnedXWing(),
        Drawing.Board("""
            -7 . . | -7 -7 -7 | . -7 -7
            .  . . | .  .  .  | . .  .
            .  . . | .  .  .  | . .  .
            -------+----------+--------
            -7 . -7 | -7 -7 -7 | . .  -7
            """));

    [Fact]
    public void A_line_whose_places_all_lie_in_the_block_of_the_fin_is_left_to_claiming() => RuleCheck.FindsNothing(
        new FinnedXWing(),
        Drawing.Board("""
            -7 -7 . | -7 -7 -7 | .  -7 -7
            .  .  . | .  .  .  | .  .  .
            .  .  . | .  .  .  | .  .  .
            --------+----------+---------
            -7 -7 -7 | -7 -7 -7 | . .  -7
            """));

    [Fact]
    public void A_plain_x_wing_has_no_fin() => RuleCheck.FindsNothing(
        new FinnedXWing(),
        Drawing.Board("""
            -7 -7 . | -7 -7 -7 | . -7 -7
            .  .  . | .  .  .  | . .  .
            .  .  . | .  .  .  | . .  .
            --------+----------+--------
            -7 -7 . | -7 -7 -7 | . -7 -7
            """));
}
