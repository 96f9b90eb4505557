using Companion.Sight.Finding;

namespace Companion.Sight.Tests.Finding;

public sealed class BorderlessTests
{
    [Theory]
    [InlineData(3, 6, 0)]
    [InlineData(2, 5, -1)]
    [InlineData(4, 7, 1)]
    [InlineData(2, 6, 0)]
    public void Bold_lines_tell_where_a_grid_begins(int first, int second, int shift)
    {
        var even = GridLines.Even(0, 900);
        var lines = even with { Half = [.. Enumerable.Range(0, 10).Select(line => line == first || line == second ? 2f : 0.5f)] };

        Assert.Equal(shift, lines.Shift);
    }

    [Fact]
    public void Lines_that_are_all_alike_tell_nothing() => Assert.Equal(0, GridLines.Even(0, 900).Shift);

    [Theory]
    [InlineData(0, 0)]
    [InlineData(0.1f, 0)]
    [InlineData(-0.08f, 0.06f)]
    public void The_ends_of_lines_make_out_the_sides(float slope, float lean)
    {
        // Eight inner lines each way, from side to side of a board of 900, slanted a little.
        var points = new List<(int X, int Y)>();
        PixelPoint At(float x, float y) => new(100 + x + lean * y, 150 + y + slope * x);
        for (var line = 1; line < 9; line++)
        {
            for (var step = 0; step <= 900; step++)
            {
                foreach (var at in (PixelPoint[])[At(100 * line, step), At(step, 100 * line)])
                    points.Add(((int)MathF.Round(at.X), (int)MathF.Round(at.Y)));
            }
        }

        var place = WebSides.Of(points)!;

        foreach (var (seen, want) in new[] { (place.TopLeft, At(0, 0)), (place.TopRight, At(900, 0)), (place.BottomRight, At(900, 900)), (place.BottomLeft, At(0, 900)) })
        {
            Assert.InRange(seen.X, want.X - 3, want.X + 3);
            Assert.InRange(seen.Y, want.Y - 3, want.Y + 3);
        }
    }
}
