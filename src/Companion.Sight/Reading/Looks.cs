using System.Numerics.Tensors;
using Companion.Engine;

namespace Companion.Sight.Reading;

/// <summary>How the digits of a board's marks look, by a few marks of each that were surely read, and how well another mark fits them.</summary>
internal sealed class Looks
{
    // Of a mark's ink: two of one digit differ by less than the first part; they are as good as the same below the second.
    internal const float Alike = 0.24f, Same = 0.07f;

    // Two digits of one face differ by more than this, in all but the least legible.
    internal const float Apart = 0.14f;

    // More than this is another digit for certain.
    private const float Unlike = 0.7f;

    // So many are looked at to find out how a digit looks, and so many looks are kept.
    private const int Candidates = 8, Most = 4;

    // A look is only compared with what is about as high; a line through a mark makes it higher.
    private const float Higher = 2f, Lower = 0.72f;

    // As a part of the cell, how near to its edge a line or a frame may have cut a mark off, and the part of its height that may be gone.
    private const float AtEdge = 0.07f, MostCut = 0.25f;

    // Where a mark may stand between the pixels, to the right and down.
    internal static readonly (float, float)[] Between = [(0, 0), (0.5f, 0), (0, 0.5f), (0.5f, 0.5f)];

    // For a look a mark that is as good as the same: a look is compared with that one as others are with the look.
    private readonly Dictionary<Sign, Sign> _twins = [];

    private readonly Comparisons _known;

    /// <summary>Chooses the looks.</summary>
    /// <param name="marks">The marks of a board.</param>
    /// <param name="known">What comparing them came to before.</param>
    public Looks(IReadOnlyList<Sign> marks, Comparisons known)
    {
        _known = known;
        foreach (var group in marks.Where(IsPlain).GroupBy(mark => mark.Alone.Reading.Digit!.Value.Index))
            Find(ByDigit[group.Key], [.. group]);
        Purify(marks);
    }

    /// <summary>The looks of each digit, by its index.</summary>
    public List<Sign>[] ByDigit { get; } = [.. Enumerable.Range(0, Digit.Count).Select(_ => new List<Sign>())];

    /// <summary>Whether a mark was surely read as a digit without a line through it.</summary>
    /// <param name="mark">The mark.</param>
    public static bool IsPlain(Sign mark) =>
        mark is { Alone: { IsStruck: false, Reading: { Digit: not null, Certainty: >= CellReading.Sure } }, Around.Line: < 0.5f };

    /// <summary>Whether a mark is about as high as a look.</summary>
    /// <param name="mark">The mark.</param>
    /// <param name="look">The look.</param>
    internal static bool IsComparable(Sign mark, Sign look) => mark.Height <= Higher * look.Height && mark.Height >= Lower * look.Height;

    /// <summary>The cosine between the images of two.</summary>
    /// <param name="one">The one.</param>
    /// <param name="other">The other.</param>
    internal static float Likeness(Sign one, Sign other) => TensorPrimitives.CosineSimilarity(one.Glyph.Ink.AsSpan(), other.Glyph.Ink.AsSpan());

    /// <summary>The look of a digit that a mark fits best; null where none is about as high.</summary>
    /// <param name="mark">The mark.</param>
    /// <param name="digit">The digit's index.</param>
    public Fit? Best(Sign mark, int digit)
    {
        Fit? best = null;
        foreach (var each in ByDigit[digit])
        {
            var look = each == mark ? _twins.GetValueOrDefault(mark) : each;
            if (look is null || !IsComparable(mark, look))
                continue;
            var (over, isReset) = _known.Laid.Of((mark, look), _ => Laid(mark, look));
            if (best is null || over.Astray < best.Value.Over.Astray)
                best = new(Digit.Of(digit + 1), look, over, isReset);
            if (over.Astray <= Same && !over.MayBeStruck)
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

    private void Find(List<Sign> looks, Sign[] group)
    {
        var count = Math.Min(group.Length, Candidates);
        for (var index = 0; index < count && looks.Count < Most; index++)
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
    private void Purify(IReadOnlyList<Sign> marks)
    {
        var wrong = new List<Sign>();
        for (var digit = 0; digit < ByDigit.Length; digit++)
        {
            for (var other = digit + 1; other < ByDigit.Length; other++)
            {
                foreach (var (one, two) in from one in ByDigit[digit] from two in ByDigit[other] where Likeness(one, two) > 0.8f select (one, two))
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

        foreach (var looks in ByDigit)
            looks.RemoveAll(wrong.Contains);
    }

    private static int Votes(IReadOnlyList<Sign> marks, Sign look, int digit, Sign other) =>
        marks.Count(mark => IsPlain(mark) && mark.Alone.Reading.Digit!.Value.Index == digit && Math.Max(Likeness(mark, look), Likeness(mark, other)) > 0.93f);
}
