using Companion.Engine;
using Companion.Sight.Reading;

namespace Companion.Sight.Training.Boards;

/// <summary>Counts what is read rightly and wrongly in whole cells, where the reader is surer than not.</summary>
internal sealed class CellTally
{
    private const float Likely = 0.5f;

    /// <summary>How many cells there were.</summary>
    public int Cells { get; private set; }

    /// <summary>How many of them were read rightly, with all lines.</summary>
    public int Right { get; private set; }

    /// <summary>How many digits and marks stood in them.</summary>
    public int Digits { get; private set; }

    /// <summary>Those that were not found.</summary>
    public int Missed { get; private set; }

    /// <summary>Those that were read as another digit, or as another kind.</summary>
    public int Mistaken { get; private set; }

    /// <summary>What was found and is not there.</summary>
    public int Invented { get; private set; }

    /// <summary>For each mark that was read rightly whether a line goes through it, and how likely that is to the reader.</summary>
    public List<(bool Is, float Likely)> Lines { get; } = [];

    /// <summary>Counts one.</summary>
    /// <param name="kinds">What stands at its places (<see cref="CellSample.Kinds"/>).</param>
    /// <param name="lines">Which marks have lines (<see cref="CellSample.Lines"/>).</param>
    /// <param name="findings">What was found in it.</param>
    public void Add(byte[] kinds, byte[] lines, IReadOnlyList<CellFinding> findings)
    {
        var found = findings.Where(finding => finding.Likely >= Likely).ToList();
        var isRight = true;
        foreach (var place in Enumerable.Range(0, kinds.Length).Where(place => kinds[place] is > 0 and not CellSample.Untold))
        {
            Digits++;
            var at = found.FindIndex(finding => IsAt(finding, place, kinds[place] > Digit.Count ? 2 : 1));
            isRight &= at >= 0 && IsRight(kinds[place], lines[place], found[at]);
            if (at < 0)
                Missed++;
            else
                found.RemoveAt(at);
        }

        var invented = found.Count(finding => kinds[Place(finding)] != CellSample.Untold);
        Cells++;
        Invented += invented;
        Right += isRight && invented == 0 ? 1 : 0;
    }

    private bool IsRight(byte kind, byte line, CellFinding finding)
    {
        if (finding.Digit.Value + (finding.IsBig ? Digit.Count : 0) != kind)
        {
            Mistaken++;
            return false;
        }

        if (line == CellSample.Untold)
            return true;
        Lines.Add((line == 1, finding.Line));
        return finding.Line >= Likely == (line == 1);
    }

    private static bool IsAt(CellFinding finding, int place, int reach)
    {
        var found = Place(finding);
        return Math.Abs(found % CellSample.Places - place % CellSample.Places) <= reach && Math.Abs(found / CellSample.Places - place / CellSample.Places) <= reach;
    }

    private static int Place(CellFinding finding) => CellSample.Place(CellImage.InImage(finding.X), CellImage.InImage(finding.Y));
}
