namespace Companion.Sight.Reading;

/// <summary>Tells which marks of a board have a line through them, where the board tells how its lines are drawn.</summary>
/// <param name="looks">How the marks of each digit look, by its index.</param>
/// <param name="shape">How the lines are drawn.</param>
/// <param name="known">What comparing came to before.</param>
internal sealed class StruckMarks(List<Sign>[] looks, StruckShape shape, Comparisons known)
{
    /// <summary>Drops each look that is another one of its digit with a line through it.</summary>
    /// <returns>The digits, by their indices, of which there was such a one.</returns>
    public HashSet<int> Purify()
    {
        var purified = new HashSet<int>();
        for (var digit = 0; digit < looks.Length; digit++)
        {
            var own = looks[digit];
            var struck = own.FindAll(look => own.Exists(other => other != look && Finding(look, other) is { IsThrough: true, Least: <= Looks.Alike }));
            if (own.RemoveAll(struck.Contains) > 0)
                purified.Add(digit);
        }

        return purified;
    }

    /// <summary>What a mark is, with a line through it or without.</summary>
    /// <param name="mark">The mark.</param>
    /// <returns>What it was read as; null where it is like nothing.</returns>
    public (GlyphReading Reading, bool IsStruck)? Settled(Sign mark)
    {
        var alone = mark.Alone.Reading;
        var fits = new List<(Engine.Digit Digit, LineFinding Finding)>();
        var near = float.MaxValue;
        // What it was read as first: what is much less alike needs no closer look.
        foreach (var digit in Enumerable.Range(0, looks.Length).OrderBy(digit => digit == mark.Reading.Digit?.Index ? 0 : 1))
        {
            if (Compared(mark, digit, Siblings.Clearly * near) is not { } finding)
                continue;
            fits.Add((Engine.Digit.Of(digit + 1), finding));
            near = Math.Min(near, finding.Least);
            // The network reads well what has no line through it.
            if (mark.IsSure && digit == mark.Reading.Digit!.Value.Index && finding.IsNone)
                break;
        }

        if (fits.Count == 0)
            return null;
        fits.Sort((one, other) => one.Finding.Least.CompareTo(other.Finding.Least));
        var best = fits[0].Finding;
        // A part of something may have left its line behind.
        if (best.Least > Looks.Alike || (mark.IsPart && !best.IsThrough))
            return null;
        var isClear = (fits.Count == 1 || fits[1].Finding.Least >= Siblings.Somewhat * best.Least) && best.IsThrough != best.IsNone;
        var certainty = !isClear ? Siblings.Doubted
            : fits[0].Digit != alone.Digit ? Siblings.ByLikeness
            : alone.Certainty >= Siblings.Halfway ? Math.Max(alone.Certainty, Siblings.Confirmed)
            : alone.Certainty;
        return (new(fits[0].Digit, certainty), best.Struck < best.Plain);
    }

    private LineFinding? Compared(Sign mark, int digit, float reach)
    {
        const int Nearest = 2;
        var near =
            (from look in looks[digit]
             where look != mark && Looks.IsComparable(mark, look)
             let finding = Finding(mark, look, reach)
             orderby finding.Least
             select (Look: look, Finding: finding)).Take(Nearest).ToList();
        if (near.Count == 0)
            return null;
        var findings = near.ConvertAll(one => one.Finding);
        if (findings[0].Least > Looks.Same && findings[0].Least < reach)
        {
            foreach (var (look, _) in near)
                findings.Add(known.FoundBetween.Of((mark, look, shape), _ => Least(Lined(look).Between.Select(between => between.Compare(mark.Patch)))));
        }

        return Least(findings);
    }

    private static LineFinding Least(IEnumerable<LineFinding> findings) =>
        findings.Aggregate((one, other) => new(Math.Min(one.Plain, other.Plain), Math.Min(one.Struck, other.Struck)));

    private LineFinding Finding(Sign mark, Sign look, float reach = float.MaxValue) =>
        known.Found.Of((mark, look, shape, reach), _ => Lined(look).Compare(mark.Patch, reach));

    private StruckLook Lined(Sign look) => known.Lined.Of((look, shape), _ => new(look.Patch, shape));
}
