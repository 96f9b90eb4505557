using Companion.Sight.Reading;
using Companion.Sight.Training.Boards;

namespace Companion.Sight.Tests.Digits;

/// <summary>
/// Reads whole cells of boards that are painted as those are that the network was trained with, in families that it never saw. The figures on
/// many more of them stand in <c>src/Companion.Sight/Weights/cells.md</c>; the boards here are the same at every run.
/// </summary>
public sealed class CellReaderTests
{
    private static readonly Lazy<CellTally> Tally = new(() =>
    {
        const int First = 40, Boards = 25;
        var families = HeldOutFonts.Families.ToDictionary(family => family.Name);
        var samples = Enumerable.Range(First, Boards).SelectMany(seed => CellSample.Of(PaintedBoard.Of(seed, families), new Random(seed))).ToList();
        var tally = new CellTally();
        foreach (var (sample, findings) in samples.Zip(CellReader.Standard.Read(samples.ConvertAll(sample => sample.Ink))))
            tally.Add(sample.Kinds, sample.Lines, findings);
        return tally;
    });

    [Fact]
    public void Digits_are_found_where_they_are()
    {
        var tally = Tally.Value;

        Assert.InRange(tally.Digits, 1000, 3000);
        Assert.InRange((tally.Missed + tally.Mistaken + tally.Invented) / (double)tally.Digits, 0, 0.03);
    }

    [Fact]
    public void Lines_through_marks_are_told()
    {
        var lines = Tally.Value.Lines;

        Assert.InRange(lines.Count(line => line.Is), 100, lines.Count / 2);
        Assert.InRange(lines.Count(line => line.Is != (line.Likely >= 0.5f)) / (double)lines.Count, 0, 0.03);
    }

    [Fact]
    public void Nothing_is_found_where_nobody_asks() => Assert.Empty(CellReader.Standard.Read([]));
}
