using Companion.Drawing.Colours;
using Companion.Drawing.Pictures;
using Companion.Drawing.Stills;
using Companion.Drawing.Stills.Sheets;
using SkiaSharp;

namespace Companion.Drawing.Tests.Stills;

public sealed class ContactSheetTests
{
    private const string LongTitle =
        "Alternating inference chain on 2, 7 and 8: r8c1, r9c1, r9c6, r8c6, anunusuallylongwordamongthem → 7 out of r8c6";

    // What overhangs a board: the frame of a house and the tab of a cell.
    private static readonly Picture Wing = new([new HouseShape(0, 0, 9, 1), new CellShape(0, 0, false, "P"), new CellShape(8, 8, true, "Q")], "Words");

    public static TheoryData<int, int, int, Theme> Cases => new()
    {
        { 1920, 1080, 1, Theme.Light },
        { 1920, 1080, 5, Theme.Dark },
        { 1920, 1080, 12, Theme.Light },
        { 1920, 1080, 12, Theme.Dark },
        { 1080, 1920, 12, Theme.Dark },
        { 1000, 1000, 7, Theme.Light },
    };

    [Theory]
    [MemberData(nameof(Cases))]
    public void Each_board_is_drawn_as_it_is_by_itself_and_nothing_of_words_or_neighbours_covers_it(int width, int height, int count, Theme theme)
    {
        var sheet = Sheet(width, height, count, theme);
        using var drawn = PngImage.Bitmap(sheet);
        var boards = sheet.Boards;

        Assert.Equal(count, boards.Length);
        foreach (var board in boards)
        {
            using var alone = Alone(width, height, theme, board);
            var place = SKRectI.Ceiling(SKRect.Create(board.Left, board.Top, board.Side, board.Side));
            // What is drawn over a board reaches a fifth of a cell beyond it.
            place.Inflate((int)(0.2f * board.CellSize), (int)(0.2f * board.CellSize));
            Assert.DoesNotContain(Pixels(place), at => drawn.GetPixel(at.X, at.Y) != alone.GetPixel(at.X, at.Y));
        }
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Nothing_stands_at_the_edges(int width, int height, int count, Theme theme)
    {
        using var drawn = PngImage.Bitmap(Sheet(width, height, count, theme));
        var ground = Palette.Standard.Board[theme].Surround.ToSkia();

        Assert.DoesNotContain(Pixels(new(0, 0, width, height)), at =>
            (at.X < width * 0.02 || at.X >= width * 0.98 || at.Y < height * 0.02 || at.Y >= height * 0.98) && drawn.GetPixel(at.X, at.Y) != ground);
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void The_words_over_each_board_have_the_contrast_of_text(int width, int height, int count, Theme theme)
    {
        var sheet = Sheet(width, height, count, theme);
        using var drawn = PngImage.Bitmap(sheet);
        var ground = Palette.Standard.Board[theme].Surround;

        // WCAG 2.2, 1.4.3: 4.5:1. The time and a word stand in each of the heads.
        Assert.All(sheet.Boards, board =>
        {
            var head = new SKRectI((int)board.Left, Math.Max(0, (int)(board.Top - 4.5f * board.CellSize)), (int)(board.Left + board.Side), (int)(board.Top - 0.3f * board.CellSize));
            Assert.InRange(Pixels(head).Count(at => StillTests.At(drawn, new(at.X, at.Y)).ContrastTo(ground) >= 4.5), 60, int.MaxValue);
        });
    }

    private static ContactSheet Sheet(int width, int height, int count, Theme theme) => new(
        "Evening walk",
        [.. Enumerable.Range(1, count).Select(minute => new SheetMoment($"1:0{minute % 10}:00", minute % 2 == 0 ? "Walk" : LongTitle, Boards.View.Cells, Wing))],
        new(width, height, theme));

    private static SKBitmap Alone(int width, int height, Theme theme, BoardFrame board)
    {
        var bitmap = new SKBitmap(width, height, SKColorType.Rgba8888, SKAlphaType.Opaque);
        using var canvas = new SKCanvas(bitmap);
        using var letters = new Lettering();
        var colours = Palette.Standard.Board[theme];
        canvas.Clear(colours.Surround.ToSkia());
        new ScenePainter(canvas, letters, Palette.Standard, colours).Paint(Boards.View.Cells, Wing, board, BoardLetters.WithoutNumbers);
        return bitmap;
    }

    private static IEnumerable<SKPointI> Pixels(SKRectI place) =>
        from y in Enumerable.Range(place.Top, place.Height) from x in Enumerable.Range(place.Left, place.Width) select new SKPointI(x, y);
}
