namespace Companion.Sight.Reading;

/// <summary>How far each pixel of a cell is from the cell's ground, and from every wide patch of another colour in it.</summary>
internal sealed class CellInk
{
    // Differences below this are noise of compression on flat ground.
    private const float LeastContrast = 18;

    // Of the cell: no stroke of a digit holds a square of this side; shapes under digits, like discs and fills, do.
    private const float WidePatch = 0.3f;
    private const int MostPatches = 3;

    private CellInk(CellBox box, CellPixels cell, Ground ground, float[] distance) =>
        (Box, Cell, Ground, Distance, Grounds) = (box, cell, ground, distance, [ground.Middle]);

    /// <summary>Where the cell is.</summary>
    public CellBox Box { get; }

    /// <summary>Its pixels.</summary>
    public CellPixels Cell { get; }

    /// <summary>Its ground.</summary>
    public Ground Ground { get; }

    /// <summary>The colours of its ground and of every wide patch in it.</summary>
    public List<Rgb> Grounds { get; }

    /// <summary>Row by row, 0 to 255.</summary>
    public float[] Distance { get; }

    /// <summary>The least difference that is more than noise.</summary>
    public float Noise { get; private set; }

    /// <summary>The greatest difference, but for a few pixels.</summary>
    public float Peak { get; private set; }

    /// <summary>Whether there is nothing at all in the cell.</summary>
    public bool IsBlank => Peak < Noise;

    /// <summary>Measures a cell.</summary>
    /// <param name="frame">The straight picture.</param>
    /// <param name="box">The cell.</param>
    public static CellInk Of(Frame frame, CellBox box)
    {
        var cell = CellPixels.Of(frame, box);
        var ground = Ground.Of(cell);
        var distance = ground.IsFlat ? cell.Distances(ground.Middle) : Distances(cell, ground);
        var ink = new CellInk(box, cell, ground, distance);
        ink.Measure();
        for (var patch = 0; patch < MostPatches && !ink.IsBlank && ink.TakeOutPatch(); patch++)
            ink.Measure();
        return ink;
    }

    /// <summary>Takes out what the grid's lines have left along an edge of the cell: a row that is ink over most of its length, and no stroke.</summary>
    /// <param name="least">What is farther from the ground is ink.</param>
    public void TakeOutLines(float least)
    {
        const float Most = 0.6f;
        var (width, height) = (Cell.Width, Cell.Height);
        foreach (var (first, step, count, inward) in ((int, int, int, int)[])
            [(0, 1, width, width), ((height - 1) * width, 1, width, -width), (0, width, height, 1), (width - 1, width, height, -1)])
        {
            if (Part(first) < Most || Part(first + inward) >= Most)
                continue;
            for (var index = 0; index < count; index++)
                Distance[first + index * step] = 0;

            float Part(int from)
            {
                var ink = 0;
                for (var index = 0; index < count; index++)
                    ink += Distance[from + index * step] > least ? 1 : 0;
                return ink / (float)count;
            }
        }
    }

    private static float[] Distances(CellPixels cell, Ground ground)
    {
        var distances = new float[cell.Count];
        for (var (pixel, y) = (0, 0); y < cell.Height; y++)
        {
            for (var x = 0; x < cell.Width; x++, pixel++)
                distances[pixel] = cell[pixel].Distance(ground.At(x, y));
        }

        return distances;
    }

    // Counted in steps, not sorted: a cell has thousands of pixels.
    private void Measure()
    {
        const int Few = 5, Quiet = 4, Steps = 8, Most = 256;
        Span<int> counts = stackalloc int[Steps * Most];
        counts.Clear();
        foreach (var distance in Distance)
            counts[Math.Min((int)(Steps * distance), counts.Length - 1)]++;
        Peak = At(counts, Distance.Length - Math.Min(Distance.Length, Few)) / (float)Steps;
        Noise = LeastContrast + 3 * At(counts, Distance.Length / Quiet) / (float)Steps;

        static int At(ReadOnlySpan<int> counts, int rank)
        {
            var step = 0;
            for (var before = counts[0]; before <= rank; before += counts[step])
                step++;
            return step;
        }
    }

    // What is as wide as no stroke is ground of its own, and so are the mixtures along its edge.
    private bool TakeOutPatch()
    {
        var side = (int)(WidePatch * Math.Min(Box.CellWidth, Box.CellHeight));
        var isInk = new bool[Distance.Length];
        for (var pixel = 0; pixel < isInk.Length; pixel++)
            isInk[pixel] = Distance[pixel] > Noise;
        var patch = AlongEdge(isInk);
        if (patch is null && (patch = Squares.Covered(isInk, Cell.Width, side)) is not null && !IsWide(isInk, patch, Cell.Sample(patch).Mode(), side))
            patch = null;
        if (patch is null)
            return false;
        var colour = Cell.Sample(patch).Mode();
        Grounds.Add(colour);
        return TakeOut(patch, colour) >= side * side / 4;
    }

