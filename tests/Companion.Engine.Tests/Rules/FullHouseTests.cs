using Companion.Engine.Rules;

namespace Companion.Engine.Tests.Rules;

public sealed class FullHouseTests
{
    [Fact]
    public void The_last_open_cell_of_a_block_gets_the_digit_that_the_block_lacks() => RuleCheck.Finds(
        new FullHouse(),
        Drawing.Board("""
            =1 =2 =3 | . . . | . . .
            =4 =5 =6 | . . . | . . .
            =7 =8 .  | . . . | . . .
            """),
        new Found("full-house 9 single r3c3 in b1", """
            . . .  | . . . | . . .
            . . .  | . . . | . . .
            . . =9 | . . . | . . .
            """)
        {
            RestsOn = "",
        });

    [Fact]
    public void The_last_open_cell_of_a_row_and_of_a_column_counts_for_each() => RuleCheck.Finds(
        new FullHouse(),
        Drawing.Board("""
            .  =2 =3 | =4 =5 =6 | =7 =8 =9
            =4 .  .  | .  .  .  | .  .  .
            =5 .  .  | .  .  .  | .  .  .
            ---------+----------+---------
            =2 .  .  | .  .  .  | .  .  .
            =3 .  .  | .  .  .  | .  .  .
            =6 .  .  | .  .  .  | .  .  .
            ---------+----------+---------
            =7 .  .  | .  .  .  | .  .  .
            =8 .  .  | .  .  .  | .  .  .
            =9 .  .  | .  .  .  | .  .  .
            """),
        new Found("full-house 1 single r1c1 in r1", """
            =1 . . | . . . | . . .
            """),
        new Found("full-house 1 single r1c1 in c1", """
            =1 . . | . . . | . . .
            """));

    // The textbook's easy example and its solution: the puzzle that goes with Russell & Norvig's textbook code.
    [Fact]
    public void The_last_open_cell_of_the_grid_counts_for_its_block_then_its_row_then_its_column() => RuleCheck.Finds(
        new FullHouse(),
        Board.Parse("""
            483921657
            967345821
            251876493
            548132976
            7295.4138
            136798245
            372689514
            814253769
            695417382
            """),
        new Found("full-house 6 single r5c5 in b5", """
            . . . | .  .  . | . . .
            . . . | .  .  . | . . .
            . . . | .  .  . | . . .
            . . . | .  .  . | . . .
            . . . | .  =6 . | . . .
            """),
        new Found("full-house 6 single r5c5 in r5", """
            . . . | .  .  . | . . .
            . . . | .  .  . | . . .
            . . . | .  .  . | . . .
            . . . | .  .  . | . . .
            . . . | .  =6 . | . . .
            """),
        new Found("full-house 6 single r5c5 in c5", """
            . . . | .  .  . | . . .
            . . . | .  .  . | . . .
            . . . | .  .  . | . . .
            . . . | .  .  . | . . .
            . . . | .  =6 . | . . .
            """));

    [Fact]
    public void Two_open_cells_are_no_full_house() => RuleCheck.FindsNothing(
        new FullHouse(),
        Drawing.Board("""
            =1 =2 =3 | . . . | . . .
            =4 =5 =6 | . . . | . . .
            =7 .  .  | . . . | . . .
            """));

    [Fact]
    public void A_last_cell_that_a_wrong_digit_has_robbed_gets_nothing() => RuleCheck.FindsNothing(
        new FullHouse(),
        Drawing.Board("""
            .  =2 =3 | =4 =5 =6 | =7 =8 =9
            .  .  .  | .  .  .  | .  .  .
            =1 .  .  | .  .  .  | .  .  .
            """));
}
