using Companion.Browser.Tests;
using Companion.Sight.Tests.Boards;

namespace Companion.Sight.Tests.Reading;

/// <summary>What a drawn board is said to hide is what its pointer lies on.</summary>
public sealed class CoveringTests(Chromium chromium)
{
    // A pointer on a big digit, and one on the single mark of a cell.
    [Theory]
    [InlineData(300_126, 6)]
    [InlineData(300_179, 33)]
    public async Task What_a_pointer_lies_on_is_covered_and_nothing_else(int seed, int covered)
    {
        var style = BoardStyles.Of(seed, FontFiles.Families);
        var cells = BoardContent.Of(new Random(seed), style);

        Assert.Equal([covered], await CoveredAsync(style));
        Assert.Empty(await CoveredAsync(style with { HasPointer = false }));

        async Task<int[]> CoveredAsync(BoardStyle painted)
        {
            await using var context = await chromium.Browser.NewContextAsync(
                new() { ViewportSize = new() { Width = painted.Width, Height = painted.Height }, DeviceScaleFactor = painted.Scale });
            var told = await Covering.TellAsync(await context.NewPageAsync(), painted, cells);
            return [.. Enumerable.Range(0, told.Length).Where(index => told[index].HasCovered)];
        }
    }
}
