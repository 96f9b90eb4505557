using Companion.Engine.Rules;

namespace Companion.Engine.Tests.Rules;

public sealed class NakedSingleTests
{
    [Fact]
    public void A_cell_that_sees_eight_digits_gets_the_ninth() => RuleCheck.Finds(
        new NakedSingle(),
        Drawing.Board("""
            .  .  .  | . =5 . | . . .
            .  =2 =3 | . .  . | . . .
            =4 .  =6 | . .  . | . . .
            ---------+--------+------
            =7 .  .  | . .  . | . . .
            =8 .  .  | . .  . | . . .
            =9 .  .  | . .  . | . . .
            """),
        new Found("naked-single 1 single r1c1", """
            =1 . . | . . . | . . .
            """)
        {
            RestsOn = """
            23456789 . . | . . . | . . .
            """,
        });

    [Fact]
    public void Cells_with_one_candidate_left_by_strikes_are_found_in_reading_order() => RuleCheck.Finds(
        new NakedSingle(),
        Drawing.Board("""
            . . . | . . 4 | . . .
            . 7 . | . . . | . . .
            """),
        new Found("naked-single 4 single r1c6", """
            . . . | . . =4 | . . .
            """),
        new Found("naked-single 7 single r2c2", """
            . .  . | . . . | . . .
            . =7 . | . . . | . . .
            """));

    [Fact]
    public void Two_candidates_or_none_are_no_naked_single() => RuleCheck.FindsNothing(
        new NakedSingle(),
        Drawing.Board("""
            57 -123456789 . | . . . | . . .
            """));
}
