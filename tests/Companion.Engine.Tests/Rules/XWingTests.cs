using Companion.Engine.Rules;

namespace Companion.Engine.Tests.Rules;

public sealed class XWingTests
{
    [Fact]
    public void Two_rows_with_their_places_in_the_same_two_columns_clear_the_columns() => RuleCheck.Finds(
        new XWing(),
        Drawing.Board("""
            -7 -7 . | -7 -7 -7 | . -7 -7
            .  .  . | .  .  .  | . .  .
            .  .  . | .  .  .  | . .  .
            --------+----------+--------
            -7 -7 . | -7 -7 -7 | . -7 -7
            """),
        new Found("x-wing 7 base r1c3 r1c7 r4c3 r4c7 in r1 r4", """
            . . . | . . . | . . .
            . . 7 | . . . | 7 . .
            . . 7 | . . . | 7 . .
            ------+-------+------
            . . . | . . . | . . .
            . . 7 | . . . | 7 . .
            . . 7 | . . . | 7 . .
            ------+-------+------
            . . 7 | . . . | 7 . .
            . . 7 | . . . | 7 . .
            . . 7 | . . . | 7 . .
            """)
        {
            RestsOn = """
            7 7 . | 7 7 7 | . 7 7
            . . . | . . . | . . .
            . . . | . . . | . . .
            ------+-------+------
            7 7 . | 7 7 7 | . 7 7
            """,
            Links = "r1c3=7 = r1c7=7, r4c3=7 = r4c7=7",
        });

    [Fact]
    public void Two_columns_with_their_places_in_the_same_two_rows_clear_the_rows() => RuleCheck.Finds(
        new XWing(),
        Drawing.Board("""
            . -5 . | . . -5 | . . .
            . -5 . | . . -5 | . . .
            . -5 . | . . -5 | . . .
            -------+--------+------
            . .  . | . . .  | . . .
            . -5 . | . . -5 | . . .
            . -5 . | . . -5 | . . .
            -------+--------+------
            . -5 . | . . -5 | . . .
            . -5 . | . . -5 | . . .
            """),
        new Found("x-wing 5 base r4c2 r9c2 r4c6 r9c6 in c2 c6", """
            . . . | . . . | . . .
            . . . | . . . | . . .
            . . . | . . . | . . .
            ------+-------+------
            5 . 5 | 5 5 . | 5 5 5
            . . . | . . . | . . .
            . . . | . . . | . . .
            ------+-------+------
            . . . | . . . | . . .
            . . . | . . . | . . .
            5 . 5 | 5 5 . | 5 5 5
            """)
        {
            Links = "r4c2=5 = r9c2=5, r4c6=5 = r9c6=5",
        });

    [Fact]
    public void A_third_place_in_a_base_row_spoils_it() => RuleCheck.FindsNothing(
        new XWing(),
        Drawing.Board("""
            -7 -7 . | -7 -7 -7 | . -7 -7
            .  .  . | .  .  .  | . .  .
            .  .  . | .  .  .  | . .  .
            --------+----------+--------
            -7 -7 . | -7 -7 -7 | . .  -7
            """));

    [Fact]
    public void Rows_that_share_one_column_only_are_no_x_wing() => RuleCheck.FindsNothing(
        new XWing(),
        Drawing.Board("""
            -7 -7 . | -7 -7 -7 | .  -7 -7
            .  .  . | .  .  .  | .  .  .
            .  .  . | .  .  .  | .  .  .
            --------+----------+---------
            -7 -7 . | -7 -7 -7 | -7 .  -7
            """));

    [Fact]
    public void Nothing_counts_where_the_columns_have_lost_the_digit_elsewhere() => RuleCheck.FindsNothing(
        new XWing(),
        Drawing.Board("""
            -7 -7 .  | -7 -7 -7 | .  -7 -7
            .  .  -7 | .  .  .  | -7 .  .
            .  .  -7 | .  .  .  | -7 .  .
            ---------+----------+---------
            -7 -7 .  | -7 -7 -7 | .  -7 -7
            .  .  -7 | .  .  .  | -7 .  .
            .  .  -7 | .  .  .  | -7 .  .
            ---------+----------+---------
            .  .  -7 | .  .  .  | -7 .  .
            .  .  -7 | .  .  .  | -7 .  .
            .  .  -7 | .  .  .  | -7 .  .
            """));
}