    // Only what hangs together with the patch: a digit may have its colour, and stand apart from it.
    private int TakeOut(bool[] patch, Rgb colour)
    {
        const float Even = 4;
        var (taken, open, isSeen) = (0, new Stack<int>(), new bool[patch.Length]);
        var before = (float[])Distance.Clone();
        bool IsAlike(int pixel) => Cell[pixel].Distance(colour) <= LeastContrast;
        for (var pixel = 0; pixel < patch.Length; pixel++)
        {
            if (patch[pixel])
                open.Push(pixel);
        }

        while (open.TryPop(out var pixel))
        {
            if (isSeen[pixel])
                continue;
            isSeen[pixel] = true;
            var (x, y) = (pixel % Cell.Width, pixel / Cell.Width);
            var nearer = Cell[pixel].DistanceToMix(Ground.At(x, y), colour);
            var isOf = Distance[pixel] > Noise && nearer <= Noise;
            Distance[pixel] = Math.Min(Distance[pixel], nearer);
            if (!isOf)
                continue;
            taken++;
            for (var ny = Math.Max(0, y - 1); ny <= Math.Min(Cell.Height - 1, y + 1); ny++)
            {
                for (var nx = Math.Max(0, x - 1); nx <= Math.Min(Cell.Width - 1, x + 1); nx++)
                {
                    // Along its soft edge it only fades: where the colour comes back, something else begins.
                    var next = ny * Cell.Width + nx;
                    if (!isSeen[next] && (before[next] <= before[pixel] + Even || (IsAlike(next) && IsAlike(pixel))))
                        open.Push(next);
                }
            }
        }

        return taken;
    }

    // A digit and a shape beneath it make a wide patch together: only what is wide in its own colour is no digit.
    private bool IsWide(bool[] isInk, bool[] patch, Rgb colour, int side)
    {
        const float Wide = 0.6f;
        var isAlike = new bool[isInk.Length];
        var (left, top, right, bottom) = (Cell.Width, Cell.Height, 0, 0);
        for (var pixel = 0; pixel < isAlike.Length; pixel++)
        {
            if (!isInk[pixel] || Cell[pixel].Distance(colour) > LeastContrast)
                continue;
            isAlike[pixel] = true;
            // A frame around the cell may have the digit's colour: it makes nothing wide.
            if (!patch[pixel])
                continue;
            var (x, y) = (pixel % Cell.Width, pixel / Cell.Width);
            (left, top, right, bottom) = (Math.Min(left, x), Math.Min(top, y), Math.Max(right, x + 1), Math.Max(bottom, y + 1));
        }

        return (right - left >= Wide * Box.CellWidth && bottom - top >= Wide * Box.CellHeight) || Squares.Covered(isAlike, Cell.Width, side) is not null;
    }

    // What fills much of the cell's edge, a little inside it where rests of lines do not reach, is ground too: corners beside a disc.
    private bool[]? AlongEdge(bool[] isInk)
    {
        const int Inside = 2;
        const float Much = 0.2f;
        var edge = new bool[isInk.Length];
        var (count, length) = (0, 0);
        for (var y = Inside; y < Cell.Height - Inside; y++)
        {
            // Between the first and the last row only both ends are on the edge.
            var step = y == Inside || y == Cell.Height - 1 - Inside ? 1 : Math.Max(1, Cell.Width - 1 - 2 * Inside);
            for (var x = Inside; x < Cell.Width - Inside; x += step)
            {
                var pixel = y * Cell.Width + x;
                length++;
                edge[pixel] = isInk[pixel];
                count += isInk[pixel] ? 1 : 0;
            }
        }

        if (count < Much * length)
            return null;
        var colour = Cell.Sample(edge).Mode();
        var (alike, far) = (0, 0);
        for (var pixel = 0; pixel < edge.Length; pixel++)
        {
            var isAlike = isInk[pixel] && Cell[pixel].Distance(colour) <= LeastContrast;
            alike += isAlike ? 1 : 0;
            edge[pixel] &= isAlike;
            far += edge[pixel] ? 1 : 0;
        }

        return far >= Much * length && alike >= Much / 2 * edge.Length ? edge : null;
    }
}
