using Companion.Drawing.Colours;
using Companion.Drawing.Pictures;
using Companion.Drawing.Stills;
using SkiaSharp;

namespace Companion.Drawing.Tests.Stills;

/// <summary>
/// Meaning is carried by shape first: painted in one and the same grey, all shapes can still be told apart (WCAG 2.2, 1.4.1).
/// </summary>
public class SecondCueTests
{
    private const int Size = 100;

    private static readonly Colour Grey = Colour.Parse("#777777");

    private static readonly Palette Colourless = Palette.Standard with
    {
        LookAt = Grey,
        FirstRole = Grey,
        SecondRole = Grey,
        Link = Grey,
        Goes = Grey,
        Follows = Grey,
        Called = Grey,
    };

    private static readonly IReadOnlyDictionary<string, Shape> Shapes = new Dictionary<string, Shape>
    {
        ["house"] = new HouseShape(0, 0, 1, 1),
        ["first role"] = new CellShape(0, 0, false, "P"),
        ["second role"] = new CellShape(0, 0, true, "P"),
        ["group"] = new GroupShape(0.3, 0.5, 0.9, 0.5),
        ["strong link"] = new LinkShape(0.1, 0.5, 0.9, 0.5, 0.5, 0.5, true),
        ["weak link"] = new LinkShape(0.1, 0.5, 0.9, 0.5, 0.5, 0.5, false),
        ["candidate"] = new MarkShape(0.5, 0.5, 5),
        ["candidate that goes"] = new SlashShape(0.5, 0.5, 5),
        ["called cell"] = new CalledShape(0, 0, "5+"),
        ["digit that follows"] = new LozengeShape(0.5, 0.5, 5),
    };

    [Fact]
    public void Any_two_shapes_differ_without_their_colours()
    {
        var painted = Shapes.Select(shape => (shape.Key, Luminances: Painted(shape.Value))).ToList();
        foreach (var (name, luminances) in painted)
        {
            foreach (var (otherName, others) in painted.Where(other => string.CompareOrdinal(name, other.Key) < 0))
            {
                // At least 3:1 in a hundredth of the cell's area.
                var apart = luminances.Zip(others).Count(pair => pair.First.ContrastTo(pair.Second) >= 3);
                Assert.True(apart >= Size * Size / 100, $"{name} and {otherName}: {apart} pixels");
            }
        }
    }

    private static List<Colour> Painted(Shape shape)
    {
        using var bitmap = new SKBitmap(Size * 3 / 2, Size * 3 / 2);
        using var canvas = new SKCanvas(bitmap);
        using var letters = new Lettering();
        canvas.Clear(SKColors.White);
        new PicturePainter(canvas, letters, Colourless).Paint([shape], new(Size / 4, Size / 4, Size));
        return [.. bitmap.Pixels.Select(pixel => new Colour(pixel.Red, pixel.Green, pixel.Blue))];
    }
}
