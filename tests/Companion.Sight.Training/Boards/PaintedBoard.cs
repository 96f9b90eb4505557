using Companion.Sight.Samples;
using Companion.Sight.Tests.Boards;
using SkiaSharp;

namespace Companion.Sight.Training.Boards;

/// <summary>A made-up board, painted without a browser, and what stands on it.</summary>
/// <param name="Frame">The picture: the board and a little around it.</param>
/// <param name="Place">Where the grid is, about as exactly as it is found.</param>
/// <param name="Pieces">The digits and marks.</param>
internal sealed record PaintedBoard(Frame Frame, GridPlace Place, IReadOnlyList<BoardPiece> Pieces)
{
    // Pixels of the page around the board.
    private const int Margin = 24;

    /// <summary>Paints one.</summary>
    /// <param name="seed">The same one gives the same board.</param>
    /// <param name="families">The families to choose from, by name.</param>
    public static PaintedBoard Of(int seed, IReadOnlyDictionary<string, FontFamily> families)
    {
        var random = new Random(seed);
        var style = Style(random, [.. families.Keys]);
        var hand = new BoardHand(random, style, families);
        var cells = BoardContent.Of(random, style).Select(cell => Struck(random, style, cell)).ToArray();
        var size = (int)MathF.Ceiling((style.Side + 2 * Margin) * style.Scale);
        var info = new SKImageInfo(size, size, SKColorType.Rgba8888, SKAlphaType.Opaque);
        using var surface = SKSurface.Create(info, new SKSurfaceProperties(SKPixelGeometry.RgbHorizontal));
        var canvas = surface.Canvas;
        canvas.Clear(SKColor.Parse(style.Colours.Page));
        canvas.Scale(style.Scale);
        canvas.Translate(Margin, Margin);
        BoardGround.Paint(canvas, style);
        var letters = Letters(hand, cells).ToList();
        foreach (var (_, _, _, letter) in letters)
            letter.Paint(canvas);
        var over = Over(random, style, letters.ConvertAll(one => one.Letter.Bounds)).ToList();
        foreach (var drawn in over)
            BoardGround.Paint(canvas, drawn);
        var pieces = letters.ConvertAll(one => Piece(style, one.Cell, one.IsBig, one.IsStruck, one.Letter, over));
        using var image = surface.Snapshot();
        var (low, high) = (Margin * style.Scale, (Margin + style.Side) * style.Scale);
        float Near(float at) => at + random.Normal(0.3f);
        // Upright, or else the picture would be straightened, and the pieces would be elsewhere in it.
        var (left, top, right, bottom) = (Near(low), Near(low), Near(high), Near(high));
        GridPlace place = new(new(left, top), new(right, top), new(right, bottom), new(left, bottom));
        return new(Stored(image, style.Encoding), place, pieces);
    }

    private static BoardStyle Style(Random random, IReadOnlyList<string> names)
    {
        while (true)
        {
            var style = BoardStyles.Of(random.Next(), names);
            if (style.Marks == MarkPlaces.None && random.Chance(0.8))
                continue;
            // Large boards take long to paint, and their digits are cut down to one size.
            if (style.Side * style.Scale > 1000 && random.Chance(0.6))
                continue;
            return style with
            {
                Strike = random.Chance(0.55) ? Strike.Level : Strike.None,
                MarkSize = style.MarkSize * random.Between(0.92f, 1),
                HasPointer = random.Chance(0.5),
                HasCircles = random.Chance(0.25),
            };
        }
    }

    // More of them than in the boards of the tests, and on any digit.
    private static DrawnCell Struck(Random random, BoardStyle style, DrawnCell cell)
    {
        if (style.Strike == Strike.None)
            return cell with { Marks = [.. cell.Marks.Select(mark => mark with { IsStruck = false })] };
        return cell with { Marks = [.. cell.Marks.Select(mark => mark with { IsStruck = random.Chance(0.25) })] };
    }

    private static IEnumerable<(int Cell, bool IsBig, bool IsStruck, BoardHand.Letter Letter)> Letters(BoardHand hand, DrawnCell[] cells)
    {
        for (var index = 0; index < cells.Length; index++)
        {
            if (cells[index].Digit > 0)
                yield return (index, true, false, hand.Digit(cells[index], index));
            for (var mark = 0; mark < cells[index].Marks.Length; mark++)
                yield return (index, false, cells[index].Marks[mark].IsStruck, hand.Mark(cells[index], index, mark));
        }
    }

