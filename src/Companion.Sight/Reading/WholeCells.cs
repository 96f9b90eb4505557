using System.Collections.Immutable;
using Companion.Engine;

namespace Companion.Sight.Reading;

/// <summary>
/// Looks at unsure cells as a whole, with a network that does not depend on how their ink was cut into signs: it finds digits of which a
/// shape, a ring or the cell's edge left only a part, and is one more witness of lines through marks. That tells what to propose: nothing is
/// made surer, and what is sure is not looked at.
/// </summary>
/// <param name="board">All cells of the board, read.</param>
/// <param name="verdict">What they hold.</param>
internal sealed class WholeCells(IReadOnlyList<CellSketch> board, CellVerdict verdict)
{
    // How likely it has to be that there is a mark where others were read, how likely the surest one where none was; and how likely the
    // likeliest digit that it can be.
    private const float Likely = 0.7f, LikelyAlone = 0.95f, Hint = 0.01f;

    // How likely another digit is, beside the likeliest, where a mark may as well be that one; and how likely the likeliest is at most to what
    // decides between them.
    private const float Even = 0.6f, Doubt = 0.05f;

    // The same for a big digit; what was read less surely than the second part may as well be another.
    private const float LikelyBig = 0.7f, Open = 0.1f;

    /// <summary>Reads the unsure cells of a board again.</summary>
    /// <param name="readings">What was read in all cells.</param>
    /// <param name="reader">Finds digits in whole cells.</param>
    /// <returns>What is proposed, no surer than what was read.</returns>
    public ImmutableArray<CellReading> Propose(ImmutableArray<CellReading> readings, CellReader reader)
    {
        var unsure = readings.Where(reading => reading.IsUnsure).ToList();
        var unseen = unsure.ConvertAll(reading => board[reading.Cell.Index]).FindAll(sketch => sketch.Findings is null);
        foreach (var (sketch, findings) in unseen.Zip(reader.Read(unseen.ConvertAll(sketch => sketch.Ink))))
            sketch.Findings = findings;
        var lines = new Lazy<ThirdWitness>(() => new(board.SelectMany(sketch => sketch.Signs)));
        var proposed = readings.ToBuilder();
        foreach (var reading in unsure)
        {
            var sketch = board[reading.Cell.Index];
            var bigs = sketch.Findings!.Where(finding => finding.IsBig).OrderByDescending(finding => finding.Likely).ToList();
            var marks = sketch.Findings!.Where(finding => !finding.IsBig).ToList();
            proposed[reading.Cell.Index] = bigs is [{ Likely: >= LikelyBig } big, ..] && IsOpen(reading, sketch)
                ? reading with { Digit = big.Digit }
                : reading with { Marks = Marks(reading, sketch, marks, lines) };
        }

        return proposed.MoveToImmutable();
    }

    // Whether it may hold any big digit as well.
    private bool IsOpen(CellReading reading, CellSketch sketch) =>
        reading.Digit is null ? reading.Marks.IsEmpty : verdict.Big(sketch)!.Reading.Certainty < Open;

    // Where a mark may as well be one digit as another to all that read its ink, what has no doubt decides; not under a line, which hides too much.
    private static bool Decides(CellFinding finding, Sign sign) =>
        !sign.IsStruck && finding.Likely >= Likely && finding.Odds[sign.Reading.Digit!.Value.Index] <= Doubt
        && sign.Alone.Reading is { Odds: { IsDefault: false } odds } alone && alone.Digit == sign.Reading.Digit && odds[finding.Digit.Index] >= Even * odds.Max();

    private ImmutableArray<MarkReading> Marks(CellReading reading, CellSketch sketch, List<CellFinding> findings, Lazy<ThirdWitness> lines)
    {
        // Where something may be a big digit that nobody could read, nothing is said of marks: it would be taken for a cell without one.
        if (reading.Digit is not null || (reading.Marks.IsEmpty && (reading.Glyph is not null || !findings.Exists(finding => finding.Likely >= LikelyAlone))))
            return reading.Marks;
        var signs = verdict.Digits(reading.Cell, sketch).Marks;
        var marks = reading.Marks.Select((mark, index) => findings.FindIndex(finding => finding.IsAt(mark) && (finding.Digit == mark.Digit || Decides(finding, signs[index]))) is >= 0 and var found
            ? lines.Value.Settled(mark with { Digit = findings[found].Digit }, signs[index].Around, findings[found]) : mark).ToList();
        var height = marks.Select(mark => mark.Height).DefaultIfEmpty(0).Average();
        var read = marks.Count;
        foreach (var finding in findings.OrderByDescending(finding => finding.Likely).Where(finding => finding.Some >= Likely))
        {
            // A digit stands once in a cell.
            var free = ~DigitSet.Of([.. marks.Select(mark => mark.Digit)]);
            if (free != DigitSet.Empty && !marks.Exists(finding.IsAt) && finding.Of(free) is var digit && finding.Odds[digit.Index] >= Hint)
                marks.Add(finding.Reading(digit, height));
        }

        return marks.Count == read ? [.. marks] : [.. ReadingOrder.Of(marks)];
    }
}
