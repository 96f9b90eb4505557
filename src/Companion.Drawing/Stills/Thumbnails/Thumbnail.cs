using Companion.Drawing.Colours;
using Companion.Drawing.Pictures;
using Companion.Engine;
using Companion.Session.Views;
using SkiaSharp;

namespace Companion.Drawing.Stills.Thumbnails;

/// <summary>
/// The picture by which a recording is chosen from a list: the title and the credit in letters that are read at an eighth of the size,
/// the board beside or below them. All of it keeps within the graphics safe area, 5 % from each edge (EBU R 95, ITU-R BT.1848-1).
/// </summary>
/// <param name="title">The title; may be empty.</param>
/// <param name="credit">Whom the puzzle is owed to; may be empty.</param>
/// <param name="cells">The 81 cells, row by row.</param>
/// <param name="picture">What to draw on the board, or null for nothing.</param>
/// <param name="options">Size and theme.</param>
public sealed class Thumbnail(
    string title, string credit, IReadOnlyList<StageCell> cells, Picture? picture, StillOptions options)
    : Artwork(options.Width, options.Height)
{
    /// <inheritdoc/>
    public override string Description => string.Join(". ", new[] { title, credit }.Where(words => words.Length > 0));

    internal override void Paint(SKCanvas canvas, Lettering letters)
    {
        var palette = Palette.Standard;
        var colours = palette.Board[options.Theme];
        var layout = ThumbnailLayout.Of(Width, Height);
        canvas.Clear(colours.Surround.ToSkia());
        new ScenePainter(canvas, letters, palette, colours).Paint(Bold(), picture, layout.Board, BoardLetters.WithoutNumbers);
        new ThumbnailWords(canvas, letters, palette, colours, layout).Paint(title, credit);
    }

    // Marks cannot be read at this size; digits alone make a board.
    private IReadOnlyList<StageCell> Bold() =>
        [.. cells.Select(cell => cell with { CellMark = null, BlockMarks = DigitSet.Empty, Struck = DigitSet.Empty })];
}