    // What lies over the digits: what the style has, and more pointers, dark ones and light ones.
    private static IEnumerable<Drawn> Over(Random random, BoardStyle style, List<SKRect> letters)
    {
        foreach (var drawn in Decoration.Of(style with { HasPointer = false }).Over)
            yield return drawn;
        for (var pointer = style.HasPointer ? random.Next(1, 5) : 0; pointer > 0; pointer--)
        {
            var by = random.BetweenByRatio(0.8f, 1.8f);
            // Most of them are where they cover something.
            var near = random.Chance(0.7) ? random.Pick(letters) : SKRect.Create(style.Side, style.Side);
            var (x, y) = (random.Between(near.Left - 10 * by, near.Right), random.Between(near.Top - 14 * by, near.Bottom));
            var path = FormattableString.Invariant($"M{x} {y}v{17 * by}l{4 * by} {-4 * by}l{3 * by} {7 * by}l{3 * by} {-1 * by}l{-3 * by} {-7 * by}h{6 * by}Z");
            yield return random.Chance(0.7) ? new Drawn.Shape(path, "#000000", "#ffffff", by) : new Drawn.Shape(path, "#ffffff", "#000000", by);
        }
    }

    private static BoardPiece Piece(BoardStyle style, int cell, bool isBig, bool isStruck, BoardHand.Letter letter, List<Drawn> over)
    {
        var bounds = letter.Bounds;
        var place = SKRectI.Ceiling(SKRect.Create(
            (bounds.Left + Margin) * style.Scale, (bounds.Top + Margin) * style.Scale, bounds.Width * style.Scale, bounds.Height * style.Scale), outwards: true);
        using var alone = new SKBitmap(new SKImageInfo(Math.Max(1, place.Width), Math.Max(1, place.Height), SKColorType.Alpha8, SKAlphaType.Premul));
        using var canvas = new SKCanvas(alone);
        canvas.Clear(SKColors.Transparent);
        canvas.Translate(-place.Left, -place.Top);
        canvas.Scale(style.Scale);
        canvas.Translate(Margin, Margin);
        (letter with { Lines = [] }).Paint(canvas);
        var ink = new byte[alone.Width * alone.Height];
        for (var row = 0; row < alone.Height; row++)
            alone.GetPixelSpan().Slice(row * alone.RowBytes, alone.Width).CopyTo(ink.AsSpan(row * alone.Width));
        return new(cell, letter.Digit, isBig, isStruck, place, ink, Covered(letter, bounds, over));
    }

    private static float Covered(BoardHand.Letter letter, SKRect bounds, List<Drawn> over)
    {
        var near = over.Select(drawn => drawn.Outline!).Where(outline => outline.TightBounds.IntersectsWith(bounds)).ToList();
        if (near.Count == 0)
            return 0;
        const float Fine = 3;
        bounds.Inflate(4, 4);
        using var alone = new SKBitmap(new SKImageInfo((int)(Fine * bounds.Width) + 1, (int)(Fine * bounds.Height) + 1, SKColorType.Rgba8888, SKAlphaType.Premul));
        using var canvas = new SKCanvas(alone);
        canvas.Clear(SKColors.Transparent);
        canvas.Scale(Fine);
        canvas.Translate(-bounds.Left, -bounds.Top);
        letter.Paint(canvas);
        var all = Ink(alone);
        using var eraser = new SKPaint { BlendMode = SKBlendMode.Clear, IsAntialias = true };
        foreach (var outline in near)
            canvas.DrawPath(outline, eraser);
        return 1 - Ink(alone) / (float)Math.Max(1, all);
    }

    private static long Ink(SKBitmap picture)
    {
        var sum = 0L;
        var pixels = picture.GetPixelSpan();
        for (var at = 3; at < pixels.Length; at += 4)
            sum += pixels[at];
        return sum;
    }

    private static Frame Stored(SKImage image, Encoding encoding)
    {
        using var data = encoding.Format switch
        {
            "jpeg" => image.Encode(SKEncodedImageFormat.Jpeg, encoding.Quality),
            "webp" => image.Encode(SKEncodedImageFormat.Webp, encoding.Quality),
            _ => null,
        };
        if (data is not null)
            return Frame.Decode(data.AsSpan()) ?? throw new InvalidOperationException("What was stored cannot be read.");
        using var pixels = image.PeekPixels() ?? throw new InvalidOperationException("The picture has no pixels.");
        return new(image.Width, image.Height, pixels.GetPixelSpan().ToArray());
    }
}
