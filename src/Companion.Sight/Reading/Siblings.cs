namespace Companion.Sight.Reading;

/// <summary>
/// Compares the marks of a board with each other: they are set in one face, at one size or two, so each is like others of its digit, but
/// for a line through it. What was read otherwise is doubted, what was not read is read, and lines are found that the eye of the network
/// overlooks. It always starts from what each mark was read as alone.
/// </summary>
/// <param name="looks">How the board's digits look.</param>
internal sealed class Siblings(Looks looks)
{
    // Two of one digit differ by less of a mark's ink, where one was set anew; what is closer than the second part confirms a guess.
    private const float AlikeReset = 0.33f, Close = 0.15f;

    // How much less another digit must be like it.
    internal const float Clearly = 1.7f, Somewhat = 1.35f;

    // Fewer lines through marks do not tell that a board has any.
    private const int FewestStruck = 3;

    // What is added to the difference of a digit that the mark was not read as.
    private const float ForAnother = 0.03f, ForAnotherStruck = 0.1f;

    // A guess may differ by this; something without a digit's look may only by that.
    private const float Remote = 0.5f, RemoteFromNothing = 0.33f;

    // No digit is so low beside the others, in old-style figures neither: it is a part of one.
    private const float Lowest = 0.65f;

    // What is read by its likeness alone, or doubted: somebody has to look.
    internal const float ByLikeness = 0.85f, Doubted = 0.7f, Confirmed = 0.95f, Halfway = 0.5f;

    /// <summary>Compares all marks of a board.</summary>
    /// <param name="sketches">Its cells, read one by one.</param>
    /// <param name="known">What comparing marks came to at the last look at the board.</param>
    /// <returns>From which height on a digit is big and no mark.</returns>
    public static float Compare(IReadOnlyList<CellSketch> sketches, Comparisons known)
    {
        known.Next();
        var all = sketches.SelectMany(sketch => sketch.Signs).ToList();
        foreach (var sign in all)
            ((sign.Reading, sign.IsStruck), sign.Likest) = (sign.Alone, default);
        var bigFrom = Heights.Threshold(all.Where(sign => sign.IsSure));
        var marks = all.FindAll(sign => sign.IsMark(bigFrom));
        var looks = new Looks(marks, known);
        var siblings = new Siblings(looks);
        var judged = marks.ConvertAll(siblings.Judge);
        var lines = Lines(judged);
        var struck = StruckShape.Of(lines) is { } shape ? new StruckMarks(looks.ByDigit, shape, known) : null;
        if (struck?.Purify() is { Count: > 0 } purified)
        {
            bool IsTouched(Sign mark, Judgement? judgement) =>
                (mark.Alone.Reading.Digit is { } alone && purified.Contains(alone.Index)) || (judgement?.Reading.Digit is { } digit && purified.Contains(digit.Index));
            judged = [.. marks.Zip(judged, (mark, judgement) => IsTouched(mark, judgement) ? siblings.Judge(mark) : judgement)];
            lines = Lines(judged);
        }

        // On a board with lines through marks more is doubted: one may lie in the strokes of the digit itself.
        var angles = lines.ConvertAll(line => line.Angle);
        float[] heights = [.. marks.Where(Looks.IsPlain).Select(mark => mark.Height).Order()];
        var usual = heights.Length > 0 ? heights[heights.Length / 2] : 0;
        for (var index = 0; index < marks.Count; index++)
        {
            var mark = marks[index];
            if (judged[index] is { } judgement)
                (mark.Reading, mark.IsStruck) = (judgement.Reading, judgement.IsStruck);
            var mayHide = angles.Count > 0 && !mark.IsStruck && (judged[index] is not { } plain || plain.Over.MayHide(angles));
            if ((mayHide || mark.IsStruck || !mark.IsSure) && struck?.Settled(mark) is { } settled)
                ((mark.Reading, mark.IsStruck), mayHide) = (settled, false);
            mark.Likest = (mark.Reading.Digit, mark.IsStruck);
            KeepSure(mark);
            // A line that is seen by the one way and not by the other.
            mayHide |= mark.Alone.IsStruck && !mark.IsStruck;
            if ((mayHide || mark.Height < Lowest * usual) && mark.Reading.Digit is not null)
                mark.Reading = mark.Reading with { Certainty = Math.Min(mark.Reading.Certainty, ByLikeness) };
        }

        if (marks.Count(mark => mark.IsStruck && mark.IsSure) < FewestStruck)
            DoubtLines(sketches);
        LineWitnesses.Settle(marks);
        WideMarks.Doubt(marks);
        BigSiblings.Compare(all.FindAll(sign => !sign.IsMark(bigFrom) && sign.IsSure));
        return bigFrom;
    }

    // What was surely read is rather that than anything that it is more like, but somebody has to look.
    private static void KeepSure(Sign mark)
    {
        if (Looks.IsPlain(mark) && mark.Reading.Digit != mark.Alone.Reading.Digit)
            (mark.Reading, mark.IsStruck) = (mark.Alone.Reading with { Certainty = Doubted }, false);
    }

