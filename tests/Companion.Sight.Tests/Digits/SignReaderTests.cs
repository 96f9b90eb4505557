using Companion.Sight.Reading;
using Companion.Sight.Samples;
using Companion.Sight.Training.Boards;

namespace Companion.Sight.Tests.Digits;

/// <summary>
/// Reads signs of boards that are painted as those are that the network was trained with, in families that it never saw. The figures on many
/// more of them stand in <c>src/Companion.Sight/Weights/signs.md</c>; the boards here are the same at every run.
/// </summary>
public sealed class SignReaderTests
{
    private static readonly Lazy<(SignSample Sample, SignReading Reading)[]> Signs = new(() =>
    {
        const int First = 40, Boards = 25;
        var families = HeldOutFonts.Families.ToDictionary(family => family.Name);
        var samples = Enumerable.Range(First, Boards).SelectMany(seed => SignSample.Of(PaintedBoard.Of(seed, families))).Select(one => one.Sample).ToArray();
        return [.. samples.Zip(SignReader.Standard.Read([.. samples.Select(sample => sample.Sign)]))];
    });

    private static IEnumerable<(SignSample Sample, SignReading Reading)> Digits => Signs.Value.Where(one => one.Sample.Class != GlyphSample.NoDigit);

    [Fact]
    public void Signs_are_read()
    {
        var (right, surelyWrong, all) = (0, 0, 0);
        foreach (var (sample, reading) in Signs.Value)
        {
            float[] odds = [.. reading.Odds, 1 - reading.Odds.Sum()];
            var read = Array.IndexOf(odds, odds.Max());
            all++;
            right += read == sample.Class ? 1 : 0;
            surelyWrong += read != sample.Class && odds.Max() >= 0.95f ? 1 : 0;
        }

        Assert.InRange(all, 2000, 5000);
        Assert.InRange(right / (double)all, 0.975, 1);
        Assert.InRange(surelyWrong / (double)all, 0, 0.004);
    }

    [Fact]
    public void Lines_through_digits_are_told() => Check(sample => sample.IsStruck, reading => reading.Line, atLeast: 100, wrong: 0.02, surely: 0.002);

    [Fact]
    public void What_is_covered_is_told() => Check(sample => sample.Covered >= 0.2f, reading => reading.Cover, atLeast: 10, wrong: 0.01, surely: 0.002);

    private static void Check(Func<SignSample, bool> isThere, Func<SignReading, float> told, int atLeast, double wrong, double surely)
    {
        var all = Digits.Where(one => one.Sample.Covered is < 0.08f or >= 0.2f).Select(one => (Is: isThere(one.Sample), Told: told(one.Reading))).ToArray();

        Assert.InRange(all.Count(one => one.Is), atLeast, all.Length / 2);
        Assert.InRange(all.Count(one => one.Is != (one.Told >= 0.5f)) / (double)all.Length, 0, wrong);
        Assert.InRange(all.Count(one => one.Is ? one.Told < 0.02f : one.Told >= 0.98f) / (double)all.Length, 0, surely);
    }
}
