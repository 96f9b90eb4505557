using System.Collections.Immutable;
using Microsoft.Playwright;
using SkiaSharp;

namespace Companion.Sight.Tests.Boards;

/// <summary>A board as a browser painted it, and what stands on it.</summary>
/// <param name="Style">Its style.</param>
/// <param name="Cells">What was drawn, row by row.</param>
/// <param name="File">The picture as it was stored.</param>
internal sealed record DrawnBoard(BoardStyle Style, ImmutableArray<DrawnCell> Cells, byte[] File)
{
    public Frame Frame => Frame.Decode(File)!;

    /// <summary>Where the board's corners are in the picture, without the border.</summary>
    public GridPlace Place
    {
        get
        {
            var (left, top, side) = (Style.Left * Style.Scale, Style.Top * Style.Scale, Style.Side * Style.Scale);
            return new(new(left, top), new(left + side, top), new(left + side, top + side), new(left, top + side));
        }
    }

    /// <summary>Paints boards with seeds in a row.</summary>
    public static async IAsyncEnumerable<DrawnBoard> PaintAsync(IBrowser browser, int firstSeed, int count)
    {
        for (var seed = firstSeed; seed < firstSeed + count; seed++)
            yield return await PaintAsync(browser, seed);
    }

    public static async Task<DrawnBoard> PaintAsync(IBrowser browser, int seed)
    {
        var style = BoardStyles.Of(seed, FontFiles.Families);
        var cells = BoardContent.Of(new Random(seed), style);
        var context = await browser.NewContextAsync(new() { ViewportSize = new() { Width = style.Width, Height = style.Height }, DeviceScaleFactor = style.Scale });
        await using (context)
        {
            var page = await context.NewPageAsync();
            var picture = Encode(await ScreenshotAsync(page, style, BoardPage.Html(style, cells)), style.Encoding);
            return new(style, await Covering.TellAsync(page, style, cells), picture);
        }
    }

    /// <summary>What a page of a style looks like, as PNG.</summary>
    /// <param name="page">Where it is painted.</param>
    /// <param name="style">The style.</param>
    /// <param name="html">The page.</param>
    internal static async Task<byte[]> ScreenshotAsync(IPage page, BoardStyle style, string html)
    {
        await page.SetContentAsync(html);
        await page.EvaluateAsync("document.fonts.ready");
        if (style.Technique == Technique.Canvas)
            await page.WaitForFunctionAsync("document.title === 'drawn'");
        return await page.ScreenshotAsync();
    }

    private static byte[] Encode(byte[] png, Encoding encoding)
    {
        if (encoding.Format == "png")
            return png;
        using var bitmap = SKBitmap.Decode(png);
        using var data = bitmap.Encode(encoding.Format == "jpeg" ? SKEncodedImageFormat.Jpeg : SKEncodedImageFormat.Webp, encoding.Quality);
        return data.ToArray();
    }
}
