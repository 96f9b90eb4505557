using Companion.Engine.Rules;

namespace Companion.Engine.Tests.Rules;

public sealed class ForcingNetTests
{
    // If r1c1 is 1, r1c4 is 2 and r4c1 is 3. Both together leave 4 for r4c4, and so does r1c4 for r7c4.
    private const string TwoWaysMeet = """
        .  . . | 12  . . | . . .
        .  . . | .   . . | . . .
        .  . . | .   . . | . . .
        -------+---------+------
        13 . . | 234 . . | . . .
        .  . . | .   . . | . . .
        .  . . | .   . . | . . .
        -------+---------+------
        .  . . | 24  . . | . . .
        """;

    [Fact]
    public void A_candidate_goes_where_singles_lead_from_it_to_a_cell_with_nothing_left() => NetCheck.Finds(
        new ForcingNet(),
        Drawing.Board(TwoWaysMeet),
        """
        1 . . | . . . | . . .
        """,
        "if r1c1=1 then r1c4=2, r4c1=3, r7c4=4, but r4c4 is empty");

    [Fact]
    public void One_of_two_ways_that_must_meet_is_not_enough() => RuleCheck.FindsNothing(
        new ForcingNet(),
        Drawing.Board(TwoWaysMeet.Replace("13 .", "135 .", StringComparison.Ordinal)));

    // 4 in r6c4 leaves r2c8 for the 4 of row 2, and takes r6c9; r2c8 takes the other places of 4 in block 6.
    [Fact]
    public void A_candidate_goes_where_singles_lead_from_it_to_a_house_without_a_place() => NetCheck.Finds(
        new ForcingNet(),
        Drawing.Board("""
            .  .  .  | .  .  .  | .  .  .
            -4 -4 -4 | .  -4 -4 | -4 .  -4
            .  .  .  | .  .  .  | .  .  .
            ---------+----------+---------
            .  .  .  | .  .  .  | -4 .  -4
            .  .  .  | .  .  .  | -4 .  -4
            .  .  .  | .  .  .  | -4 .  .
            ---------+----------+---------
            .  .  .  | .  .  .  | .  .  .
            .  .  .  | .  .  .  | .  .  .
            .  .  .  | .  .  .  | .  .  .
            """),
        """
        . . . | . . . | . . .
        . . . | . . . | . . .
        . . . | . . . | . . .
        ------+-------+------
        . . . | . . . | . . .
        . . . | . . . | . . .
        . . . | 4 . . | . . .
        """,
        "if r6c4=4 then r2c8=4, but b6 has no 4");
}
