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

    internal override string Description => title;

    internal override void Paint(SKCanvas canvas, Lettering letters)
    {
        var palette = Palette.Standard;
        var colours = palette.Board[options.Theme];
        canvas.Clear(colours.Surround.ToSkia());
        var body = SKRect.Create(Width, Height);
        body.Inflate(-Width * Safe, -Height * Safe);
        if (title.Length > 0)
        {
            var size = Math.Min(Width, Height * 16f / 9) * TitleSize * 9 / 16 * 1.6f;
            var line = TextBlock.Fit(letters, title, size, bold: true, new(body.Width, size * 1.4f));
            letters.Line(canvas, line.Lines[0], new(body.Left, body.Top + line.Size), line.Size, colours.Words, bold: true);
            body.Top += size * 1.8f;
        }

        var scene = new ScenePainter(canvas, letters, palette, colours);
        foreach (var (moment, place) in moments.Zip(Places(body, moments.Length)))
            Paint(moment, place, scene, canvas, letters, colours);
    }

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

    private static void Paint(
        SheetMoment moment, SKRect place, ScenePainter scene, SKCanvas canvas, Lettering letters, BoardColours colours)
    {
        var height = place.Height;
        var cell = Math.Max(1, MathF.Floor(Math.Min(place.Width * (1 - Gap), height * (1 - Words - Gap)) / 9.4f));
        var (size, width) = (height * WordSize, Math.Min(place.Width * (1 - Gap), Math.Max(9 * cell, place.Width * 0.8f)));
        var line = size * Leading;
        var head = Math.Clamp(height * (1 - Gap) - 9.4f * cell, height * Words, Math.Max(height * Words, MostLines * line));
        var board = new BoardFrame(MathF.Round(place.MidX - 4.5f * cell), MathF.Round(place.Top + head + 0.2f * cell), cell);
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
