using Companion.Engine;

namespace Companion.Sight.Reading;

/// <summary>
/// Where marks stand on a board on which each digit has a place of its own in the cell: three by three, in whatever order of the rows. A
/// mark's place then tells its digit as well as its shape does.
/// </summary>
internal sealed class DigitPlaces
{
    // So many sure marks tell, and nearly all of them have to stand at the place of their digit.
    private const int Fewest = 20;
    private const float NearlyAll = 0.9f;

    // Parts of the cell: how far from its place a mark may stand, and how far two places are apart at least.
    private const float Near = 0.09f, Apart = 0.18f;

    private readonly float[] _columns, _rows;

    private DigitPlaces(float[] columns, float[] rows) => (_columns, _rows) = (columns, rows);

    /// <summary>The places of a board.</summary>
    /// <param name="sure">Its marks that are digits beyond doubt.</param>
    /// <returns>The places; null where the marks of the board stand otherwise.</returns>
    public static DigitPlaces? Of(IReadOnlyList<Sign> sure)
    {
        if (sure.Count < Fewest)
            return null;
        var columns = Middles(sure, index => index % 3, mark => mark.X);
        var rows = Middles(sure, index => index / 3, mark => mark.Y);
        if (columns is null || rows is null)
            return null;
        var places = new DigitPlaces(columns, rows);
        return sure.Count(mark => places.At(mark) == mark.Reading.Digit) >= NearlyAll * sure.Count ? places : null;
    }

    /// <summary>The digit at whose place a mark stands; null where it stands at none.</summary>
    /// <param name="mark">The mark.</param>
    public Digit? At(Sign mark)
    {
        var column = Array.FindIndex(_columns, x => Math.Abs(x - mark.X) <= Near);
        var row = Array.FindIndex(_rows, y => Math.Abs(y - mark.Y) <= Near);
        return column >= 0 && row >= 0 ? Digit.Of(3 * row + column + 1) : null;
    }

    private static float[]? Middles(IReadOnlyList<Sign> marks, Func<int, int> line, Func<Sign, float> at)
    {
        var middles = new float[3];
        for (var index = 0; index < middles.Length; index++)
        {
            float[] values = [.. marks.Where(mark => line(mark.Reading.Digit!.Value.Index) == index).Select(at)];
            if (values.Length == 0)
                return null;
            middles[index] = Ranked.At(values, values.Length / 2);
        }

        var isApart = Math.Abs(middles[0] - middles[1]) >= Apart && Math.Abs(middles[1] - middles[2]) >= Apart && Math.Abs(middles[0] - middles[2]) >= Apart;
        return isApart ? middles : null;
    }
}
