using System.Collections.Immutable;
using System.Globalization;

namespace Companion.Session.Asks.Calls;

/// <summary>The bands in which numbers of viewers are shown on air: coarse, so that a number says little when it grows by one.</summary>
public static class CallBands
{
    /// <summary>Where each band begins, in ascending order.</summary>
    public static ImmutableArray<int> All { get; } = [1, 2, 5, 10, 25, 50, 100, 250, 500, 1000];

    /// <summary>The band of a number.</summary>
    /// <param name="viewers">How many viewers, at least 1.</param>
    /// <returns>Where its band begins.</returns>
    public static int Of(int viewers)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(viewers, 1);
        return All.Last(band => band <= viewers);
    }

    /// <summary>A band as it is written: <c>1</c>, <c>2+</c>, <c>1k+</c>.</summary>
    /// <param name="band">Where it begins.</param>
    public static string NameOf(int band) => band switch
    {
        1 => "1",
        >= 1000 => $"{band / 1000}k+",
        _ => band.ToString(CultureInfo.InvariantCulture) + "+",
    };
}
