using System.Numerics.Tensors;

namespace Companion.Sight.Reading;

/// <summary>
/// Compares the marks of a board with each other: they are set in one face, at one size or two, so each is like others of its digit, but
/// for a line through it. What was read otherwise is doubted, what was not read is read, and lines are found that the eye of the network
/// overlooks. It always starts from what each mark was read as alone.
/// </summary>
internal sealed class Siblings
{
    // Of a mark's ink: two of one digit differ by less than the first part, where one was set anew by less than the second; they are as
    // good as the same below the third.
    internal const float Alike = 0.24f, AlikeReset = 0.33f, Same = 0.07f, Close = 0.15f;

    // Two digits of one face differ by more than this, in all but the least legible.
    private const float Apart = 0.14f;

    // More than this is another digit for certain.
    private const float Unlike = 0.7f;

    // How much less another digit must be like it.
    internal const float Clearly = 1.7f, Somewhat = 1.35f;

    // Fewer lines through marks do not tell that a board has any.
    private const int FewestStruck = 3;

    // What is added to the difference of a digit that the mark was not read as.
    private const float ForAnother = 0.03f, ForAnotherStruck = 0.1f;

    // A guess may differ by this; something without a digit's look may only by that.
    private const float Remote = 0.5f, RemoteFromNothing = 0.33f;

    // So many are looked at to find out how a digit looks, and so many looks are kept.
    private const int Candidates = 8, Looks = 4;

    // A look is only compared with what is about as high; a line through a mark makes it higher.
    private const float Higher = 2f, Lower = 0.72f;

    // As a part of the cell, how near to its edge a line or a frame may have cut a mark off, and the part of its height that may be gone.
    private const float AtEdge = 0.07f, MostCut = 0.25f;

    // No digit is so low beside the others, in old-style figures neither: it is a part of one.
    private const float Lowest = 0.65f;

    // What is read by its likeness alone, or doubted: somebody has to look.
    internal const float ByLikeness = 0.85f, Doubted = 0.7f, Confirmed = 0.95f, Halfway = 0.5f;

    // Where a mark may stand between the pixels, to the right and down.
    internal static readonly (float, float)[] Between = [(0, 0), (0.5f, 0), (0, 0.5f), (0.5f, 0.5f)];

    private readonly List<Sign>[] _looks = [.. Enumerable.Range(0, Engine.Digit.Count).Select(_ => new List<Sign>())];

    // For a look a mark that is as good as the same: a look is compared with that one as others are with the look.
    private readonly Dictionary<Sign, Sign> _twins = [];

    private readonly Comparisons _known;

    private Siblings(List<Sign> marks, Comparisons known)
    {
        _known = known;
        foreach (var group in marks.Where(mark => IsPlain(mark)).GroupBy(mark => mark.Alone.Reading.Digit!.Value.Index))
            FindLooks(_looks[group.Key], [.. group]);
        Purify(marks);
    }

    /// <summary>Compares all marks of a board.</summary>
    /// <param name="sketches">Its cells, read one by one.</param>
    /// <param name="known">What comparing marks came to at the last look at the board.</param>
    /// <returns>From which height on a digit is big and no mark.</returns>
    public static float Compare(IReadOnlyList<CellSketch> sketches, Comparisons known)
    {
        known.Next();
        var all = sketches.SelectMany(sketch => sketch.Signs).ToList();
        foreach (var sign in all)
            (sign.Reading, sign.IsStruck) = sign.Alone;
        var bigFrom = Heights.Threshold(all.Where(sign => sign.IsSure));
        var marks = all.FindAll(sign => sign.Height < bigFrom);
        var siblings = new Siblings(marks, known);
        var judged = marks.ConvertAll(siblings.Judge);
        var lines = Lines(judged);
        var struck = StruckShape.Of(lines) is { } shape ? new StruckMarks(siblings._looks, shape, known) : null;
        if (struck?.Purify() is { Count: > 0 } purified)
        {
            bool IsTouched(Sign mark, Judgement? judgement) =>
                (mark.Alone.Reading.Digit is { } alone && purified.Contains(alone.Index)) || (judgement?.Reading.Digit is { } digit && purified.Contains(digit.Index));
            judged = [.. marks.Zip(judged, (mark, judgement) => IsTouched(mark, judgement) ? siblings.Judge(mark) : judgement)];
            lines = Lines(judged);
        }

        // On a board with lines through marks more is doubted: one may lie in the strokes of the digit itself.
        var angles = lines.ConvertAll(line => line.Angle);
        float[] heights = [.. marks.Where(IsPlain).Select(mark => mark.Height).Order()];
        var usual = heights.Length > 0 ? heights[heights.Length / 2] : 0;
        for (var index = 0; index < marks.Count; index++)
        {
            var mark = marks[index];
            if (judged[index] is { } judgement)
                (mark.Reading, mark.IsStruck) = (judgement.Reading, judgement.IsStruck);
            var mayHide = angles.Count > 0 && !mark.IsStruck && (judged[index] is not { } plain || plain.Over.MayHide(angles));
            if ((mayHide || mark.IsStruck || !mark.IsSure) && struck?.Settled(mark) is { } settled)
                ((mark.Reading, mark.IsStruck), mayHide) = (settled, false);
            // A line that is seen by the one way and not by the other.
            mayHide |= mark.Alone.IsStruck && !mark.IsStruck;
            if ((mayHide || mark.Height < Lowest * usual) && mark.Reading.Digit is not null)
                mark.Reading = mark.Reading with { Certainty = Math.Min(mark.Reading.Certainty, ByLikeness) };
        }

        if (DigitPlaces.Of(marks.FindAll(mark => mark.IsSure)) is { } places)
            marks.ForEach(mark => HoldTo(places, mark, usual));
        if (marks.Count(mark => mark.IsStruck && mark.IsSure) < FewestStruck)
            DoubtLines(sketches);
        BigSiblings.Compare(all.FindAll(sign => sign.Height >= bigFrom && sign.IsSure));
        return bigFrom;
    }

