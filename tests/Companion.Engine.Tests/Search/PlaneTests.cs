using System.Runtime.Intrinsics;
using Companion.Engine.Search;

namespace Companion.Engine.Tests.Search;

public sealed class PlaneTests
{
    [Fact]
    public void A_plane_and_a_cell_set_hold_the_same_cells()
    {
        Assert.Equal(Plane.Of(CellSet.All), Plane.All);
        foreach (var cell in CellSet.All)
        {
            Assert.Equal(Plane.Of(CellSet.Of(cell)), Plane.Of(cell.Index));
            Assert.Equal(cell.Index, Plane.First(Plane.Of(cell.Index)));
        }

        foreach (var cells in RandomSets(share: 3))
            Assert.Equal(cells.First.Index, Plane.First(Plane.Of(cells)));
    }

    [Fact]
    public void A_place_sees_the_peers_of_its_cell()
    {
        foreach (var cell in CellSet.All)
            Assert.Equal(Plane.Of(cell.Peers), Plane.Seen(Plane.Of(cell.Index)));
    }

    [Fact]
    public void Several_places_see_what_each_of_them_sees()
    {
        foreach (var cells in RandomSets(share: 10))
        {
            var seen = CellSet.Empty;
            foreach (var cell in cells)
                seen |= cell.Peers;
            Assert.Equal(Plane.Of(seen - cells), Plane.Seen(Plane.Of(cells)));
        }
    }

    [Fact]
    public void A_lone_place_is_the_only_one_in_its_row()
    {
        foreach (var cells in RandomSets(share: 6))
        {
            var lone = CellSet.Empty;
            for (var row = 1; row <= 9; row++)
            {
                var places = cells & House.Row(row).Cells;
                if (places.Count == 1)
                    lone |= places;
            }

            Assert.Equal(Plane.Of(lone), Plane.Lone(Plane.Of(cells)));
        }
    }

    [Fact]
    public void Confining_takes_only_places_that_no_full_grid_uses()
    {
        // Every way of one digit to stand nine times, once in each house: there are 46,656 = 6^6 of them, as a count of the
        // choices shows (9 x 6 x 3 columns in the first band, 6 x 4 x 2 in the second, 3 x 2 x 1 in the third).
        Vector128<uint>[] ways = [.. Ways(CellSet.Empty, row: 1).Select(cells => Plane.Of(cells))];
        Assert.Equal(46_656, ways.Length);

        var taken = 0;
        foreach (var cells in RandomSets(share: 2).Take(200))
        {
            var places = Plane.Of(cells);
            var used = ways.Where(way => (way & ~places) == Vector128<uint>.Zero).Aggregate(Vector128<uint>.Zero, (all, way) => all | way);
            var kept = Plane.Confine(places);

            Assert.Equal(Vector128<uint>.Zero, used & ~kept);
            Assert.Equal(Vector128<uint>.Zero, kept & ~places);
            taken += kept == places ? 0 : 1;
        }

        Assert.True(taken > 20, $"Only {taken} samples had anything to take.");
    }

    [Fact]
    public void Places_of_a_block_in_one_line_clear_the_rest_of_the_line()
    {
        AssertConfined(
            """
            x.x x.. x..
            ... xxx xxx
            ... xxx xxx
            """,
            """
            x.x ... ...
            ... xxx xxx
            ... xxx xxx
            """);
    }

    [Fact]
    public void Places_of_a_line_in_one_block_clear_the_rest_of_the_block()
    {
        AssertConfined(
            """
            x.x ... ...
            xxx xxx xxx
            xxx xxx xxx
            """,
            """
            x.x ... ...
            ... xxx xxx
            ... xxx xxx
            """);
    }

    [Fact]
    public void Two_lines_kept_to_two_blocks_clear_these_blocks_in_the_third()
    {
        AssertConfined(
            """
            x.. x.. ...
            .x. .x. ...
            xxx xxx xxx
            """,
            """
            x.. x.. ...
            .x. .x. ...
            ... ... xxx
            """);
    }

    // A band drawn; the other two are full of places. Checked as the first band and, turned, as the first stack.
    private static void AssertConfined(string before, string after)
    {
        foreach (var turn in new Func<Cell, Cell>[] { cell => cell, cell => Cell.Of(cell.Column, cell.Row) })
            Assert.Equal(Plane.Of(Drawn(after, turn)), Plane.Confine(Plane.Of(Drawn(before, turn))));
    }

    private static CellSet Drawn(string band, Func<Cell, Cell> turn) =>
        CellSet.Of([.. CellSet.Parse(band + new string('x', 54)).Select(turn)]);

    private static IEnumerable<CellSet> Ways(CellSet chosen, int row)
    {
        if (row > 9)
            return [chosen];
        return House.Row(row).Cells.Where(cell => (cell.Peers & chosen).IsEmpty).SelectMany(cell => Ways(chosen.With(cell), row + 1));
    }

    private static IEnumerable<CellSet> RandomSets(int share)
    {
        var random = new Random(share);
        for (var made = 0; made < 500; made++)
        {
            var cells = CellSet.Of([.. CellSet.All.Where(_ => random.Next(share) == 0)]);
            if (!cells.IsEmpty)
                yield return cells;
        }
    }
}
