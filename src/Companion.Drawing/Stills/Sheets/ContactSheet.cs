using System.Collections.Immutable;
using Companion.Drawing.Colours;
using SkiaSharp;

namespace Companion.Drawing.Stills.Sheets;

/// <summary>The moments of a show side by side, each a board with its time and what it shows.</summary>
/// <param name="title">The title over them; may be empty.</param>
/// <param name="moments">The moments in order, 1 to <see cref="Most"/>.</param>
/// <param name="options">Size and theme.</param>
public sealed class ContactSheet(string title, ImmutableArray<SheetMoment> moments, StillOptions options)
    : Artwork(options.Width, options.Height)
{
    /// <summary>How many moments go on one sheet: of more the boards are too small at 1920 by 1080.</summary>
    public const int Most = 12;

    private const float Safe = 0.03f;
    private const float TitleSize = 0.032f;

    // As shares of a tile's height.
    private const float Words = 0.17f;
    private const float WordSize = 0.062f;
    private const float Gap = 0.05f;

    // Where a tile is higher than its board: the time on a line of its own, and three of words.
    private const int MostLines = 4;
    private const float Leading = 1.4f;

    /// <inheritdoc/>
    public override string Description => title;

    internal override void Paint(SKCanvas canvas, Lettering letters)
    {
        var palette = Palette.Standard;
        var colours = palette.Board[options.Theme];
        canvas.Clear(colours.Surround.ToSkia());
        if (title.Length > 0)
        {
            var line = TextBlock.Fit(letters, title, TitleHeight, bold: true, new(Safely.Width, TitleHeight * Leading));
            letters.Line(canvas, line.Lines[0], new(Safely.Left, Safely.Top + line.Size), line.Size, colours.Words, bold: true);
        }

        var scene = new ScenePainter(canvas, letters, palette, colours);
        foreach (var (moment, place) in moments.Zip(Tiles))
            Paint(moment, place, scene, canvas, letters, colours);
    }

    /// <summary>Where each board lies.</summary>
    internal ImmutableArray<BoardFrame> Boards => [.. Tiles.Select(place => BoardIn(place, HeadOf(place)))];

    private ImmutableArray<SKRect> Tiles => Places(
        new(Safely.Left, Safely.Top + (title.Length > 0 ? TitleHeight * 1.8f : 0), Safely.Right, Safely.Bottom), moments.Length);

    private SKRect Safely => SKRect.Inflate(SKRect.Create(Width, Height), -Width * Safe, -Height * Safe);

    private float TitleHeight => Math.Min(Width, Height * 16f / 9) * TitleSize * 9 / 16 * 1.6f;

    /// <summary>Where each of some tiles lies: as many columns as make the boards largest.</summary>
    internal static ImmutableArray<SKRect> Places(SKRect body, int count)
    {
        var columns = Enumerable.Range(1, Math.Max(1, count)).MaxBy(columns => BoardSide(body, columns, RowsOf(count, columns)));
        var (width, height) = (body.Width / columns, body.Height / RowsOf(count, columns));
        return
        [
            .. Enumerable.Range(0, count).Select(index =>
                SKRect.Create(body.Left + index % columns * width, body.Top + index / columns * height, width, height)),
        ];
    }

    private static int RowsOf(int count, int columns) => Math.Max(1, (count + columns - 1) / columns);

    private static float BoardSide(SKRect body, int columns, int rows) =>
        Math.Min(body.Width / columns * (1 - Gap), body.Height / rows * (1 - Words - Gap));

    private static float CellIn(SKRect place) =>
        Math.Max(1, MathF.Floor(Math.Min(place.Width * (1 - Gap), place.Height * (1 - Words - Gap)) / 9.4f));

    // What the board leaves, up to as many lines as are ever needed.
    private static float HeadOf(SKRect place) => Math.Clamp(
        place.Height * (1 - Gap) - 9.4f * CellIn(place),
        place.Height * Words,
        Math.Max(place.Height * Words, MostLines * place.Height * WordSize * Leading));

    private static BoardFrame BoardIn(SKRect place, float head)
    {
        var cell = CellIn(place);
        return new(MathF.Round(place.MidX - 4.5f * cell), MathF.Round(place.Top + head + 0.2f * cell), cell);
    }

    private static void Paint(
        SheetMoment moment, SKRect place, ScenePainter scene, SKCanvas canvas, Lettering letters, BoardColours colours)
    {
        var (head, size) = (HeadOf(place), place.Height * WordSize);
        var (board, line) = (BoardIn(place, head), size * Leading);
        var width = Math.Min(place.Width * (1 - Gap), Math.Max(board.Side, place.Width * 0.8f));
        var left = Math.Max(place.Left, place.MidX - width / 2);
        letters.Line(canvas, moment.Time, new(left, place.Top + size), size, colours.Words, bold: true);

        // Beside the time, or below it where there is room.
        var isBelow = head >= (MostLines - 1) * line;
        var time = isBelow ? 0 : letters.WidthOf(moment.Time + "  ", size, bold: true);
        var top = place.Top + (isBelow ? line : 0);
        var words = TextBlock.Fit(letters, moment.Title, size, bold: false, new(width - time, place.Top + head - top), 0.8f);
        for (var index = 0; index < words.Lines.Count; index++)
            letters.Line(canvas, words.Lines[index], new(left + time, top + words.Size + index * words.LineHeight), words.Size, colours.Words);

        scene.Paint(moment.Cells, moment.Picture, board, BoardLetters.WithoutNumbers);
    }
}
