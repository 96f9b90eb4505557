using Companion.Drawing.Pictures;
using Companion.Drawing.Stills;
using SkiaSharp;

namespace Companion.Drawing.Paper;

/// <summary>Paints boards with the painters of the stills, as vectors.</summary>
internal static class FigurePainter
{
    // The stills' painters keep lines at least a pixel wide; on paper their pixel is this part of a point.
    private const float Fine = 0.1f;

    // In cells: the numbers of rows and columns before the board, and what overhangs it elsewhere.
    private const float Numbers = 0.5f;
    private const float Overhang = 0.16f;
    private const float Cells = 9 + Numbers + Overhang;

    // Paper is read from nearby, but printed small: letters are as large as there is room for. Where nothing is drawn over the board,
    // the marks are all there is to read.
    private static readonly BoardLetters Bare = new(0.325, 0.33);
    private static readonly BoardLetters UnderPicture = new(0.265, Bare.Number) { Plates = 1.2 };

    // On a small board the digits of a pattern are as large as their places allow, and its tabs are told apart by their form: the words
    // below it name the cells of each role.
    private static readonly BoardLetters UnderSmallPicture = new(0.37, 0.37) { Plates = 1.2, OnPlate = 0.37, HasTabLetters = false };

    // The smallest letters of a board under a picture, in cells: the tabs of the cells of a pattern.
    private const double SmallestUnderPicture = 0.258;

    private const float LegendWidth = 200;
    private const float LegendText = 7.6f;

    /// <summary>How large a board has to be for all its letters to be read.</summary>
    /// <param name="figure">The board with what is drawn over it.</param>
    internal static float LeastSide(Figure figure) =>
        LeastSideOf(figure.Picture is null ? Bare.Mark : UnderSmallPicture.Mark);

    /// <summary>How wide a board of a height is with its legend.</summary>
    internal static float WidthWithLegend(float side) => side + Measures.FigureGap + LegendWidth;

    /// <summary>Paints a board with the numbers of its rows and columns into a square.</summary>
    internal static void PaintBoard(Sheet sheet, Figure figure, SKPoint corner, float side) =>
        PaintBoard(sheet, figure, corner, side, side < LeastSideOf(SmallestUnderPicture) ? UnderSmallPicture : UnderPicture);

    private static void PaintBoard(Sheet sheet, Figure figure, SKPoint corner, float side, BoardLetters underPicture) => Finely(sheet.Canvas, () =>
    {
        var cell = side / Cells / Fine;
        var frame = new BoardFrame(corner.X / Fine + Numbers * cell, corner.Y / Fine + Numbers * cell, cell);
        new ScenePainter(sheet.Canvas, sheet.Letters, sheet.Palette, sheet.Colours)
            .Paint(figure.Cells, figure.Picture, frame, figure.Picture is null ? Bare : underPicture);
    });

    private static float LeastSideOf(double smallest) => (float)(Measures.Smallest / smallest) * Cells;

    /// <summary>Paints a board as high as a place, and what its shapes mean to the right of it.</summary>
    internal static void PaintWithLegend(Sheet sheet, Figure figure, SKRect place)
    {
        // The legend names the letters of the tabs.
        PaintBoard(sheet, figure, place.Location, place.Height, UnderPicture);
        if (figure.Picture is not { } picture)
            return;
        Finely(sheet.Canvas, () =>
        {
            var top = place.Top + place.Height * Numbers / Cells;
            var bottom = place.Bottom - place.Height * Overhang / Cells;
            var room = new SKRect((place.Left + place.Height + Measures.FigureGap) / Fine, top / Fine, place.Right / Fine, bottom / Fine);
            new LegendPainter(sheet.Canvas, sheet.Letters, sheet.Colours.Words, new(sheet.Canvas, sheet.Letters, sheet.Palette))
                .Paint([.. Legend.Of(picture).Select(WithoutLetter)], room, LegendText / Fine, inColumn: true);
        });
    }

    // The letter of a tab stands in the words beside it too, and there it can be read.
    private static LegendEntry WithoutLetter(LegendEntry entry) =>
        entry.Sample is CellShape { Tab.Length: > 0 } cell ? entry with { Sample = cell with { Tab = " " } } : entry;

    private static void Finely(SKCanvas canvas, Action paint)
    {
        canvas.Save();
        canvas.Scale(Fine);
        paint();
        canvas.Restore();
    }
}
