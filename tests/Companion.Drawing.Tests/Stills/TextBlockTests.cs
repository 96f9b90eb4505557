using Companion.Drawing.Stills;

namespace Companion.Drawing.Tests.Stills;

public sealed class TextBlockTests : IDisposable
{
    private readonly Lettering _letters = new();

    public void Dispose() => _letters.Dispose();

    [Fact]
    public void Words_that_fit_stay_on_one_line_at_their_size()
    {
        var block = TextBlock.Fit(_letters, "Look at row 4", 20, bold: false, new(600, 100));

        Assert.Equal(["Look at row 4"], block.Lines);
        Assert.Equal(20, block.Size);
    }

    [Fact]
    public void Lines_break_between_words_and_keep_within_the_width()
    {
        var block = TextBlock.Fit(_letters, "Naked pair: 4 and 7 in r2c3, r2c5 → 4 out of r2c2", 20, bold: false, new(200, 300));

        Assert.Equal("Naked pair: 4 and 7 in r2c3, r2c5 → 4 out of r2c2", string.Join(' ', block.Lines));
        Assert.True(block.Lines.Count > 1);
        Assert.All(block.Lines, line => Assert.True(_letters.WidthOf(line, block.Size) <= 200));
    }

    [Fact]
    public void Words_become_smaller_before_they_are_cut()
    {
        var block = TextBlock.Fit(_letters, "Some words that are a little too long", 20, bold: false, new(320, 28));

        Assert.Single(block.Lines);
        Assert.InRange(block.Size, 12, 19.9f);
        Assert.DoesNotContain("…", block.Lines[0], StringComparison.Ordinal);
    }

    [Fact]
    public void What_does_not_fit_at_all_ends_in_an_ellipsis()
    {
        var block = TextBlock.Fit(_letters, string.Join(' ', Enumerable.Repeat("unending", 100)), 20, bold: false, new(200, 40));

        Assert.EndsWith("…", block.Lines[^1], StringComparison.Ordinal);
        Assert.All(block.Lines, line => Assert.True(_letters.WidthOf(line, block.Size) <= 200));
        Assert.True(block.Height <= 40);
    }

    [Fact]
    public void What_is_cut_off_is_cut_between_words()
    {
        const string Text = "set by the lighthouse's own generator of puzzles";
        for (var width = 160; width < 260; width++)
        {
            var block = TextBlock.Fit(_letters, Text, 20, bold: true, new(width, 28), 0.9f);

            Assert.EndsWith("…", block.Lines[^1], StringComparison.Ordinal);
            Assert.Contains(block.Lines[^1][..^1] + " ", Text, StringComparison.Ordinal);
        }
    }
}
