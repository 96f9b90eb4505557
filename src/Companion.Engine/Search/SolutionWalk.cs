namespace Companion.Engine.Search;

/// <summary>One exhaustive walk over the ways to fill a position, depth first, until enough have been met.</summary>
/// <param name="wanted">How many solutions end the walk.</param>
/// <param name="found">Where they are kept, or null to count them only.</param>
/// <param name="most">After how many turns it gives up; without end by default.</param>
internal struct SolutionWalk(int wanted, List<Solution>? found, int most = int.MaxValue)
{
    private int _left = most;

    /// <summary>Whether it gave up, so that there may be more solutions than have been met.</summary>
    internal readonly bool GaveUp => _left < 0;

    /// <summary>How many solutions have been met.</summary>
    internal int Met { get; private set; }

    /// <summary>Walks on from a position, which is used up.</summary>
    internal void From(ref Position position)
    {
        while (position.Narrow(out var counts))
        {
            if (!counts.HasOpen)
            {
                Met++;
                found?.Add(position.ToSolution());
                return;
            }

            if (--_left < 0)
                return;
            // Either the candidate is true, or it is false: the two parts have no solution in common and miss none.
            var candidate = position.Choose(counts);
            var part = position;
            part.Take(candidate);
            From(ref part);
            if (Met == wanted || GaveUp)
                return;
            position.Strike(candidate);
        }
    }
}
