using Companion.Sight.Samples;
using Companion.Sight.Training.Network;

namespace Companion.Sight.Training.Recording;

/// <summary>How well samples were read by the reader itself.</summary>
/// <param name="Count">How many there were.</param>
/// <param name="Wrong">How many were read wrongly, however surely.</param>
/// <param name="HeldBack">How many were read with less certainty than what is entered unasked.</param>
/// <param name="WrongEntered">How many were read wrongly and surely.</param>
/// <param name="Confusions">How often each class (first index) was read as each (second).</param>
/// <param name="WrongByFamily">How many were read wrongly in each family, most first.</param>
internal sealed record Figures(
    int Count, int Wrong, int HeldBack, int WrongEntered, int[,] Confusions, IReadOnlyList<(string Family, int Wrong, int Count)> WrongByFamily)
{
    /// <summary>Reads samples.</summary>
    public static Figures Of(GlyphReader reader, SampleSet samples)
    {
        var readings = new List<GlyphReading>(samples.Count);
        for (var first = 0; first < samples.Count; first += SampleSet.Portion)
            readings.AddRange(reader.Read([.. Enumerable.Range(first, SampleSet.Portion).Select(samples.Image)]));
        var confusions = new int[GlyphSample.Classes, GlyphSample.Classes];
        for (var index = 0; index < samples.Count; index++)
            confusions[samples.Kinds[index], Class(readings[index])]++;
        return new(
            samples.Count,
            readings.Where((reading, index) => IsWrong(index)).Count(),
            readings.Count(reading => reading.Certainty < CellReading.Sure),
            readings.Where((reading, index) => IsWrong(index) && reading.Certainty >= CellReading.Sure).Count(),
            confusions,
            [
                .. Enumerable.Range(0, samples.Count).GroupBy(index => samples.Families[index])
                    .Select(family => (family.Key, family.Count(IsWrong), family.Count()))
                    .OrderByDescending(family => (double)family.Item2 / family.Item3).ThenBy(family => family.Key, StringComparer.Ordinal),
            ]);

        bool IsWrong(int index) => Class(readings[index]) != samples.Kinds[index];
    }

    /// <summary>The part that was read rightly.</summary>
    public double Right => 1 - (double)Wrong / Count;

    /// <summary>The part that was read rightly, of the digits alone.</summary>
    public double DigitsRight
    {
        get
        {
            var (right, all) = (0, 0);
            for (var kind = 0; kind < GlyphSample.NoDigit; kind++)
                for (var read = 0; read < GlyphSample.Classes; read++)
                    (right, all) = (right + (kind == read ? Confusions[kind, read] : 0), all + Confusions[kind, read]);
            return (double)right / all;
        }
    }

    private static int Class(GlyphReading reading) => reading.Digit?.Index ?? GlyphSample.NoDigit;
}
