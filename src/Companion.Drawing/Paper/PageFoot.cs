using Companion.Drawing.Stills;
using SkiaSharp;

namespace Companion.Drawing.Paper;

/// <summary>The foot of a page: title and author at the left, the number of the page at the right.</summary>
internal static class PageFoot
{
    internal static void Paint(Sheet sheet, PaperDocument document, SKRect body, int page, int pages)
    {
        var number = $"Page {page} of {pages}";
        var room = body.Width - sheet.Letters.WidthOf(number, Measures.Small) - Measures.FigureGap;
        var title = document.Author.Length > 0 ? $"{document.Title} · {document.Author}" : document.Title;
        var top = body.Bottom + Measures.Foot - Measures.Small * Measures.Leading;
        var line = TextBlock.Fit(sheet.Letters, title, Measures.Small, bold: false, new(room, Measures.Small * Measures.Leading * 1.01f));
        sheet.Write(string.Join(' ', line.Lines), body.Left, top, line.Size, quiet: true);
        sheet.WriteUpTo(number, body.Right, top, Measures.Small, quiet: true);
    }
}
