using Companion.Engine;

namespace Companion.Sight.Reading;

/// <summary>Puts together what a cell holds, and how sure that is.</summary>
internal sealed class CellVerdict
{
    // A cell with something in it that nothing explains.
    private const float Unexplained = 0.4f;

    // What is left over counts where it is as strong as this part of the digits' ink; fainter shapes are the page's ground.
    private const float AsStrong = 0.45f;

    // Things without a digit's look count from this part of the cell on.
    private const float Crumb = 0.075f;

    // A single mark in the middle that is nearly as high as a big digit, or so much higher than most marks, may be one: some hands write some
    // digits low.
    private const float NearlyBig = 0.85f, HigherMark = 1.25f;

    // No digit is so much higher than most: a shape has been taken for a part of it.
    private const float Higher = 1.35f;

    // A digit fainter than this part of its like is something on the page's ground; one fainter than the second part may be.
    private const float Faint = 0.35f, Faintish = 0.5f;

    // Ink that is expected to show less than so many times the noise may stand in a cell and not be seen: a compressed picture breaks thin
    // strokes.
    private const float Visible = 3.5f;

    // How much more ink it has.
    private const int Larger = 3;

    // Fewer marks do not tell how strong they are.
    private const int FewMarks = 5;

    // Below this certainty a reading is a guess.
    private const float Guess = 0.5f;

    private readonly float _bigFrom;
    private readonly float _highest;
    private readonly float _mark;
    private readonly InkStrength _big;
    private readonly InkStrength _small;

    /// <summary>Prepares for a board.</summary>
    /// <param name="board">Its cells, read.</param>
    /// <param name="bigFrom">From which height on a digit is big.</param>
    public CellVerdict(IReadOnlyList<CellSketch> board, float bigFrom)
    {
        var sure = board.SelectMany(sketch => sketch.Signs).Where(sign => sign.IsSure).ToList();
        _bigFrom = bigFrom;
        _big = new(board, sure.FindAll(IsBig));
        _highest = Higher * Median(sure.FindAll(IsBig));
        var small = sure.FindAll(sign => !IsBig(sign));
        _small = new(board, small);
        _mark = Median(small);
    }

    private static float Median(List<Sign> signs) =>
        signs.Count > 0 ? signs.Select(sign => sign.Height).Order().ElementAt(signs.Count / 2) : float.MaxValue;

    // The least that a digit shows in this cell; where there is nothing to compare with, everything counts.
    private float Weakest(CellInk ink)
    {
        var (big, small) = (_big.In(ink), _small.In(ink));
        return big == 0 || small == 0 ? Math.Max(big, small) : Math.Min(big, small);
    }

    private float PartOfUsual(Sign sign) => PartOfUsual(sign, IsBig(sign) ? _big : _small);

    private static float PartOfUsual(Sign sign, InkStrength kind) => sign.Blob.Peak / Math.Max(1, kind.In(sign.Ink));

    // Where a board has hardly any marks its big digits tell what is too faint for one, and a part of something is rather no mark.
    private bool IsLonely(Sign sign) => !IsBig(sign) && _small.Count < FewMarks && _big.Usual > 0 && (sign.IsPart || PartOfUsual(sign, _big) < Faintish);

    // On a ground of nearly their colour the board's digits do not show.
    private bool MayHide(CellInk ink) => new[] { _big, _small }.Any(kind => kind.Usual > 0 && kind.In(ink) < Math.Min(kind.Usual, Visible * ink.Noise));

    /// <summary>The big digit of a cell; null where there is none.</summary>
    /// <param name="sketch">The cell.</param>
    public Sign? Big(CellSketch sketch) => sketch.Signs.Where(sign => IsDigit(sign) && IsBig(sign)).MaxBy(sign => sign.Height);

    /// <summary>What a cell seems to hold.</summary>
    /// <param name="cell">Which one.</param>
    /// <param name="sketch">What is in it.</param>
    public CellDigits Digits(Cell cell, CellSketch sketch)
    {
        if (Big(sketch) is { } big)
            return new(cell, big, [], []);
        var odd = Odd(sketch);
        Sign[] marks = [.. ReadingOrder.Of(Digits(sketch, odd))];
        return new(cell, null, marks, Array.Exists(marks, mark => mark.IsSure) ? odd.FindAll(sign => PartOfUsual(sign) >= Faint && !IsBig(sign)) : []);
    }

    private List<Sign> Odd(CellSketch sketch) => sketch.Signs.FindAll(IsOdd);

