namespace Companion.Sight.Finding;

/// <summary>Runs that begin and end at the same places, as the parallel lines of a grid do.</summary>
/// <param name="From">Where they begin.</param>
/// <param name="To">Where they end.</param>
/// <param name="At">The coordinates of the runs, ascending.</param>
internal sealed record Bundle(float From, float To, IReadOnlyList<int> At)
{
    // How far the ends of lines of one grid differ: by the thickness of the border.
    private const int EndTolerance = 6;

    // Block lines without an outer border: two lines with two edges each, or thick enough to be seen by one edge each.
    private const int FewestRuns = 3;

    /// <summary>From end to end.</summary>
    public float Length => To - From;

    /// <summary>How many runs lie between two coordinates, with a little room outside them.</summary>
    /// <param name="from">The lower one.</param>
    /// <param name="to">The upper one.</param>
    public int CountWithin(float from, float to) => At.Count(at => at >= from - EndTolerance && at <= to + EndTolerance);

    /// <summary>Gathers runs; the largest bundles come first.</summary>
    /// <param name="runs">The runs.</param>
    public static List<Bundle> Of(List<EdgeRun> runs)
    {
        var bundles = new List<Bundle>();
        var sorted = runs.OrderBy(run => run.From).ToArray();
        var first = 0;
        for (var seed = 0; seed < sorted.Length; seed++)
        {
            while (sorted[first].From < sorted[seed].From - EndTolerance)
                first++;
            var members = new List<EdgeRun>();
            for (var other = first; other < sorted.Length && sorted[other].From <= sorted[seed].From + EndTolerance; other++)
            {
                if (Math.Abs(sorted[other].To - sorted[seed].To) <= EndTolerance)
                    members.Add(sorted[other]);
            }

            if (members.Count >= FewestRuns)
                Add(bundles, members);
        }

        return [.. bundles.OrderByDescending(bundle => bundle.At.Count)];
    }

    private static void Add(List<Bundle> bundles, List<EdgeRun> members)
    {
        var bundle = new Bundle(
            Median(members.Select(run => run.From)),
            Median(members.Select(run => run.To)),
            [.. members.Select(run => run.At).Distinct().Order()]);
        var same = bundles.FindIndex(other => Math.Abs(other.From - bundle.From) <= 2 && Math.Abs(other.To - bundle.To) <= 2);
        if (same < 0)
            bundles.Add(bundle);
        else if (bundles[same].At.Count < bundle.At.Count)
            bundles[same] = bundle;
    }

    private static float Median(IEnumerable<int> values)
    {
        int[] sorted = [.. values.Order()];
        return (sorted[(sorted.Length - 1) / 2] + sorted[sorted.Length / 2]) / 2f;
    }
}
