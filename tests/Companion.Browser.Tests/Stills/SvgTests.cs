using Companion.Drawing.Stills;
using Companion.Drawing.Stills.Overlays;
using Companion.Drawing.Stills.Thumbnails;
using Companion.Engine.Proofs;
using Companion.Server.CommandLine;
using Companion.Server.Settings;
using Companion.Session.State;
using SkiaSharp;
using Theme = Companion.Drawing.Colours.Theme;

namespace Companion.Browser.Tests.Stills;

/// <summary>A browser that draws an SVG file shows what the PNG file of the same artwork shows.</summary>
public sealed class SvgTests(Chromium chromium)
{
    [Theory]
    [InlineData("hidden-single", 1280, 720)]
    [InlineData("x-wing", 720, 1280)]
    [InlineData("grouped-chain", 640, 360)]
    public async Task In_a_browser_it_is_the_same_picture_as_the_png(string rule, int width, int height)
    {
        var ladder = LadderFile.Read(null);
        var wording = ShippedFiles.Wording(ladder);
        var scene = StillScene.OfGrid(Examples.WithRectangle, ladder);
        var number = 1 + ladder.Scan(scene.Board!, TestContext.Current.CancellationToken).ToList().FindIndex(deduction => deduction.Rule == new RuleId(rule));
        var picture = scene.PictureOf(number, Grade.Why, wording, TestContext.Current.CancellationToken);
        Artwork[] artworks =
        [
            new StageStill(scene.View! with { Credit = new("Lanterns <No. 1>", "A. Setter", "https://example.org") }, picture, new(width, height, Theme.Light)),
            new StageStill(scene.View!, picture, new(width, height, Theme.Dark)),
            new AirStill(picture, Scenes.Initial[Scenes.Main]!, width, height),
            new Thumbnail("Lanterns", "set by A. Setter", scene.View!.Cells, picture, new(width, height, Theme.Dark)),
        ];
        await using var context = await chromium.Browser.NewContextAsync(new() { ViewportSize = new() { Width = width, Height = height } });
        var page = await context.NewPageAsync();
        foreach (var artwork in artworks)
        {
            await page.SetContentAsync(
                $"<body style='margin:0;background:transparent;overflow:hidden'><img src='data:image/svg+xml;base64,{Convert.ToBase64String(SvgImage.Of(artwork))}'>");
            using var seen = SKBitmap.Decode(await page.ScreenshotAsync(new() { OmitBackground = true }));
            using var png = SKBitmap.Decode(PngImage.Of(artwork));

            var likeness = Likeness.Of(png, seen, SKRectI.Empty);

            Assert.True(likeness.IsSame, $"{artwork.GetType().Name}: {likeness}");
        }
    }
}
