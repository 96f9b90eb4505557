namespace Companion.Sight.Tests;

public sealed class GlyphCutTests
{
    // An L and a spot: nothing about it is symmetric, so that no turned or mirrored image is taken for it.
    private static readonly string[] Shape =
    [
        "##......",
        "##......",
        "##......",
        "##......",
        "##......",
        "##..##..",
        "##..##..",
        "##......",
        "##......",
        "##......",
        "########",
        "########",
    ];

    [Fact]
    public void The_body_fills_the_height_stands_in_the_middle_and_keeps_its_proportions()
    {
        var glyph = Cut(Plane(3, 5, 4, 1), 4);

        // 8 by 12 parts in a body of 20 high: 13 1/3 wide, from 5 1/3 to 18 2/3, and from 2 to 22.
        Assert.All(Enumerable.Range(0, 24), y => Assert.InRange(Ink(glyph, 7, y), y is > 2 and < 21 ? 0.99f : 0, y is < 1 or > 22 ? 0.01f : 1));
        Assert.InRange(Ink(glyph, 4, 12), 0, 0.01f);
        Assert.InRange(Ink(glyph, 6, 12), 0.99f, 1);
        Assert.InRange(Ink(glyph, 18, 20), 0.6f, 0.75f);
        Assert.InRange(Ink(glyph, 19, 20), 0, 0.01f);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(7)]
    public void The_size_does_not_matter(int scale) => Close(Cut(Plane(2, 2, 5, 1), 5), Cut(Plane(2, 2, scale, 1), scale), scale == 1 ? 0.04 : 0.02);

    [Theory]
    [InlineData(0, 0)]
    [InlineData(0.25f, 0.75f)]
    [InlineData(0.5f, 0.5f)]
    [InlineData(0.9f, 0.1f)]
    public void Where_it_stands_does_not_matter_not_even_by_parts_of_a_pixel(float x, float y) =>
        Close(Cut(Plane(4, 3, 3, 1), 3), GlyphImage.Cut(Moved(Plane(4, 3, 3, 1), x, y), new(10, 7, 39, 48)), 0.06);

    [Theory]
    [InlineData(0.3f)]
    [InlineData(0.6f)]
    public void Faint_ink_is_stretched(float strength) => Close(Cut(Plane(2, 2, 3, 1), 3), Cut(Plane(2, 2, 3, strength), 3), 0.001);

    [Fact]
    public void Grey_ground_is_stretched()
    {
        var grey = Plane(0, 0, 3, 1);
        var lifted = new InkPlane(grey.Width, grey.Height, [.. grey.Ink.ToArray().Select(ink => 0.3f + 0.5f * ink)]);

        Close(GlyphImage.Cut(grey, new(0, 0, 24, 36)), GlyphImage.Cut(lifted, new(0, 0, 24, 36)), 0.02);
    }

    [Fact]
    public void A_roomy_box_is_drawn_close() =>
        Close(GlyphImage.Cut(Plane(6, 6, 3, 1), new(18, 18, 42, 54)), GlyphImage.Cut(Plane(6, 6, 3, 1), new(0, 0, 1000, 1000)), 0.001);

    [Fact]
    public void Ink_outside_the_box_does_not_count()
    {
        var plane = Plane(6, 6, 3, 1);
        var beside = plane.Ink.ToArray();
        for (var y = 0; y < plane.Height; y++)
            beside[y * plane.Width + 14] = 1;

        Assert.Equal(
            GlyphImage.Cut(plane, new(17, 17, 43, 55)), GlyphImage.Cut(new InkPlane(plane.Width, plane.Height, beside), new(17, 17, 43, 55)));
    }

    [Fact]
    public void What_is_wider_than_high_fills_the_width()
    {
        var ink = new float[40 * 40];
        for (var y = 10; y < 14; y++)
            ink.AsSpan(y * 40 + 5, 30).Fill(1);

        var glyph = GlyphImage.Cut(new(40, 40, ink), new(4, 9, 36, 15));

        Assert.InRange(Ink(glyph, 2, 12), 0.99f, 1);
        Assert.InRange(Ink(glyph, 21, 12), 0.99f, 1);
        Assert.InRange(Ink(glyph, 12, 9), 0, 0.01f);
        Assert.InRange(Ink(glyph, 12, 14), 0, 0.01f);
    }

    [Theory]
    [InlineData(0, 0, 20, 20)]
    [InlineData(-50, -50, -10, -10)]
    [InlineData(100, 100, 120, 120)]
    [InlineData(5, 5, 5, 5)]
    public void A_box_without_ink_gives_an_empty_image(float left, float top, float right, float bottom) =>
        Assert.Equal(GlyphImage.Empty, GlyphImage.Cut(new(40, 40, new float[1600]), new(left, top, right, bottom)));

    [Fact]
    public void A_plane_has_one_value_for_each_pixel() => Assert.Throws<ArgumentException>(() => new InkPlane(3, 3, new float[8]));

    private static float Ink(GlyphImage glyph, int x, int y) => glyph.Ink[y * GlyphImage.Side + x];

    private static GlyphImage Cut(InkPlane plane, int scale) => GlyphImage.Cut(plane, new(scale, scale, plane.Width, plane.Height));

    private static void Close(GlyphImage expected, GlyphImage actual, double mean) =>
        Assert.InRange(expected.Ink.Zip(actual.Ink, (one, other) => Math.Abs(one - other)).Average(), 0, mean);

    /// <summary>The shape, so many pixels to a part, so many parts from the left and from above.</summary>
    private static InkPlane Plane(int left, int top, int scale, float strength)
    {
        var (width, height) = ((left + 8 + 2) * scale, (top + 12 + 2) * scale);
        var ink = new float[width * height];
        for (var y = 0; y < 12 * scale; y++)
            for (var x = 0; x < 8 * scale; x++)
                ink[(top * scale + y) * width + left * scale + x] = Shape[y / scale][x / scale] == '#' ? strength : 0;
        return new(width, height, ink);
    }

    /// <summary>To the right and down by parts of a pixel, as antialiasing draws it.</summary>
    private static InkPlane Moved(InkPlane plane, float right, float down)
    {
        var ink = new float[plane.Width * plane.Height];
        for (var y = 1; y < plane.Height; y++)
            for (var x = 1; x < plane.Width; x++)
                ink[y * plane.Width + x] = (1 - down) * ((1 - right) * plane.Row(y)[x] + right * plane.Row(y)[x - 1])
                    + down * ((1 - right) * plane.Row(y - 1)[x] + right * plane.Row(y - 1)[x - 1]);
        return new(plane.Width, plane.Height, ink);
    }
}
