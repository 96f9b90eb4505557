using Companion.Drawing.Colours;
using Companion.Drawing.Pictures;
using Companion.Drawing.Stills;
using SkiaSharp;

namespace Companion.Drawing.Tests.Paper;

/// <summary>A printer without colour: what is left is luminance, and on a poor one black and white.</summary>
public sealed class GreyPrintTests
{
    private const int Cell = 60;

    private static readonly IReadOnlyDictionary<string, Shape> Drawn = new Dictionary<string, Shape>
    {
        ["house"] = new HouseShape(0, 0, 3, 3),
        ["first role"] = new CellShape(1, 1, false, "P"),
        ["second role"] = new CellShape(1, 1, true, "P"),
        ["group"] = new GroupShape(0.5, 1.5, 2.5, 1.5),
        ["strong link"] = new LinkShape(0.5, 1.5, 2.5, 1.5, 1.5, 1.5, true),
        ["weak link"] = new LinkShape(0.5, 1.5, 2.5, 1.5, 1.5, 1.5, false),
        ["candidate"] = new MarkShape(1.5, 1.5, 5),
        ["candidate that goes"] = new SlashShape(1.5, 1.5, 5),
        ["digit that follows"] = new LozengeShape(1.5, 1.5, 5),
        ["called"] = new CalledShape(1, 1, "5+"),
    };

    public static TheoryData<string, string> Pairs
    {
        get
        {
            var pairs = new TheoryData<string, string>();
            foreach (var (one, index) in Drawn.Keys.Select((name, index) => (name, index)))
            {
                foreach (var other in Drawn.Keys.Skip(index + 1))
                    pairs.Add(one, other);
            }

            return pairs;
        }
    }

    [Theory]
    [MemberData(nameof(Pairs))]
    public void Two_roles_are_told_apart_by_shape_alone(string one, string other)
    {
        // The same letter, the same place, one and the same grey for all roles.
        var (first, second) = (Painted(Drawn[one]), Painted(Drawn[other]));
        var differing = first.Zip(second).Count(pixels => pixels.First.ContrastTo(pixels.Second) >= 3);

        // As many pixels as a line through a third of a cell has that is as wide as the slash.
        Assert.True(differing >= Cell / 3 * 0.045 * Cell, $"{one} and {other} differ in {differing} pixels");
    }

    private static List<Colour> Painted(Shape shape)
    {
        using var bitmap = new SKBitmap(4 * Cell, 4 * Cell);
        using var canvas = new SKCanvas(bitmap);
        using var letters = new Lettering();
        canvas.Clear(Palette.Standard.Board.Paper.Cell.ToSkia());
        new PicturePainter(canvas, letters, InOneGrey(Palette.Standard)).Paint([shape], new(Cell / 2, Cell / 2, Cell));
        return [.. bitmap.Pixels.Select(pixel => new Colour(pixel.Red, pixel.Green, pixel.Blue))];
    }

    private static Palette InOneGrey(Palette palette)
    {
        var grey = Colour.Parse("#808080");
        return palette with
        {
            LookAt = grey,
            FirstRole = grey,
            SecondRole = grey,
            Link = grey,
            Goes = grey,
            Follows = grey,
            Called = grey,
        };
    }
}