    // On a board with hardly any line through a mark, one that stood on a ring is rather what is left of the ring, and one that only the
    // comparison finds may be the edge of a shape.
    private static void DoubtLines(IReadOnlyList<CellSketch> sketches)
    {
        foreach (var (sketch, mark) in sketches.SelectMany(sketch => sketch.Signs.Where(mark => mark.IsStruck).Select(mark => (sketch, mark))))
        {
            if (sketch.HadRing || !mark.Alone.IsStruck)
                (mark.Reading, mark.IsStruck) = (mark.Reading with { Certainty = Math.Min(mark.Reading.Certainty, ByLikeness) }, !sketch.HadRing);
        }
    }

    // What stands at the place of a digit is that digit sooner than any other, but somebody has to look where its shape says otherwise.
    private static void HoldTo(DigitPlaces places, Sign mark, float usual)
    {
        if (mark.Reading.Digit is not { } read || places.At(mark) is not { } digit || digit == read || mark.Height < Lowest * usual)
            return;
        (mark.Reading, mark.IsStruck) = (new(digit, Math.Min(mark.Reading.Certainty, Doubted)), mark.Alone.IsStruck);
    }

    private static List<Overlay> Lines(List<Judgement?> judged) =>
        [.. judged.OfType<Judgement>().Select(judgement => judgement.Over).Where(over => over.IsStruck)];

    private static bool IsPlain(Sign mark) =>
        mark.Alone is { IsStruck: false, Reading: { Digit: not null, Certainty: >= CellReading.Sure } };

    private void FindLooks(List<Sign> looks, Sign[] group)
    {
        var count = Math.Min(group.Length, Candidates);
        for (var index = 0; index < count && looks.Count < Looks; index++)
        {
            var mark = group[index * group.Length / count];
            var isNew = true;
            for (var look = looks.Count - 1; look >= 0 && isNew; look--)
            {
                var over = Over(mark, looks[look]);
                var isTwin = !over.IsSuspicious && over.Astray < Same;
                if (isTwin)
                    _twins.TryAdd(looks[look], mark);
                if (isTwin || over.IsSuspicious)
                    isNew = false;
                else if (Over(looks[look], mark).IsSuspicious)
                    looks.RemoveAt(look);
            }

            if (isNew)
                looks.Add(mark);
        }
    }

    // A mark that was read wrongly is no look of the digit that it was read as: more of its like were read as another digit.
    private void Purify(List<Sign> marks)
    {
        var wrong = new List<Sign>();
        for (var digit = 0; digit < _looks.Length; digit++)
        {
            for (var other = digit + 1; other < _looks.Length; other++)
            {
                foreach (var (one, two) in from one in _looks[digit] from two in _looks[other] where Likeness(one, two) > 0.8f select (one, two))
                {
                    if (!IsComparable(one, two) || Over(one, two).Astray > Apart)
                        continue;
                    var (forOne, forTwo) = (Votes(marks, one, digit, two), Votes(marks, two, other, one));
                    if (forOne <= 3 * forTwo)
                        wrong.Add(one);
                    if (forTwo <= 3 * forOne)
                        wrong.Add(two);
                }
            }
        }

        foreach (var looks in _looks)
            looks.RemoveAll(wrong.Contains);
    }

    private static int Votes(List<Sign> marks, Sign look, int digit, Sign other) =>
        marks.Count(mark => IsPlain(mark) && mark.Alone.Reading.Digit!.Value.Index == digit && Math.Max(Likeness(mark, look), Likeness(mark, other)) > 0.93f);

