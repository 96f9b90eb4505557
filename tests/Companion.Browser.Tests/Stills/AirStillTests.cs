using System.Collections.Immutable;
using Companion.Drawing.Pictures;
using Companion.Drawing.Stills;
using Companion.Drawing.Stills.Overlays;
using Companion.Session.State;
using SkiaSharp;

namespace Companion.Browser.Tests.Stills;

/// <summary>
/// A transparent still shows what the overlay draws in a browser: two painters, the same shapes at the same places, and the caption's plate
/// too. The words on it are left out: browsers break and set lines by rules of their own.
/// </summary>
public sealed class AirStillTests(Chromium chromium) : IAsyncLifetime
{
    // The last is not 16:9, so that the board is stretched.
    private static readonly (int Width, int Height)[] Sizes = [(1280, 720), (1920, 1080), (1000, 800)];

    private CompanionProcess _companion = null!;

    public async ValueTask InitializeAsync() => _companion = await CompanionProcess.StartAsync();

    public ValueTask DisposeAsync() => _companion.DisposeAsync();

    [Theory]
    [InlineData("hidden-single")]
    [InlineData("x-wing")]
    [InlineData("unique-rectangle")]
    [InlineData("alternating-inference-chain")]
    [InlineData("grouped-chain")]
    public async Task It_is_as_the_overlay_in_every_grade_and_size(string rule)
    {
        await using var show = await AirShow.OpenAsync(chromium, _companion, rule, Sizes);
        for (var grade = 1; grade <= 4; grade++)
        {
            await show.NextAsync();
            foreach (var (size, (screen, caption)) in Sizes.Zip(show.Screens))
            {
                var likeness = Likeness.Of(Draw(show.Scene.OnAir!, show.Scene.FrameOf(Scenes.Main), size), screen, caption);
                Assert.True(likeness.IsSame, $"{rule}, grade {grade}, {size}: {likeness}");
            }
        }
    }

    [Theory]
    [InlineData("hidden-single")]
    [InlineData("grouped-chain")]
    public async Task It_is_not_with_any_one_shape_missing_or_moved_by_three_pixels(string rule)
    {
        var size = Sizes[0];
        await using var show = await AirShow.OpenAsync(chromium, _companion, rule, [size]);
        for (var grade = 1; grade <= 4; grade++)
            await show.NextAsync();
        var (picture, frame) = (show.Scene.OnAir!, show.Scene.FrameOf(Scenes.Main));
        var (screen, caption) = show.Screens[0];
        var cell = frame.Height * size.Height / 9;
        foreach (var shape in picture.Shapes)
        {
            AssertNoticed(picture.Shapes.Remove(shape), $"without {shape}");

            // A link that is moved along itself, with both its ends below plates, is where it was: across it then.
            var level = shape is LinkShape { Y1: var y1, Y2: var y2 } && Math.Abs(y1 - y2) < 0.1;
            AssertNoticed(picture.Shapes.Replace(shape, Moved(shape, level ? 0 : 3 / cell, level ? 3 / cell : 0)), $"with {shape} moved");
        }

        void AssertNoticed(ImmutableArray<Shape> spoilt, string how)
        {
            var likeness = Likeness.Of(Draw(picture with { Shapes = spoilt }, frame, size), screen, caption);
            Assert.False(likeness.IsSame, $"{how}: {likeness}");
        }
    }

    private static Shape Moved(Shape shape, double right, double down) => shape switch
    {
        HouseShape house => house with { X = house.X + right, Y = house.Y + down },
        CellShape cell => cell with { X = cell.X + right, Y = cell.Y + down },
        GroupShape group => group with { X1 = group.X1 + right, X2 = group.X2 + right, Y1 = group.Y1 + down, Y2 = group.Y2 + down },
        LinkShape link => link with
        {
            X1 = link.X1 + right,
            X2 = link.X2 + right,
            BendX = link.BendX + right,
            Y1 = link.Y1 + down,
            Y2 = link.Y2 + down,
            BendY = link.BendY + down,
        },
        MarkShape mark => mark with { X = mark.X + right, Y = mark.Y + down },
        SlashShape slash => slash with { X = slash.X + right, Y = slash.Y + down },
        LozengeShape lozenge => lozenge with { X = lozenge.X + right, Y = lozenge.Y + down },
        CalledShape called => called with { X = called.X + right, Y = called.Y + down },
        _ => throw new ArgumentException($"{shape} cannot be moved.", nameof(shape)),
    };

    private static SKBitmap Draw(Picture picture, Frame frame, (int Width, int Height) size) =>
        SKBitmap.Decode(PngImage.Of(new AirStill(picture, frame, size.Width, size.Height)));
}
