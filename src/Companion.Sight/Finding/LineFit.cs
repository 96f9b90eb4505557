using System.Collections.Immutable;

namespace Companion.Sight.Finding;

/// <summary>Fits ten lines at even distances to what is seen of them.</summary>
internal static class LineFit
{
    // Of the distance between two lines: how far a line may be from where it is expected, first and after a first fit.
    private const float WideSearch = 0.2f;
    private const float NarrowSearch = 0.12f;

    // The outermost lines may be missing, and what is seen instead is the edge of something else.
    private const float OuterSearch = 0.06f;

    // Edges beside nearly as many cells as the best one, and not much fainter, belong to the same line.
    private const float SameLine = 0.7f;
    private const float SameStrength = 0.35f;

    /// <summary>Fits both directions.</summary>
    /// <param name="frame">The picture.</param>
    /// <param name="columns">Where the upright lines are about.</param>
    /// <param name="rows">Where the level lines are about.</param>
    public static GridFit Of(Frame frame, GridLines columns, GridLines rows)
    {
        foreach (var search in (ReadOnlySpan<float>)[WideSearch, NarrowSearch])
        {
            columns = Fit(frame, columns, rows, isUpright: true, search);
            rows = Fit(frame, rows, columns, isUpright: false, search);
        }

        columns = Fit(frame, columns, rows, isUpright: true, NarrowSearch);
        return new(columns, rows, Math.Min(Between(frame, columns, rows, isUpright: true), Between(frame, rows, columns, isUpright: false)));
    }

    private static GridLines Fit(Frame frame, GridLines lines, GridLines along, bool isUpright, float search)
    {
        var reach = Math.Max(3, search * lines.Pitch);
        var profile = StepProfile.Of(frame, along, lines.At[0] - reach, lines.At[^1] + reach, isUpright);
        return Straighten([.. lines.At.Select(at => Seen(profile, at, reach))], lines);
    }

    private static float Between(Frame frame, GridLines lines, GridLines along, bool isUpright)
    {
        var profile = StepProfile.Of(frame, along, lines.At[0], lines.At[^1], isUpright, inMargins: true);
        var reach = Math.Max(2, NarrowSearch / 2 * lines.Pitch);
        return lines.At.Zip(lines.At.Skip(1)).Average(line => Seen(profile, (line.First + line.Second) / 2, reach).Support);
    }

    private static (float At, float Half, float Support) Seen(StepProfile profile, float expected, float reach)
    {
        var from = Math.Max(profile.First, (int)MathF.Ceiling(expected - reach));
        var to = Math.Min(profile.End - 1, (int)(expected + reach));
        var most = 0;
        for (var at = from; at <= to; at++)
            most = Math.Max(most, profile.CountAt(at));
        if (most == 0)
            return (expected, 0, 0);
        var enough = Math.Max(1, SameLine * most);
        var strongest = 0f;
        for (var at = from; at <= to; at++)
        {
            if (profile.CountAt(at) >= enough)
                strongest = Math.Max(strongest, profile.MedianAt(at));
        }

        var (first, last) = (-1, -1);
        for (var at = from; at <= to; at++)
        {
            if (profile.CountAt(at) >= enough && profile.MedianAt(at) >= SameStrength * strongest)
                (first, last) = (first < 0 ? at : first, at);
        }

        return ((first + last) / 2f, (last - first) / 2f, most / (GridLines.Count - 1f));
    }

    // Lines that are seen well stay where they are seen; the others go where an even grid has them.
    private static GridLines Straighten((float At, float Half, float Support)[] seen, GridLines expected)
    {
        const float Well = 0.6f;
        var good = Enumerable.Range(0, seen.Length).Where(line => seen[line].Support >= Well).ToList();
        if (good.Count < 3)
            return expected with { Support = [.. seen.Select(line => line.Support)] };
        var (origin, pitch) = Regression(good, seen);
        // Half of them nearest to the fit decide it anew, so that one wrong line does not tilt it.
        var near = good.OrderBy(line => Math.Abs(seen[line].At - origin - line * pitch)).Take(Math.Max(3, (good.Count + 2) / 2)).ToList();
        (origin, pitch) = Regression(near, seen);
        var places = ImmutableArray.CreateBuilder<float>(seen.Length);
        var halves = ImmutableArray.CreateBuilder<float>(seen.Length);
        var supports = ImmutableArray.CreateBuilder<float>(seen.Length);
        for (var line = 0; line < seen.Length; line++)
        {
            var even = origin + line * pitch;
            var isHere = seen[line].Support >= Well && Math.Abs(seen[line].At - even) <= Math.Max(3, (line is 0 or 9 ? OuterSearch : NarrowSearch) * pitch);
            places.Add(isHere ? seen[line].At : even);
            halves.Add(isHere ? seen[line].Half : 0);
            supports.Add(isHere || seen[line].Support < Well ? seen[line].Support : 0);
        }

        return new(places.ToImmutable(), halves.ToImmutable(), supports.ToImmutable());
    }

    private static (float Origin, float Pitch) Regression(List<int> lines, (float At, float Half, float Support)[] seen)
    {
        var middle = (float)lines.Average();
        var mean = lines.Average(line => seen[line].At);
        var spread = lines.Sum(line => (line - middle) * (line - middle));
        if (spread == 0)
            return (mean, 0);
        var pitch = lines.Sum(line => (line - middle) * (seen[line].At - mean)) / spread;
        return (mean - pitch * middle, pitch);
    }
}
