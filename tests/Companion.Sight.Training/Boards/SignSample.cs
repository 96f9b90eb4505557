using Companion.Sight.Reading;
using Companion.Sight.Samples;

namespace Companion.Sight.Training.Boards;

/// <summary>A sign as it is found on a board, and what it is.</summary>
/// <param name="Sign">The sign.</param>
/// <param name="Class">0 to 8 for the digits 1 to 9, or <see cref="GlyphSample.NoDigit"/>.</param>
/// <param name="IsStruck">Whether a line goes through it.</param>
/// <param name="IsBig">Whether it is a digit and no mark.</param>
/// <param name="Covered">The part of the ink, and of the line's, that lies under something: 0 to 1.</param>
internal readonly record struct SignSample(Sign Sign, int Class, bool IsStruck, bool IsBig, float Covered)
{
    // Of a digit's ink: what holds so much of it is that digit, what holds less than the second part is none; of another digit no more than the
    // third may be with it, and from the fourth on it is two.
    private const float Whole = 0.75f, Half = 0.45f, Touched = 0.15f, Both = 0.5f;

    // Of the ink: what is covered by more is no digit to anybody, what is covered by less still is one.
    private const float Lost = 0.65f, Seen = 0.5f;

    // Where a digit is no higher than this part of the sign, the sign is something else with a digit in it.
    private const float Small = 0.4f;

    /// <summary>
    /// The signs of a board as they are cut out of it, and what is cut out for a second look, but those of which nobody can say what they are.
    /// </summary>
    /// <param name="board">The board.</param>
    /// <returns>The samples; true with those that are cut out for a second look.</returns>
    public static IEnumerable<(SignSample Sample, bool IsSecondLook)> Of(PaintedBoard board)
    {
        var straight = StraightBoard.Of(board.Frame, board.Place);
        CellSketch[] sketches = [.. straight.Boxes.Select(box => CellSketch.Of(straight.Frame, box))];
        var pieces = board.Pieces.ToLookup(piece => piece.Cell);
        var first = sketches.Select(sketch => sketch.Signs.ToArray()).ToArray();
        new GlyphRounds(glyphs => GlyphReader.Standard.Read(glyphs), around: null).Read(sketches, sketches);
        for (var index = 0; index < sketches.Length; index++)
        {
            var now = sketches[index].Signs;
            var ways = first[index].Where(sign => !now.Contains(sign) || !sign.IsSure).SelectMany(sign => SecondLook.Ways(sign, sketches[index])).SelectMany(way => way);
            foreach (var sign in now.Concat(ways))
            {
                if (Of(sign, [.. pieces[index]]) is { } sample)
                    yield return (sample, !now.Contains(sign));
            }
        }
    }

    private static SignSample? Of(Sign sign, BoardPiece[] pieces)
    {
        var parts = pieces.Select(piece => (Piece: piece, Part: Part(sign, piece))).OrderByDescending(one => one.Part).ToList();
        var nothing = new SignSample(sign, GlyphSample.NoDigit, false, false, 0);
        if (parts.Count == 0)
            return nothing;
        var (first, part) = parts[0];
        // What lies under something else may be the sign's or not.
        var visible = 1 - first.Covered;
        if (part <= Half * visible)
            return nothing;
        var second = parts.Count > 1 ? parts[1].Part : 0;
        if (second >= Both)
            return nothing;
        if (part < Whole * visible || second > Touched || first.Covered is > Seen and < Lost)
            return null;
        return first.Covered >= Lost || first.Place.Height < Small * Math.Max(sign.Blob.Width, sign.Blob.Height)
            ? nothing
            : new(sign, first.Digit - 1, first.IsStruck, first.IsBig, first.Covered);
    }

    // The part of a digit's ink that is the sign's.
    private static float Part(Sign sign, BoardPiece piece)
    {
        var (x, y, width) = (sign.Ink.Box.Left, sign.Ink.Box.Top, sign.Ink.Cell.Width);
        return sign.Blob.Pixels.Sum(pixel => piece.At(x + pixel % width, y + pixel / width)) / (float)Math.Max(1, piece.All);
    }
}
