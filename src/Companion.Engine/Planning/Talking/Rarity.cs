using System.Collections.Immutable;
using System.Text.Json;

namespace Companion.Engine.Planning.Talking;

/// <summary>How often a remark can be made, measured over many puzzles.</summary>
/// <param name="Puzzles">Of how many puzzles.</param>
/// <param name="Counts">For each <see cref="TalkingPoint.Key"/>, of how many of them such a remark, or one with a greater figure, is true.</param>
public sealed record Rarity(int Puzzles, ImmutableDictionary<string, int> Counts)
{
    /// <summary>Reads the table.</summary>
    /// <param name="json">The text of a file such as <c>configs/rarity.json</c>.</param>
    /// <exception cref="FormatException">It is not such a table.</exception>
    public static Rarity Parse(string json)
    {
        try
        {
            using var document = JsonDocument.Parse(json);
            return new(
                document.RootElement.GetProperty("puzzles").GetInt32(),
                document.RootElement.GetProperty("counts").EnumerateObject().ToImmutableDictionary(count => count.Name, count => count.Value.GetInt32()));
        }
        catch (Exception fault) when (fault is JsonException or InvalidOperationException or KeyNotFoundException or FormatException)
        {
            throw new FormatException($"The table of rarities cannot be used: {fault.Message}", fault);
        }
    }

    /// <summary>
    /// One in how many puzzles such a remark is true: 40 for one in 40. A remark that none of the puzzles had counts as one in all of
    /// them; null for what can be said of every route.
    /// </summary>
    /// <param name="point">The remark.</param>
    public double? OneIn(TalkingPoint point)
    {
        ArgumentNullException.ThrowIfNull(point);
        return point.Key is not null ? (double)Puzzles / Math.Max(1, CountOf(point)) : null;
    }

    /// <summary>Of how many puzzles such a remark is true; 0 too for what can be said of every route.</summary>
    /// <param name="point">The remark.</param>
    public int CountOf(TalkingPoint point)
    {
        ArgumentNullException.ThrowIfNull(point);
        return point.Key is { } key ? Counts.GetValueOrDefault(key) : 0;
    }

    /// <summary>Whether any of the puzzles had such a remark.</summary>
    /// <param name="point">The remark.</param>
    public bool IsKnown(TalkingPoint point) => CountOf(point) > 0;

    /// <summary>Remarks, the rarest first; what can be said of every route comes last, and equals stay in their order.</summary>
    /// <param name="points">The remarks.</param>
    public IEnumerable<TalkingPoint> Rank(IEnumerable<TalkingPoint> points) => points.OrderByDescending(point => OneIn(point) ?? 0);
}
