namespace Companion.Sight.Reading;

/// <summary>Reads the signs of cells: all at once, then what stayed unsure in other ways, then lines through marks.</summary>
/// <param name="read">Reads glyphs, in their order.</param>
/// <param name="around">Reads signs among what stands around them; null where nobody does.</param>
internal sealed class GlyphRounds(Func<IReadOnlyList<GlyphImage>, IReadOnlyList<GlyphReading>> read, SignReader? around)
{
    // Another way of seeing things has to be convincing, and stays a little less sure than a plain one.
    private const float Convincing = 0.85f;
    private const float Indirect = 0.98f;

    // What is nothing as a whole is rather digits that leave nothing behind, though somebody has to look.
    private const float Likely = 0.6f;

    // What stays of a mark without the line through it is worse to read.
    private const float StillDigit = 0.7f;

    // No digit has a level stroke longer than it is high: a line goes through several digits, and what they are is a guess.
    private const float Struck = 0.85f;

    /// <summary>Reads; signs that turn out to be several are replaced by them.</summary>
    /// <param name="sketches">The cells.</param>
    /// <param name="board">All cells of the board, to whose digits and marks the heights are held; the others were read before.</param>
    public void Read(IReadOnlyList<CellSketch> sketches, IReadOnlyList<CellSketch> board)
    {
        Read(sketches.SelectMany(sketch => sketch.Signs).ToList());
        LookAgain(sketches);
        // Only marks are struck.
        var all = sketches.SelectMany(sketch => sketch.Signs).ToList();
        var bigFrom = Heights.Threshold(board.SelectMany(sketch => sketch.Signs).Where(sign => sign.IsSure));
        FindStrikes(all.FindAll(sign => sign.IsMark(bigFrom)));
        foreach (var sketch in sketches)
        {
            foreach (var sign in sketch.Signs)
                sign.Alone = (sketch.HadRing || sign.IsMixed ? sign.Reading with { Certainty = sign.Reading.Certainty * Struck } : sign.Reading, sign.IsStruck);
        }
    }

    private void Read(List<Sign> signs)
    {
        ReadAlone(signs);
        foreach (var (sign, reading) in signs.Zip(around?.Read(signs) ?? []))
            (sign.Around, sign.Reading) = (reading, reading.With(sign.Reading));
    }

    private void ReadAlone(List<Sign> signs)
    {
        var readings = read(signs.ConvertAll(sign => sign.Glyph));
        for (var index = 0; index < signs.Count; index++)
            signs[index].Reading = readings[index];
    }

    private void LookAgain(IReadOnlyList<CellSketch> sketches)
    {
        var ways =
            (from sketch in sketches
             from sign in sketch.Signs
             where !sign.IsSure
             from way in SecondLook.Ways(sign, sketch)
             select (Sketch: sketch, Sign: sign, Way: way)).ToList();
        Read(ways.SelectMany(way => way.Way).ToList());
        foreach (var group in ways.GroupBy(way => way.Sign))
        {
            // What leaves no ink behind comes first: where one of two digits that touch is read alone, the other is lost.
            var best = group.MaxBy(way => (Certainty(way.Way) >= Convincing && Rest(way.Sign, way.Way) is null, Certainty(way.Way)));
            var least = group.Key.Reading.Digit is not null ? Math.Max(Convincing, group.Key.Reading.Certainty)
                : Rest(best.Sign, best.Way) is null ? Likely
                : Convincing;
            if (Certainty(best.Way) < least || !best.Sketch.Signs.Contains(group.Key))
                continue;
            best.Sketch.Signs.RemoveAll(sign => sign == group.Key || best.Way.Exists(part => Covers(part, sign)));
            var faith = group.Key.Blob.LongestRun(group.Key.Ink.Cell.Width) >= group.Key.Blob.Height ? Struck : Indirect;
            foreach (var part in best.Way)
                (part.Reading, part.IsPart) = (part.Reading with { Certainty = part.Reading.Certainty * faith }, true);
            best.Sketch.Signs.AddRange(best.Way);
            if (Rest(group.Key, best.Way) is { } rest)
                best.Sketch.Leftovers.Add(rest);
        }
    }

    private static float Certainty(List<Sign> way) => way.Min(part => part.Reading.Digit is null ? 0 : part.Reading.Certainty);

    private static Blob? Rest(Sign sign, List<Sign> way)
    {
        var rest = sign.Blob.Without(way.Select(part => part.Blob), sign.Ink);
        return BlobSorting.Of(rest, sign.Ink) == BlobKind.Ignorable ? null : rest;
    }

    private static bool Covers(Sign part, Sign other) =>
        other.Blob.Left >= part.Blob.Left && other.Blob.Top >= part.Blob.Top && other.Blob.Right <= part.Blob.Right && other.Blob.Bottom <= part.Blob.Bottom;

    private void FindStrikes(List<Sign> marks)
    {
        var rests =
            (from mark in marks
             from rest in Strike.Rests(mark.Blob, mark.Ink)
             select (Mark: mark, Kept: new Sign(mark.Blob, mark.Ink, rest.Remainder), rest.IsClear, rest.IsFree)).ToList();
        ReadAlone(rests.ConvertAll(rest => rest.Kept));
        foreach (var (mark, rest, isClear, isFree) in rests)
        {
            var isDigit = rest.Reading.Digit is { } digit && rest.Reading.Certainty >= StillDigit && (digit == mark.Reading.Digit || !mark.IsSure);
            // A 4 has straight strokes with free ends of its own.
            var isFour = mark.IsSure && mark.Reading.Digit is { Value: 4 };
            if (mark.IsStruck || (!isDigit && (!isClear || isFour)))
                continue;
            mark.IsStruck = true;
            mark.Reading = Together(mark.Reading, rest.Reading);
            // A line that ends with the digit may be a blurred stroke of it: somebody has to look.
            if (!isFree)
                mark.Reading = mark.Reading with { Certainty = mark.Reading.Certainty * Struck };
        }
    }

    // The mark as a whole, and what stays of it without the line: where they do not agree nothing is sure.
    private static GlyphReading Together(GlyphReading whole, GlyphReading rest)
    {
        var better = rest.Digit is null || (whole.Digit is not null && whole.Certainty >= rest.Certainty) ? whole : rest;
        var doubt = whole.Digit is not null && rest.Digit is not null && whole.Digit != rest.Digit ? Math.Min(whole.Certainty, rest.Certainty) : 0;
        return better with { Certainty = better.Certainty * (1 - doubt / 2) };
    }
}
