using Companion.Browser.Tests;
using Companion.Sight.Tests.Boards;

namespace Companion.Sight.Tests.Reading;

/// <summary>
/// Boards of made-up styles as a browser paints them, in families that the network was never trained on. The bounds are below what
/// the benchmark's <c>-- sight</c> reports over many more boards.
/// </summary>
public sealed class BoardReadingTests(Chromium chromium)
{
    private const int Boards = 40;
    private const int FirstSeed = 10_000;

    [Fact]
    public async Task Boards_of_any_style_are_read()
    {
        var tally = new SightTally();
        await foreach (var board in DrawnBoard.PaintAsync(chromium.Browser, FirstSeed, Boards))
            tally.Add(board, Read(board.Frame));

        var failures = string.Join('\n', tally.Failures.Take(60));
        Assert.True(tally.Lost == 0, failures);
        Assert.True(tally.PartOfDigits >= 0.998f, failures);
        Assert.True(tally.PartOfMarks >= 0.98f, failures);
        Assert.True(tally.Silent == 0, failures);
        Assert.True(tally.WrongStrikes <= 0.006f * tally.Marks, failures);
        Assert.True(tally.Held <= 0.04f * 81 * Boards, $"{tally.Held} cells are held back.\n{failures}");
        Assert.True(tally.WronglyTold <= 0.01f * tally.Told && tally.LeftOpen <= 0.2f * tally.Told, $"{tally.WronglyTold} and {tally.LeftOpen} of {tally.Told}");
    }

    [Fact]
    public async Task Photographs_of_boards_are_read_or_held_back()
    {
        var tally = new SightTally();
        await foreach (var board in DrawnBoard.PaintAsync(chromium.Browser, FirstSeed + 1_000, 8))
            tally.Add(board, Read(Photograph.Of(board, board.Style.Seed)));

        var failures = string.Join('\n', tally.Failures.Take(40));
        Assert.True(tally.Lost <= 1, failures);
        Assert.True(tally.PartOfDigits >= 0.9f, failures);
        Assert.True(tally.Silent <= 3, failures);
    }

    // It has no border, and lines between its blocks that are hardly bolder than the others.
    [Fact]
    public async Task A_photograph_is_not_read_a_column_off()
    {
        const int Seed = 40_002;
        var board = await DrawnBoard.PaintAsync(chromium.Browser, Seed);
        var reading = Read(Photograph.Of(board, Seed))!;

        Assert.Equal(board.Cells.Select(cell => cell.Digit), reading.Cells.Select(cell => cell.Digit?.Value ?? 0));
    }

    private static BoardReading? Read(Frame frame) =>
        GridFinder.Find(frame) is { } place ? BoardReader.Read(frame, place, GlyphReader.Standard, Lessons.None) : null;
}
