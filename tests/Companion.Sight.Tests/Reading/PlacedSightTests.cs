using Companion.Sight.Tests.Digits;
using Companion.Sight.Tests.Finding;
using SkiaSharp;

namespace Companion.Sight.Tests.Reading;

/// <summary>A grid that is watched where somebody says it is, as the panel does.</summary>
public sealed class PlacedSightTests
{
    private static readonly DrawnGrid Grid = new() { Left = 30, Top = 30, Side = 540 };
    private static readonly GridPlace Place = new(new(30, 30), new(570, 30), new(570, 570), new(30, 570));

    // How a presenter may have dragged the corners: a little off, and not level.
    private static readonly GridPlace Askew = new(new(28, 33), new(571, 28), new(573, 571), new(29, 567));

    private readonly BoardSight _sight = new(GlyphReader.Standard);
    private readonly string[] _cells = new string[81];

    public static TheoryData<int, bool> Evenings => new() { { 1, false }, { 2, false }, { 3, true } };

    // A cell holds a big digit, marks with spaces between them, or nothing.
    [Theory]
    [MemberData(nameof(Evenings))]
    public void Cell_by_cell_it_reads_what_a_look_at_the_whole_reads(int seed, bool isAskew)
    {
        var place = isAskew ? Askew : Place;
        var random = new Random(seed);
        for (var cell = 0; cell < 81; cell++)
            _cells[cell] = random.Next(3) == 0 ? $"{random.Next(1, 10)}" : "";
        for (var step = 0; step < 25; step++)
        {
            var changed = random.Next(81);
            if (step > 0)
                _cells[changed] = random.Next(4) switch { 0 => "", 1 => $"{random.Next(1, 5)} {random.Next(5, 10)}", _ => $"{random.Next(1, 10)}" };
            var frame = Draw();
            var seen = _sight.See(frame, place, Lessons.None);
            var whole = BoardReader.Read(frame, place, GlyphReader.Standard, Lessons.None);

            Assert.InRange(_sight.ReadAnew, 0, step == 0 ? 81 : 1);
            Assert.Equal(whole.Cells.Select(Words), seen.Cells.Select(Words));
        }
    }

    [Fact]
    public void Other_corners_or_another_size_are_read_as_a_whole()
    {
        _cells.AsSpan().Fill("");
        _sight.See(Draw(), Place, Lessons.None);
        _sight.See(Draw(), Place, Lessons.None);
        Assert.Equal(0, _sight.ReadAnew);

        _sight.See(Draw(), new(new(31, 30), new(571, 30), new(571, 570), new(31, 570)), Lessons.None);
        Assert.Equal(81, _sight.ReadAnew);
        _sight.See(Draw(side: 610), new(new(31, 30), new(571, 30), new(571, 570), new(31, 570)), Lessons.None);
        Assert.Equal(81, _sight.ReadAnew);
    }

    [Fact]
    public void What_fades_in_slower_than_a_picture_flickers_is_read_in_the_end()
    {
        _cells.AsSpan().Fill("");
        _sight.See(Draw(), Place, Lessons.None);
        BoardReading? seen = null;
        for (var strength = 12; strength <= 255; strength = strength == 255 ? 256 : Math.Min(255, strength + 12))
        {
            // Meanwhile something goes on in another cell, which is read each time.
            (_cells[0], _cells[40]) = (strength % 24 == 0 ? "1" : "", "7");
            seen = _sight.See(Draw(strength: (byte)strength), Place, Lessons.None);
        }

        Assert.Equal((7, false), (seen!.Cells[40].Digit?.Value, seen.Cells[40].IsUnsure));
    }

    private static string Words(CellReading cell) =>
        $"{cell.Cell} {cell.Digit} {cell.IsGiven} {string.Join(' ', cell.Marks.Select(mark => $"{mark.Digit}{(mark.IsStruck ? "-" : "")}"))} {cell.IsUnsure}";

    /// <param name="side">The picture's.</param>
    /// <param name="strength">How dark the digit in the middle is.</param>
    private Frame Draw(int side = 600, byte strength = 255)
    {
        using var bitmap = Grid.Bitmap(side, side);
        using var big = new SKFont(HeldOutFonts.Families[0].Faces[0], 40);
        using var small = new SKFont(HeldOutFonts.Families[0].Faces[0], 16);
        using (var canvas = new SKCanvas(bitmap))
        {
            for (var cell = 0; cell < 81; cell++)
            {
                using var ink = new SKPaint { IsAntialias = true, Color = SKColors.Black.WithAlpha(cell == 40 ? strength : (byte)255) };
                var (x, y) = (30 + cell % 9 * 60, 30 + cell / 9 * 60);
                if (_cells[cell].Length == 1)
                    canvas.DrawText(_cells[cell], x + 30, y + 44, SKTextAlign.Center, big, ink);
                var marks = _cells[cell].Split(' ');
                for (var mark = 0; mark < marks.Length && marks.Length > 1; mark++)
                    canvas.DrawText(marks[mark], x + 8 + 30 * mark, y + 20, SKTextAlign.Left, small, ink);
            }
        }

        return DrawnGrid.Of(bitmap);
    }
}