    private Judgement? Judge(Sign mark)
    {
        var alone = mark.Alone.Reading;
        var own = alone.Digit is { } digit ? Best(mark, digit.Index, Same) : null;
        var isSure = alone.Digit is not null && alone.Certainty >= CellReading.Sure;
        // Where all others of its digit are much higher or lower it may be a part of something.
        if (isSure && own is null)
            return _looks[alone.Digit!.Value.Index].Exists(look => look != mark) ? new(alone with { Certainty = Doubted }, mark.Alone.IsStruck, default) : null;
        var (best, second) = (own, (Fit?)null);
        foreach (var other in Others(mark, own))
        {
            if (Best(mark, other, Same) is not { } fit)
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
        var least = isSure && found.IsReset ? found.Over.Astray : Math.Max(Apart, Clearly * found.Over.Astray);
        var isClear = second is null || second.Value.Over.Astray >= least;
        return found.Over.Astray <= (found.IsReset ? AlikeReset : Alike) && (isClear || found.Digit == alone.Digit)
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
        var isFine = isSure && own is { } fit && fit.Over.Astray <= Alike;
        var likeness = isFine ? Likeness(mark, own!.Value.Look) - 0.02f : -1;
        for (var digit = 0; digit < _looks.Length; digit++)
        {
            if (digit != mark.Alone.Reading.Digit?.Index && _looks[digit].Exists(look => !isFine || Likeness(mark, look) > likeness))
                yield return digit;
        }
    }

    private Fit? Best(Sign mark, int digit, float enough)
    {
        Fit? best = null;
        foreach (var each in _looks[digit])
        {
            var look = each == mark ? _twins.GetValueOrDefault(mark) : each;
            if (look is null || !IsComparable(mark, look))
                continue;
            var (over, isReset) = _known.Laid.Of((mark, look), _ => Laid(mark, look));
            if (best is null || over.Astray < best.Value.Over.Astray)
                best = new(Engine.Digit.Of(digit + 1), look, over, isReset);
            if (over.Astray <= enough && !over.MayBeStruck)
                break;
        }

        return best;
    }

    // Block marks and lists may be set at two sizes, and marks stand otherwise between the pixels: what does not fit as it is may fit when
    // it is set like the mark.
    private (Overlay Over, bool IsReset) Laid(Sign mark, Sign look)
    {
        var over = Over(mark, look);
        // Of the same height, no place between the pixels makes one digit another.
        var isFar = over.Astray > Unlike && Math.Abs(mark.Blob.Height - look.Blob.Height) <= 1;
        if (isFar || (over.Astray <= Alike && !over.IsSuspicious))
            return (over, false);
        var best = (Over: over, IsReset: false);
        foreach (var patch in Reset(look, mark.Blob.Height).Concat(Cut(mark, look)))
        {
            var reset = Overlay.Of(mark.Patch, patch);
            if (reset.Astray < best.Over.Astray && !reset.IsSuspicious)
                best = (reset, true);
        }

        return best;
    }

    private InkPlane[] Reset(Sign look, int height) =>
        _known.Reset.Of((look, height), _ => Array.ConvertAll(Between, at => InkPatch.Reset(look.Patch, height, at.Item1, at.Item2)));

    private Overlay Over(Sign mark, Sign other) => _known.Over.Of((mark, other), _ => Overlay.Of(mark.Patch, other.Patch));

    // A mark that a line or a frame along the cell's edge cuts off looks like others without what is gone: about as much as it is lower.
    private static IEnumerable<InkPlane> Cut(Sign mark, Sign look)
    {
        var near = Math.Max(2, AtEdge * mark.Ink.Cell.Height);
        var (isAbove, isBelow) = (mark.Blob.Top <= near, mark.Blob.Bottom >= mark.Ink.Cell.Height - near);
        var lower = look.Blob.Height - mark.Blob.Height;
        if (isAbove == isBelow || lower < 0 || lower > MostCut * look.Blob.Height)
            yield break;
        for (var rows = Math.Max(1, lower - 1); rows <= lower + 1; rows++)
            yield return InkPatch.Cut(look.Patch, isAbove ? rows : 0, isBelow ? rows : 0);
    }

    internal static bool IsComparable(Sign mark, Sign look) => mark.Height <= Higher * look.Height && mark.Height >= Lower * look.Height;

    /// <summary>The cosine between the images of two.</summary>
    /// <param name="one">The one.</param>
    /// <param name="other">The other.</param>
    internal static float Likeness(Sign one, Sign other) => TensorPrimitives.CosineSimilarity(one.Glyph.Ink.AsSpan(), other.Glyph.Ink.AsSpan());

    private readonly record struct Judgement(GlyphReading Reading, bool IsStruck, Overlay Over);

    private readonly record struct Fit(Engine.Digit Digit, Sign Look, Overlay Over, bool IsReset);
}
