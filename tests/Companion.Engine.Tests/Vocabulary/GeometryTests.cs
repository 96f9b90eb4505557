using CsCheck;

namespace Companion.Engine.Tests.Vocabulary;

public class GeometryTests
{
    [Fact]
    public void Rows_columns_and_blocks_are_where_the_trade_has_them()
    {
        Assert.Equal("r4c7", Cell.Of(4, 7).ToString());
        Assert.Equal(33, Cell.Of(4, 7).Index);
        Assert.Equal((4, 7, 6), (Cell.Of(4, 7).Row, Cell.Of(4, 7).Column, Cell.Of(4, 7).Block));
        Assert.Equal("r4 c7 b6", Cell.Of(4, 7).Houses.ToString());
        Assert.Equal("""
            .........
            .........
            .........
            ......xxx
            ......xxx
            ......xxx
            .........
            .........
            .........
            """, House.Block(6).Cells.ToString());
    }

    [Fact]
    public void A_cell_lies_in_three_houses_and_a_house_has_nine_cells()
    {
        Assert.Equal(27, HouseSet.All.Count);
        Assert.All(CellSet.All, cell => Assert.Equal(3, cell.Houses.Count));
        Assert.All(HouseSet.All, house =>
        {
            Assert.Equal(9, house.Cells.Count);
            Assert.All(CellSet.All, cell => Assert.Equal(house.Cells.Contains(cell), cell.Houses.Contains(house)));
        });
    }

    [Fact]
    public void A_cell_sees_the_twenty_cells_that_share_a_house_with_it() => Assert.All(CellSet.All, cell =>
    {
        Assert.Equal(20, cell.Peers.Count);
        Assert.All(CellSet.All.Without(cell), other => Assert.Equal(
            cell.Row == other.Row || cell.Column == other.Column || cell.Block == other.Block, cell.Sees(other)));
        Assert.False(cell.Sees(cell));
    });

    [Fact]
    public void Houses_know_their_kind_and_number()
    {
        Assert.All(Enumerable.Range(1, 9), number =>
        {
            Assert.All(House.Row(number).Cells, cell => Assert.Equal(number, cell.Row));
            Assert.All(House.Column(number).Cells, cell => Assert.Equal(number, cell.Column));
            Assert.All(House.Block(number).Cells, cell => Assert.Equal(number, cell.Block));
        });
        Assert.All(HouseSet.All, house =>
        {
            Assert.Equal(house, House.Of(house.Kind, house.Number));
            Assert.Equal(house, House.At(house.Index));
            Assert.Equal(house.Kind != HouseKind.Block, house.IsLine);
        });
    }

    [Fact]
    public void A_chute_is_three_blocks_and_three_lines() => Assert.All(Enumerable.Range(0, 6).Select(Chute.At), chute =>
    {
        var (lines, blocks) = (CellSet.Empty, CellSet.Empty);
        for (var place = 0; place < 3; place++)
        {
            Assert.Equal(chute.IsBand ? HouseKind.Row : HouseKind.Column, chute.Line(place).Kind);
            Assert.Equal(HouseKind.Block, chute.Block(place).Kind);
            lines |= chute.Line(place).Cells;
            blocks |= chute.Block(place).Cells;
        }

        Assert.Equal(27, chute.Cells.Count);
        Assert.Equal(chute.Cells, lines);
        Assert.Equal(chute.Cells, blocks);
        Assert.Equal($"{(chute.IsBand ? "band" : "stack")}{chute.Number}", chute.ToString());
    });

    [Fact]
    public void Common_houses_and_common_peers_are_those_of_every_cell() => Any.CellSet.Sample(some =>
    {
        foreach (var cells in new[] { some, some & House.Row(5).Cells, some & House.Block(5).Cells, CellSet.Empty })
        {
            Assert.Equal(HouseSet.All.Where(house => house.Cells.ContainsAll(cells)), cells.CommonHouses);
            Assert.Equal(CellSet.All.Where(cell => cells.All(cell.Sees)), cells.CommonPeers);
        }
    });

    [Fact]
    public void Places_in_a_house_are_its_cells_in_reading_order() => Any.CellSet.Sample(set => Assert.All(HouseSet.All, house =>
    {
        var (places, place) = (0, 0);
        foreach (var cell in house.Cells)
        {
            Assert.Equal(cell, house.CellAt(place));
            places |= set.Contains(cell) ? 1 << place : 0;
            place++;
        }

        Assert.Equal(places, set.PlacesIn(house));
        Assert.Equal(set & house.Cells, house.CellsAt(places));
    }));

    [Fact]
    public void A_band_of_a_set_is_its_27_cells_in_reading_order() => Any.CellSet.Sample(set =>
    {
        for (var band = 0; band < 3; band++)
        {
            var bits = Enumerable.Range(0, 27).Sum(place => set.Contains(Cell.At(band * 27 + place)) ? 1u << place : 0u);
            Assert.Equal(bits, set.Band(band));
        }
    });

    [Fact]
    public void An_index_or_number_out_of_range_is_refused()
    {
        Assert.All([-1, 81], index => Assert.Throws<ArgumentOutOfRangeException>(() => Cell.At(index)));
        Assert.All([-1, 27], index => Assert.Throws<ArgumentOutOfRangeException>(() => House.At(index)));
        Assert.All([-1, 6], index => Assert.Throws<ArgumentOutOfRangeException>(() => Chute.At(index)));
        Assert.All([0, 10], number =>
        {
            Assert.Throws<ArgumentOutOfRangeException>(() => Digit.Of(number));
            Assert.Throws<ArgumentOutOfRangeException>(() => Cell.Of(number, 1));
            Assert.Throws<ArgumentOutOfRangeException>(() => Cell.Of(1, number));
            Assert.Throws<ArgumentOutOfRangeException>(() => House.Row(number));
            Assert.Throws<ArgumentOutOfRangeException>(() => House.Column(number));
            Assert.Throws<ArgumentOutOfRangeException>(() => House.Block(number));
        });
    }

    [Fact]
    public void Cells_digits_houses_and_candidates_are_ordered()
    {
        Assert.Equal(CellSet.All.Select(cell => cell.Index), CellSet.All.Order().Select(cell => cell.Index));
        Assert.True(Digit.Of(2).CompareTo(Digit.Of(3)) < 0);
        Assert.True(House.Row(9).CompareTo(House.Column(1)) < 0);
        Assert.True(House.Column(9).CompareTo(House.Block(1)) < 0);
        Assert.True(Candidate.Parse("r1c1=9").CompareTo(Candidate.Parse("r1c2=1")) < 0);
        Assert.True(Candidate.Parse("r1c1=1").CompareTo(Candidate.Parse("r1c1=2")) < 0);
    }
}
