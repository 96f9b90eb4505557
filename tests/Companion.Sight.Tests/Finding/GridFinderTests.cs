using SkiaSharp;

namespace Companion.Sight.Tests.Finding;

public sealed class GridFinderTests
{
    [Theory]
    [InlineData(0xffffffff, 0xff808080, 0xff000000, 1, 3)]
    [InlineData(0xffffffff, 0xffe8e8e8, 0xff404040, 1, 2)]
    [InlineData(0xff101418, 0xff30343c, 0xffa0a8b0, 1, 2)]
    [InlineData(0xff204060, 0xff6080a0, 0xffffffff, 2, 6)]
    [InlineData(0xfff4ead0, 0xffc08040, 0xffc08040, 1, 1)]
    [InlineData(0xffffffff, 0xfff6f6f6, 0xfff6f6f6, 1, 2)]
    public void Lines_of_any_colour_and_strength_are_found(uint ground, uint cellLine, uint blockLine, float thin, float thick)
    {
        var grid = new DrawnGrid { Ground = ground, CellLine = cellLine, BlockLine = blockLine, Thin = thin, Thick = thick };

        AssertAt(grid, GridFinder.Find(grid.Frame(), isScreen: true));
    }

    [Theory]
    [InlineData(300)]
    [InlineData(417.5)]
    [InlineData(601)]
    public void Grids_of_any_size_are_found(float side)
    {
        var grid = new DrawnGrid { Side = side, Left = 333.3f, Top = 77.7f };

        AssertAt(grid, GridFinder.Find(grid.Frame(), isScreen: true));
    }

    [Fact]
    public void A_grid_needs_no_border()
    {
        var grid = new DrawnGrid { HasBorder = false };

        AssertAt(grid, GridFinder.Find(grid.Frame(), isScreen: true));
    }

    [Theory]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(6)]
    [InlineData(8)]
    [InlineData(10)]
    [InlineData(12)]
    [InlineData(16)]
    [InlineData(18)]
    public void A_grid_of_another_number_of_cells_is_none(int cells) =>
        Assert.Null(GridFinder.Find(new DrawnGrid { Cells = cells }.Frame()));

    [Fact]
    public void Nothing_is_found_where_nothing_is()
    {
        var noise = new byte[4 * 640 * 480];
        new Random(1).NextBytes(noise);

        Assert.Null(GridFinder.Find(new(640, 480, new byte[4 * 640 * 480])));
        Assert.Null(GridFinder.Find(new(640, 480, noise)));
        Assert.Null(GridFinder.Find(new(1, 1, new byte[4])));
    }

    [Theory]
    [InlineData(250, 160, 1250, 190, 1300, 1090, 210, 1050)]
    [InlineData(400, 150, 1180, 260, 1120, 1060, 300, 980)]
    [InlineData(300, 260, 1200, 120, 1330, 1050, 380, 1120)]
    public void A_photograph_from_aside_is_found_by_its_corners(float x1, float y1, float x2, float y2, float x3, float y3, float x4, float y4)
    {
        var place = GridFinder.Find(new DrawnGrid().Photo(new(x1, y1), new(x2, y2), new(x3, y3), new(x4, y4)));

        Assert.NotNull(place);
        AssertNear(new(x1, y1), place.TopLeft, 3);
        AssertNear(new(x2, y2), place.TopRight, 3);
        AssertNear(new(x3, y3), place.BottomRight, 3);
        AssertNear(new(x4, y4), place.BottomLeft, 3);
    }

    private static void AssertAt(DrawnGrid grid, GridPlace? place)
    {
        Assert.NotNull(place);
        var tolerance = grid.Thick / 2 + 1;
        AssertNear(new(grid.Left, grid.Top), place.TopLeft, tolerance);
        AssertNear(new(grid.Left + grid.Side, grid.Top + grid.Side), place.BottomRight, tolerance);
    }

    private static void AssertNear(SKPoint expected, PixelPoint actual, float tolerance)
    {
        Assert.InRange(actual.X, expected.X - tolerance, expected.X + tolerance);
        Assert.InRange(actual.Y, expected.Y - tolerance, expected.Y + tolerance);
    }
}