    private List<Sign> Digits(CellSketch sketch, List<Sign> odd) =>
        sketch.Signs.FindAll(sign => IsDigit(sign) && (sign.IsSure || !odd.Exists(other => IsBeside(sign, other))));

    private bool IsDigit(Sign sign) => sign.Reading.Digit is not null && PartOfUsual(sign) >= Faint && !IsStrange(sign);

    // Only marks are struck, and the line makes them higher.
    private bool IsBig(Sign sign) => sign.Height >= _bigFrom && !sign.IsStruck;

    // As large as a big digit, doubtful and away from the middle: something that lies across the cell. Or little more than a guess, and faint,
    // of no digit's colour, or a mark on a board that has none.
    private bool IsStrange(Sign sign) => !sign.IsSure && sign.Reading.Digit is not null
        && ((IsBig(sign) && sign.IsOffMiddle) || IsLonely(sign)
            || (sign.Reading.Certainty < Guess && (PartOfUsual(sign) < Faintish || !(IsBig(sign) ? _big : _small).IsLike(sign)
                || (!IsBig(sign) && _small.Count < FewMarks))));

    /// <summary>The reading of a cell.</summary>
    /// <param name="cell">Which one.</param>
    /// <param name="sketch">What is in it.</param>
    /// <param name="isGiven">Whether its big digit is a given, if it has one.</param>
    public CellReading Of(Cell cell, CellSketch sketch, bool? isGiven)
    {
        var big = Big(sketch);
        var odd = Odd(sketch);
        var digits = Digits(sketch, odd);
        var small = digits.FindAll(sign => sign != big);
        var certainty = digits.Select(sign => sign.Reading.Certainty).DefaultIfEmpty(1).Min();
        if (odd.Count > 0 || HasUnexplained(sketch, digits) || IsDoubtful(digits) || (big is null ? AreDoubtful(small, sketch.Ink) : IsDoubtful(big, small)))
            certainty = Math.Min(certainty, Unexplained);
        return new(
            cell, big?.Reading.Digit, big is null ? null : isGiven, (big ?? Unread(sketch, digits))?.Glyph, big is null ? [.. ReadingOrder.Of(small).Select(Mark)] : [], certainty);
    }

    // Whether there is something beside the digits that nothing explains.
    private bool HasUnexplained(CellSketch sketch, List<Sign> digits)
    {
        var strong = AsStrong * Weakest(sketch.Ink);
        return sketch.HadRing || sketch.Signs.Exists(IsStrange) || sketch.Leftovers.Exists(blob => blob.Peak >= strong)
            || sketch.Crumbs.Exists(crumb => crumb.Peak >= strong && !digits.Exists(sign => sign.Blob.Gap(crumb) == 0));
    }

    private bool IsDoubtful(List<Sign> digits) => digits.Exists(sign => PartOfUsual(sign) < Faintish || IsLonely(sign));

    // A big digit with something beside it, away from the middle, or far too high.
    private bool IsDoubtful(Sign big, List<Sign> small) => small.Count > 0 || big.IsOffMiddle || big.Height > _highest;

    // Marks where more may hide, one that may be a big digit, or two of one digit.
    private bool AreDoubtful(List<Sign> marks, CellInk ink) => MayHide(ink)
        || (marks is [{ IsStruck: false } one] && one.Height >= Math.Min(NearlyBig * _bigFrom, HigherMark * _mark) && !one.IsOffMiddle)
        || marks.DistinctBy(mark => mark.Reading.Digit).Count() < marks.Count || marks.Exists(IsBig);

    // What nobody could read, and may be a big digit: the presenter may say which, so that it is read the next time.
    private Sign? Unread(CellSketch sketch, List<Sign> digits) =>
        digits.Count > 0 ? null : sketch.Signs.FindAll(sign => (IsOdd(sign) || IsStrange(sign)) && sign.Height >= _bigFrom).MaxBy(sign => sign.Height);

    // The tip or the edge of something larger that nobody could read.
    private static bool IsBeside(Sign sign, Sign other) => sign.Blob.Gap(other.Blob) <= 1 && other.Blob.Pixels.Count >= Larger * sign.Blob.Pixels.Count;

    private bool IsOdd(Sign sign) =>
        sign.Reading.Digit is null
        && sign.Blob.Peak >= AsStrong * Weakest(sign.Ink)
        && Math.Max(sign.Height, sign.Blob.Width / sign.Ink.Box.CellWidth) >= Crumb;

    private static MarkReading Mark(Sign mark) =>
        new(mark.Reading.Digit!.Value, mark.X, mark.Y, mark.Height, mark.IsStruck, mark.Reading.Certainty, mark.Glyph);
}
