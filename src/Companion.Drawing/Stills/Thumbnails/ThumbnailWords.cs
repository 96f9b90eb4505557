using Companion.Drawing.Colours;
using SkiaSharp;

namespace Companion.Drawing.Stills.Thumbnails;

/// <summary>
/// Paints title and credit. At 160 pixels of width, an eighth of the usual size, letters of the title are at least 9 pixels high and those
/// of the credit 7: smaller ones are not read there, so that what does not fit is cut off.
/// </summary>
internal sealed class ThumbnailWords(SKCanvas canvas, Lettering letters, Palette palette, BoardColours colours, ThumbnailLayout layout)
{
    // As shares of the height of a wide thumbnail.
    private const float Title = 0.17f;
    private const float SmallestTitle = 0.1f;
    private const float Credit = 0.1f;
    private const float SmallestCredit = 0.078f;
    private const float Bar = 0.022f;
    private const float CreditShare = 0.42f;

    internal void Paint(string title, string credit)
    {
        var words = layout.Words;
        var bar = Bar * layout.Unit;
        var foot = credit.Length > 0 ? Fit(letters, credit, Credit, SmallestCredit, layout, words.Height * CreditShare) : null;
        var room = words.Height - (foot is null ? 0 : foot.Height + 3 * bar);
        var head = title.Length > 0 ? TitleBlock(letters, title, layout, room) : null;

        // The title at the head, the credit at the foot, and a bar of colour that joins them to the board.
        if (head is not null)
            Write(head, words.Top, colours.Words);
        if (foot is null)
            return;
        Write(foot, words.Bottom - foot.Height, colours.Words);
        using var paint = new SKPaint { Color = palette.FirstRole.ToSkia() };
        canvas.DrawRect(SKRect.Create(words.Left, words.Bottom - foot.Height - 2 * bar, words.Width, bar), paint);
    }

    /// <summary>The lines of a title in a room of this height.</summary>
    internal static TextBlock TitleBlock(Lettering letters, string title, ThumbnailLayout layout, float height) =>
        Fit(letters, title, Title, SmallestTitle, layout, height);

    private static TextBlock Fit(Lettering letters, string text, float size, float smallest, ThumbnailLayout layout, float height) =>
        TextBlock.Fit(letters, text, size * layout.Unit, bold: true, new(layout.Words.Width, height), smallest / size);

    private void Write(TextBlock block, float top, Colour colour)
    {
        for (var line = 0; line < block.Lines.Count; line++)
        {
            var start = new SKPoint(layout.Words.Left, top + line * block.LineHeight + block.Size);
            letters.Line(canvas, block.Lines[line], start, block.Size, colour, bold: true);
        }
    }
}
