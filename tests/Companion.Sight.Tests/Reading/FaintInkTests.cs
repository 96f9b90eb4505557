using Companion.Browser.Tests;
using Companion.Engine;
using Companion.Sight.Tests.Boards;

namespace Companion.Sight.Tests.Reading;

/// <summary>A dark page whose bright highlights leave the digits' colours as they are, and marks that stand so close that they touch.</summary>
public sealed class FaintInkTests(Chromium chromium)
{
    private const string Page = "#1d222b", Given = "#ffffe0", Mark = "#aab4c4";
    private const string Pink = "#f7c6d9", Blue = "#bfdff7", Grey = "#a9b3c3";

    private const string Digits = "534678912672195348198342567859761423426853791713924856961537284287419635345286179";

    private readonly string[] _cells = [.. Digits.Select((digit, cell) => (cell % 9 + cell / 9) % 3 == 0 ? $"<b>{digit}</b>" : "")];
    private readonly string[] _fills = [.. Enumerable.Repeat(Page, 81)];

    [Fact]
    public async Task A_digit_that_a_highlight_makes_faint_is_a_digit()
    {
        foreach (var cell in new[] { "r1c1", "r5c6" })
            _fills[At(cell)] = Pink;

        var seen = await See();
        foreach (var cell in new[] { "r1c1", "r5c6" })
            Assert.Equal((cell, Digits[At(cell)] - '0', false), (cell, seen.Cells[At(cell)].Digit?.Value, seen.Cells[At(cell)].IsUnsure));
    }

    [Fact]
    public async Task Marks_that_a_highlight_makes_faint_are_marks_or_held_back()
    {
        foreach (var (cell, fill) in new[] { ("r1c2", Page), ("r2c4", Page), ("r5c6", Page), ("r3c3", Pink), ("r7c8", Blue) })
        {
            _cells[At(cell)] = "<i>25</i>";
            _fills[At(cell)] = fill;
        }

        var seen = await See();
        foreach (var cell in new[] { "r3c3", "r7c8" })
            Assert.True(seen.Cells[At(cell)].IsUnsure || seen.Cells[At(cell)].Marks.Select(mark => mark.Digit.Value).SequenceEqual([2, 5]), cell);
    }

    [Fact]
    public async Task Where_the_boards_ink_would_not_show_nothing_is_taken_for_empty()
    {
        foreach (var cell in new[] { "r1c2", "r2c4", "r5c6", "r3c3", "r7c8" })
            _cells[At(cell)] = "<i>25</i>";
        foreach (var cell in new[] { "r3c3", "r4c6" })
            _fills[At(cell)] = Grey;

        var seen = await See();
        Assert.True(seen.Cells[At("r3c3")].IsUnsure);
        Assert.True(seen.Cells[At("r4c6")].IsUnsure);
        Assert.False(seen.Cells[At("r1c3")].IsUnsure);
        Assert.Empty(seen.Cells[At("r1c3")].Marks);
    }

    [Theory]
    [InlineData("pt-mono", 11)]
    [InlineData("pt-mono", 12)]
    [InlineData("pt-mono", 13)]
    [InlineData("lato", 11)]
    [InlineData("lato", 12)]
    [InlineData("lato", 13)]
    public async Task No_mark_is_lost_from_a_row_of_marks_that_touch(string family, int size)
    {
        string[] rows = ["1469", "2467", "346", "4568", "489", "1246", "3469", "469"];
        var cells = Enumerable.Range(0, 81).Where(cell => _cells[cell].Length == 0).ToArray();
        foreach (var cell in cells)
            _cells[cell] = $"<i style='letter-spacing:{(cell % 2 == 0 ? "-0.5px" : "0")}'>{rows[cell % rows.Length]}</i>";

        var seen = await See(family, size);
        foreach (var cell in cells)
        {
            var read = string.Concat(seen.Cells[cell].Marks.Select(mark => mark.Digit.Value));
            Assert.True(seen.Cells[cell].IsUnsure || read == rows[cell % rows.Length], $"{seen.Cells[cell].Cell}: {rows[cell % rows.Length]} read as {read}");
        }
    }

    private static int At(string cell) => Cell.Parse(cell).Index;

    private async Task<BoardReading> See(string family = "lato", int size = 13)
    {
        var rows = Enumerable.Range(0, 9).Select(row => "<tr>" + string.Concat(Enumerable.Range(9 * row, 9).Select(cell => $"<td style='background:{_fills[cell]}'>{_cells[cell]}</td>")) + "</tr>");
        var context = await chromium.Browser.NewContextAsync(new() { ViewportSize = new() { Width = 600, Height = 600 } });
        await using (context)
        {
            var page = await context.NewPageAsync();
            await page.SetContentAsync($$"""
                <style>{{FontFiles.FontFaces(family)}}
                body { margin: 20px; background: {{Page}}; font-family: {{family}} }
                table { border-collapse: collapse; border: 3px solid #667 }
                td { width: 54px; height: 54px; padding: 0; border: 1px solid #667; text-align: center; box-sizing: border-box }
                td:nth-child(3n) { border-right-width: 3px } tr:nth-child(3n) td { border-bottom-width: 3px }
                b { color: {{Given}}; font-size: 33px } i { color: {{Mark}}; font-size: {{size}}px; font-style: normal }
                </style><table>{{string.Concat(rows)}}</table>
                """);
            await page.EvaluateAsync("document.fonts.ready");
            var frame = Frame.Decode(await page.ScreenshotAsync())!;
            return BoardReader.Read(frame, GridFinder.Find(frame)!, GlyphReader.Standard, Lessons.None);
        }
    }
}
