using Companion.Drawing.Colours;
using Companion.Drawing.Pictures;
using Companion.Drawing.Stills;
using Companion.Drawing.Tests.Colours;
using SkiaSharp;

namespace Companion.Drawing.Tests.Stills;

/// <summary>Over a picture nobody knows, each shape stands out by one of its edges (WCAG 2.2, 1.4.11).</summary>
public class EdgeTests
{
    private const int Cell = 100;

    private static readonly IReadOnlyDictionary<string, Shape> Drawn = new Dictionary<string, Shape>
    {
        ["house"] = new HouseShape(0, 0, 3, 3),
        ["first role"] = new CellShape(1, 1, false, "P"),
        ["second role"] = new CellShape(1, 1, true, "Q"),
        ["group"] = new GroupShape(0.5, 1.5, 2.5, 1.5),
        ["strong link"] = new LinkShape(0.5, 1.5, 2.5, 1.5, 1.5, 1.5, true),
        ["weak link"] = new LinkShape(0.5, 1.5, 2.5, 1.5, 1.5, 1.5, false),
        ["candidate"] = new MarkShape(1.5, 1.5, 5),
        ["candidate that goes"] = new SlashShape(1.5, 1.5, 5),
        ["digit that follows"] = new LozengeShape(1.5, 1.5, 5),
    };

    private static readonly Colour[] Grounds =
    [
        Palette.Standard.DarkEdge,
        Palette.Standard.LightEdge,
        .. PaletteTests.Roles.Values,
        Colour.Parse("#808080"),
    ];

    public static TheoryData<string> Shapes => [.. Drawn.Keys];

    [Theory]
    [MemberData(nameof(Shapes))]
    public void Every_shape_stands_out_on_black_and_on_white_and_on_its_own_colour(string name)
    {
        foreach (var ground in Grounds)
        {
            var standsOut = Painted(Drawn[name], ground).Count(pixel => pixel.ContrastTo(ground) >= 3);

            // More than a line of a pixel's width once round a candidate's plate.
            Assert.True(standsOut >= 60, $"{name} on {ground}: {standsOut} pixels");
        }
    }

    [Theory]
    [MemberData(nameof(Shapes))]
    public void Every_shape_has_a_dark_and_a_light_edge(string name)
    {
        var painted = Painted(Drawn[name], Colour.Parse("#808080"));

        Assert.All(
            [Palette.Standard.DarkEdge, Palette.Standard.LightEdge],
            edge => Assert.True(painted.Count(pixel => pixel.ContrastTo(edge) < 1.6) >= 60, $"{name}: {edge}"));
    }

    private static List<Colour> Painted(Shape shape, Colour ground)
    {
        using var bitmap = new SKBitmap(4 * Cell, 4 * Cell);
        using var canvas = new SKCanvas(bitmap);
        using var letters = new Lettering();
        canvas.Clear(ground.ToSkia());
        new PicturePainter(canvas, letters, Palette.Standard).Paint([shape], new(Cell / 2, Cell / 2, Cell));
        return [.. bitmap.Pixels.Select(pixel => new Colour(pixel.Red, pixel.Green, pixel.Blue))];
    }
}
