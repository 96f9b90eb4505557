namespace Companion.Engine.Rules.Chains;

/// <summary>The parts of a house where other houses cross it: three rows and three columns of a block, three blocks of a line.</summary>
internal static class Segments
{
    private static readonly CellSet[][] OfHouse = [.. HouseSet.All.Select(Crossing)];

    /// <summary>
    /// The ways to part these places of a house in two groups, each in one segment: two rows of a block, say, or a row and a column
    /// of it. Some ways come twice, from either side. None where all lie in one segment: they are a single group, which is true.
    /// </summary>
    internal static Enumerator InTwo(House house, CellSet places) => new(OfHouse[house.Index], places);

    private static CellSet[] Crossing(House house) =>
        [.. (house.IsLine ? HouseSet.Blocks : HouseSet.Lines).Select(other => other.Cells & house.Cells).Where(cells => !cells.IsEmpty)];

    /// <summary>Walks the ways without allocating.</summary>
    internal struct Enumerator(CellSet[] segments, CellSet places)
    {
        private int _next = IsInOne(segments, places) ? segments.Length : 0;

        /// <summary>The way the walk is at.</summary>
        public (CellSet One, CellSet Other) Current { get; private set; }

        /// <summary>This, for the foreach statement.</summary>
        public readonly Enumerator GetEnumerator() => this;

        /// <summary>Goes to the next way.</summary>
        public bool MoveNext()
        {
            while (_next < segments.Length)
            {
                var one = places & segments[_next++];
                var other = places - one;
                if (one.IsEmpty || other.IsEmpty || !IsInOne(segments, other))
                    continue;
                Current = (one, other);
                return true;
            }

            return false;
        }

        private static bool IsInOne(CellSet[] segments, CellSet cells)
        {
            foreach (var segment in segments)
            {
                if (segment.ContainsAll(cells))
                    return true;
            }

            return false;
        }
    }
}