    // On a board with hardly any line through a mark, one that stood on a ring is rather what is left of the ring, and one that only the
    // comparison finds may be the edge of a shape, but for those that were seen to be drawn, and those that the network has no doubt of.
    private static void DoubtLines(IReadOnlyList<CellSketch> sketches)
    {
        foreach (var (sketch, mark) in sketches.SelectMany(sketch => sketch.Signs.Where(mark => mark.IsStruck && mark.Around.Line < LineWitnesses.Certain).Select(mark => (sketch, mark))))
        {
            if (sketch.HadRing || !(mark.Alone.IsStruck || sketch.Before.WasPlain(mark)))
                (mark.Reading, mark.IsStruck) = (mark.Reading with { Certainty = Math.Min(mark.Reading.Certainty, ByLikeness) }, !sketch.HadRing);
        }
    }

    private static List<Overlay> Lines(List<Judgement?> judged) =>
        [.. judged.OfType<Judgement>().Select(judgement => judgement.Over).Where(over => over.IsStruck)];

    private Judgement? Judge(Sign mark)
    {
        var alone = mark.Alone.Reading;
        var own = alone.Digit is { } digit ? looks.Best(mark, digit.Index) : null;
        var isSure = alone.Digit is not null && alone.Certainty >= CellReading.Sure;
        // Where all others of its digit are much higher or lower it may be a part of something.
        if (isSure && own is null)
            return looks.ByDigit[alone.Digit!.Value.Index].Exists(look => look != mark) ? new(alone with { Certainty = Doubted }, mark.Alone.IsStruck, default) : null;
        var (best, second) = (own, (Fit?)null);
        foreach (var other in Others(mark, own))
        {
            if (looks.Best(mark, other) is not { } fit)
                continue;
            var handicap = own is null ? 0 : fit.Over.MayBeStruck ? ForAnotherStruck : ForAnother;
            if (best is null || fit.Over.Astray + handicap < best.Value.Over.Astray)
                (best, second) = (fit, best);
            else if (second is null || fit.Over.Astray < second.Value.Over.Astray)
                second = fit;
        }

        if (best is not { } found)
            return null;
        // Set anew nothing fits so well: there it is enough that nothing fits better.
        var least = isSure && found.IsReset ? found.Over.Astray : Math.Max(Looks.Apart, Clearly * found.Over.Astray);
        var isClear = second is null || second.Value.Over.Astray >= least;
        return found.Over.Astray <= (found.IsReset ? AlikeReset : Looks.Alike) && (isClear || found.Digit == alone.Digit)
            ? Agreed(mark, found, isClear)
            : Doubtful(mark, found, own, second);
    }

    private static Judgement Agreed(Sign mark, Fit found, bool isClear)
    {
        var alone = mark.Alone.Reading;
        var isSure = alone.Certainty >= CellReading.Sure;
        var certainty = found.Digit != alone.Digit ? ByLikeness
            : isSure && isClear ? alone.Certainty
            : isSure ? Doubted
            : isClear && found.Over.Astray <= Close && alone.Certainty >= Halfway ? Math.Max(alone.Certainty, Confirmed)
            : alone.Certainty;
        if (found.Over.IsSuspicious && !found.Over.IsStruck)
            certainty = Math.Min(certainty, ByLikeness);
        return new(new(found.Digit, certainty), found.Over.MayBeStruck, found.Over);
    }

    // Somebody has to look; what it is like is still the better guess where it is clearly more like that than anything else.
    private static Judgement Doubtful(Sign mark, Fit found, Fit? own, Fit? second)
    {
        var (alone, isStruck) = mark.Alone;
        // Where no look of what it was read as is known, it need not be like the next best.
        var reach = alone.Digit is null || own is null ? RemoteFromNothing : Remote;
        var isBetter = found.Over.Astray <= reach && !found.Over.MayBeStruck
            && (own is not null || mark.IsPart || alone.Certainty < Halfway)
            && (second is null || second.Value.Over.Astray >= Somewhat * found.Over.Astray)
            && (alone.Certainty < Halfway || alone.Digit is null || own is null || own.Value.Over.Astray >= Clearly * found.Over.Astray);
        return isBetter
            ? new(new(found.Digit, Doubted), found.Over.MayBeStruck, found.Over)
            : new(alone with { Certainty = Math.Min(alone.Certainty, Doubted) }, isStruck, found.Over);
    }

    // Digits that the mark may be: for what was read surely only those that it is more alike.
    private IEnumerable<int> Others(Sign mark, Fit? own)
    {
        var isSure = mark.Alone.Reading.Certainty >= CellReading.Sure && mark.Alone.Reading.Digit is not null;
        var isFine = isSure && own is { } fit && fit.Over.Astray <= Looks.Alike;
        var likeness = isFine ? Looks.Likeness(mark, own!.Value.Look) - 0.02f : -1;
        for (var digit = 0; digit < looks.ByDigit.Length; digit++)
        {
            if (digit != mark.Alone.Reading.Digit?.Index && looks.ByDigit[digit].Exists(look => !isFine || Looks.Likeness(mark, look) > likeness))
                yield return digit;
        }
    }

    private readonly record struct Judgement(GlyphReading Reading, bool IsStruck, Overlay Over);

}
