using Companion.Drawing.Colours;
using Companion.Drawing.Pictures;
using Companion.Engine;
using Companion.Session.Views;
using SkiaSharp;

namespace Companion.Drawing.Stills;

/// <summary>
/// Paints the board as the presenter has written it. Givens are bold on a shaded cell, placed digits are not; block marks are
/// bold, cell marks are not; a struck candidate has a line through it.
/// </summary>
internal sealed class BoardPainter(
    SKCanvas canvas, Lettering letters, BoardColours colours, BoardFrame frame, BoardLetters? sizes = null)
{
    // In cells.
    private const double DigitSize = 0.62;
    private const double NumberPlace = 0.3;
    private const double ThinLine = 0.016;
    private const double ThickLine = 0.05;
    private const double StrikeReach = 0.1;
    private const double StrikeWidth = 0.02;

    private readonly BoardLetters _sizes = sizes ?? BoardLetters.Usual;

    /// <summary>Paints it; in the covered cells the ground alone.</summary>
    internal void Paint(IReadOnlyList<StageCell> cells, CellSet covered)
    {
        for (var index = 0; index < Cell.Count; index++)
            PaintGround(Cell.At(index), cells[index].IsGiven ? colours.GivenCell : colours.Cell);
        PaintLines();
        foreach (var cell in ~covered)
            PaintText(cell, cells[cell.Index]);
        if (_sizes.Number > 0)
            PaintNumbers();
    }

    private void PaintGround(Cell cell, Colour colour)
    {
        var corner = CandidatePlace.CornerOf(cell);
        using var paint = Flat(colour);
        canvas.DrawRect(frame.Rect(corner.X, corner.Y, 1, 1), paint);
    }

    private void PaintLines()
    {
        // Whole pixels, and the thick lines last so that no thin one cuts them.
        var thin = Math.Max(1, MathF.Round(frame.Length(ThinLine)));
        var thick = Math.Max(2, MathF.Round(frame.Length(ThickLine)));
        foreach (var place in Enumerable.Range(0, 10).OrderBy(place => place % 3 == 0))
        {
            var width = place % 3 == 0 ? thick : thin;
            using var paint = Flat(place % 3 == 0 ? colours.ThickLine : colours.ThinLine);
            var before = MathF.Floor(width / 2);
            var reach = MathF.Floor(thick / 2);
            var (corner, length) = (frame.Point(place, place), frame.Side + thick);
            canvas.DrawRect(SKRect.Create(corner.X - before, frame.Top - reach, width, length), paint);
            canvas.DrawRect(SKRect.Create(frame.Left - reach, corner.Y - before, length, width), paint);
        }
    }

    private void PaintText(Cell cell, StageCell written)
    {
        if (written.Digit is { } digit)
        {
            var colour = written.IsGiven ? colours.Given : colours.Placed;
            Write(digit, CandidatePlace.MiddleOf(cell), DigitSize, colour, written.IsGiven);
            return;
        }

        foreach (var mark in (written.CellMark ?? DigitSet.Empty) | written.BlockMarks | written.Struck)
        {
            var place = CandidatePlace.Of(new(cell, mark));
            Write(mark, place, _sizes.Mark, colours.Mark, written.BlockMarks.Contains(mark));
            if (written.Struck.Contains(mark))
                Strike(place);
        }
    }

    private void Strike(BoardPoint place)
    {
        using var pen = Flat(colours.Mark);
        pen.IsAntialias = true;
        pen.StrokeWidth = Math.Max(1, frame.Length(StrikeWidth));
        canvas.DrawLine(frame.Point(place.X - StrikeReach, place.Y), frame.Point(place.X + StrikeReach, place.Y), pen);
    }

    private void PaintNumbers()
    {
        for (var number = 1; number <= 9; number++)
        {
            Number($"r{number}", new(-NumberPlace, number - 0.5));
            Number($"c{number}", new(number - 0.5, -NumberPlace));
        }
    }

    private void Number(string text, BoardPoint place) =>
        letters.Centred(canvas, text, frame.Point(place), frame.Length(_sizes.Number), colours.QuietWords, bold: false);

    private void Write(Digit digit, BoardPoint place, double size, Colour colour, bool bold) =>
        letters.Centred(canvas, digit.ToString(), frame.Point(place), frame.Length(size), colour, bold);

    private static SKPaint Flat(Colour colour) => new() { Color = colour.ToSkia() };
}
