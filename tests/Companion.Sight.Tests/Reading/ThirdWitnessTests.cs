using Companion.Engine;
using Companion.Sight.Reading;

namespace Companion.Sight.Tests.Reading;

/// <summary>Unsure marks that two witnesses have settled, and what looking at the whole cell tells of lines through them.</summary>
public sealed class ThirdWitnessTests
{
    [Theory]
    // Both networks lean to a line, or this one has no doubt.
    [InlineData(4, false, 0.95f, 0.6f, true)]
    [InlineData(4, false, 0.6f, 0.95f, true)]
    [InlineData(4, false, 0.995f, 0.1f, true)]
    [InlineData(4, false, 0.95f, 0.4f, false)]
    // The strokes of an 8 cross.
    [InlineData(8, false, 0.995f, 0.9f, false)]
    [InlineData(8, false, 0.99f, 0.99f, true)]
    // A line goes only where this one sees none and the other is not certain.
    [InlineData(4, true, 0.05f, 0.7f, false)]
    [InlineData(4, true, 0.05f, 0.95f, true)]
    [InlineData(4, true, 0.3f, 0.1f, true)]
    public void It_settles_whether_a_line_goes_through_a_mark(int digit, bool wasStruck, float line, float around, bool isStruck)
    {
        var mark = Mark(digit, wasStruck);

        var settled = new ThirdWitness([]).Settled(mark, new(ContextBoard.Sure(digit).Odds, around, 0), Finding(digit, line));

        Assert.Equal(isStruck, settled.IsStruck);
        Assert.Equal(isStruck != wasStruck, settled.IsDoubtful);
    }

    [Fact]
    public void Where_only_comparing_told_it_stays() => Assert.True(new ThirdWitness([]).Settled(Mark(4, true), default, Finding(4, 0)).IsStruck);

    private static MarkReading Mark(int digit, bool isStruck) => new(Digit.Of(digit), 0.2f, 0.2f, 0.2f, isStruck, 0.85f, GlyphImage.Empty);

    private static CellFinding Finding(int digit, float line) => new(ContextBoard.Sure(digit).Odds, false, 0.2f, 0.2f, line);
}
