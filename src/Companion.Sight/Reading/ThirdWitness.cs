using Companion.Engine;

namespace Companion.Sight.Reading;

/// <summary>
/// What looking at a whole cell tells of lines through its marks, after comparing them and looking at each among what stands around it
/// (<see cref="LineWitnesses"/>). Each errs in other places.
/// </summary>
/// <param name="signs">The signs of the board.</param>
internal sealed class ThirdWitness(IEnumerable<Sign> signs)
{
    // How likely a line is to both networks together where one goes through a mark, or to this one; and to both for an 8, whose strokes cross.
    private const float Line = 0.75f, LineAlone = 0.99f, LineThroughEight = 0.97f;

    // What a line is to this one at most where none does, if the other has some doubt.
    private const float NoLine = 0.1f, Doubt = 0.9f;

    // Some hands cross their sevens: where a line is usually likelier than this to the other network, its word is nothing.
    private const float Usual = 0.1f;

    private readonly ILookup<Digit, float> _plain = signs.Where(sign => sign.Reading.Digit is not null && !sign.IsStruck && !sign.Around.Odds.IsDefault)
        .ToLookup(sign => sign.Reading.Digit!.Value, sign => sign.Around.Line);

    /// <summary>Settles whether a line goes through an unsure mark.</summary>
    /// <param name="mark">The mark, as it was settled without this witness.</param>
    /// <param name="around">What it was read as among what stands around it.</param>
    /// <param name="finding">The same mark, in its whole cell.</param>
    /// <returns>The mark, no surer than it was.</returns>
    public MarkReading Settled(MarkReading mark, SignReading around, CellFinding finding)
    {
        if (around.Odds.IsDefault)
            return mark;
        var isStruck = mark.IsStruck
            ? finding.Line > NoLine || around.Line >= Doubt
            : IsLine(mark.Digit, finding.Line, (finding.Line + around.Line) / 2) && IsRare(mark.Digit);
        return isStruck == mark.IsStruck ? mark : mark with { IsStruck = isStruck, Certainty = Math.Min(mark.Certainty, Siblings.Doubted) };
    }

    private static bool IsLine(Digit digit, float likely, float together) =>
        digit.Value == 8 ? together >= LineThroughEight : together >= Line || likely >= LineAlone;

    private bool IsRare(Digit digit)
    {
        float[] all = [.. _plain[digit]];
        return all.Length == 0 || Ranked.At(all, all.Length / 2) < Usual;
    }
}
