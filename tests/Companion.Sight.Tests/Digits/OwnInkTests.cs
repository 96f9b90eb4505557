using Companion.Sight.Samples;

namespace Companion.Sight.Tests.Digits;

/// <summary>What a sample keeps of the ink around its glyph.</summary>
public sealed class OwnInkTests
{
    [Fact]
    public void What_stands_beside_the_glyph_is_left_out_and_its_soft_edge_is_kept() => Assert.Equal(
        """
        ..........
        ...2662...
        ...2992...
        ...2992...
        ...2992...
        ..........
        """,
        Own(
            """
            .........9
            ...2662..9
            ...2992..9
            ...2992..9
            ...2992..9
            9........9
            """));

    [Fact]
    public void A_line_that_goes_through_the_glyph_stays() => Assert.Equal(
        """
        ..........
        ....99....
        .99999999.
        ....99....
        ..........
        """,
        Own(
            """
            ..........
            ....99....
            .99999999.
            ....99....
            ..........
            """));

    // One character a pixel: . for none, 9 for full ink.
    private static string Own(string plane)
    {
        var rows = plane.Split('\n');
        var (width, height) = (rows[0].Length, rows.Length);
        float[] ink = [.. rows.SelectMany(row => row.Select(pixel => pixel == '.' ? 0 : (pixel - '0') / 9f))];
        var own = OwnInk.Of(new(width, height, ink), new(0, 0, width, height)).Ink.ToArray();
        return string.Join('\n', own.Select(value => value == 0 ? '.' : (char)('0' + MathF.Round(9 * value))).Chunk(width).Select(row => new string(row)));
    }
}
