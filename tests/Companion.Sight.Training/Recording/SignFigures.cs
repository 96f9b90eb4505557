using Companion.Sight.Reading;
using Companion.Sight.Training.Network;

namespace Companion.Sight.Training.Recording;

/// <summary>How well signs of boards were read by the reader itself.</summary>
/// <param name="Count">How many there were.</param>
/// <param name="Wrong">How many were read wrongly, however surely.</param>
/// <param name="HeldBack">How many were read with less certainty than what is entered unasked.</param>
/// <param name="WrongEntered">How many were read wrongly and surely.</param>
/// <param name="Lines">Lines through digits.</param>
/// <param name="Covers">What covers much of digits.</param>
internal sealed record SignFigures(int Count, int Wrong, int HeldBack, int WrongEntered, Told Lines, Told Covers)
{
    /// <summary>The part that was read rightly.</summary>
    public double Right => 1 - (double)Wrong / Count;

    /// <summary>Reads signs.</summary>
    public static SignFigures Of(SignReader reader, SignSet signs)
    {
        var readings = signs.Read(reader).ToList();
        var (wrong, heldBack, wrongEntered) = (0, 0, 0);
        for (var index = 0; index < signs.Count; index++)
        {
            var (kind, certainty) = Surest(readings[index]);
            wrong += kind != signs.Kinds[index] ? 1 : 0;
            heldBack += certainty < CellReading.Sure ? 1 : 0;
            wrongEntered += kind != signs.Kinds[index] && certainty >= CellReading.Sure ? 1 : 0;
        }

        var digits = Enumerable.Range(0, signs.Count).Where(signs.IsDigit).ToList();
        return new(
            signs.Count, wrong, heldBack, wrongEntered,
            Told.Of(digits.Select(index => (signs.Lines[index] == 1, readings[index].Line))),
            Told.Of(digits.Where(index => signs.Covers[index] != SignSet.Between).Select(index => (signs.Covers[index] == 1, readings[index].Cover))));
    }

    private static (int Kind, float Certainty) Surest(SignReading reading)
    {
        float[] all = [.. reading.Odds, 1 - reading.Odds.Sum()];
        float[] ranked = [.. all.OrderDescending()];
        return (Array.IndexOf(all, ranked[0]), ranked[0] - ranked[1]);
    }
}

/// <summary>How well it was told whether there is something.</summary>
/// <param name="There">Where it is.</param>
/// <param name="Missed">Where it is and was not told.</param>
/// <param name="SurelyMissed">Those where the reader was sure of it.</param>
/// <param name="Elsewhere">Where it is not.</param>
/// <param name="Invented">Where it is not and was told.</param>
/// <param name="SurelyInvented">Those where the reader was sure of it.</param>
internal readonly record struct Told(int There, int Missed, int SurelyMissed, int Elsewhere, int Invented, int SurelyInvented)
{
    private const float Sure = 0.98f;

    /// <summary>Counts.</summary>
    public static Told Of(IEnumerable<(bool Is, float Likely)> all)
    {
        var told = all.ToLookup(one => one.Is, one => one.Likely);
        return new(
            told[true].Count(), told[true].Count(likely => likely < 0.5f), told[true].Count(likely => likely < 1 - Sure),
            told[false].Count(), told[false].Count(likely => likely >= 0.5f), told[false].Count(likely => likely >= Sure));
    }

    /// <inheritdoc/>
    public override string ToString() =>
        FormattableString.Invariant($"{There}, missed {Missed} ({SurelyMissed} surely); {Elsewhere} without, invented {Invented} ({SurelyInvented} surely)");
}
