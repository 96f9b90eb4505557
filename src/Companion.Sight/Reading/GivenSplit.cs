using Companion.Engine;
using Companion.Engine.Search;

namespace Companion.Sight.Reading;

/// <summary>
/// Tells givens from entered digits by the colours and the weights that the big digits of a board have. Which of two kinds are the givens
/// is plain where one of them alone is a puzzle: it leaves exactly one solution.
/// </summary>
internal sealed class GivenSplit
{
    // Colours of one kind differ by compression and soft edges only; two kinds differ by more than that.
    private const float SameColour = 35, OtherColour = 55;

    // How much bolder one kind is drawn, and how far the digits of one kind may spread as a part of that.
    private const float Bolder = 1.25f;
    private const float MostSpread = 0.3f;
    private const float Unclear = 0.15f;

    // No puzzle with one solution has fewer givens (McGuire, Tugemann and Civario, 2012).
    private const int FewestGivens = 17;

    // A group with a misread digit may take long to try.
    private const int MostTurns = 1000;

    private readonly Dictionary<Sign, int> _cells;

    private GivenSplit(Dictionary<Sign, int> cells) => _cells = cells;

    /// <summary>Whether each digit is a given; null where nothing tells.</summary>
    /// <param name="digits">The big digits of the 81 cells, row by row; null where there is none.</param>
    public static Dictionary<Sign, bool?> Of(IReadOnlyList<Sign?> digits)
    {
        var cells = new Dictionary<Sign, int>();
        foreach (var (cell, digit) in digits.Index())
        {
            if (digit is not null)
                cells[digit] = cell;
        }

        var unknown = cells.Keys.ToDictionary(digit => digit, _ => (bool?)null);
        if (cells.Count < FewestGivens)
            return unknown;
        var split = new GivenSplit(cells);
        Sign[] all = [.. cells.Keys];
        return split.ByColour(all) ?? split.ByWeight(all) ?? unknown;
    }

    private bool IsPuzzle(IEnumerable<Sign> group)
    {
        Span<char> givens = stackalloc char[Cell.Count];
        givens.Fill('.');
        foreach (var digit in group)
            givens[_cells[digit]] = (char)('0' + digit.Reading.Digit!.Value.Value);
        return SolutionCounter.IsPuzzle(givens, MostTurns) == true;
    }

    private Dictionary<Sign, bool?>? ByColour(IReadOnlyList<Sign> digits)
    {
        var groups = new List<List<Sign>>();
        foreach (var digit in digits)
        {
            var near = groups.Find(group => Mean(group).Distance(digit.Colour) <= SameColour);
            if (near is null)
                groups.Add([digit]);
            else
                near.Add(digit);
        }

        var givens = Givens(groups.FindAll(group => group.Count >= FewestGivens));
        if (groups.Count < 2 || givens is null)
            return null;
        // A third colour is something else: a selection, a slip. Only what the larger other group has is an entered digit's.
        var entered = groups.Where(group => group != givens).MaxBy(group => group.Count)!;
        if (Mean(givens).Distance(Mean(entered)) < OtherColour)
            return null;
        return digits.ToDictionary(digit => digit, digit => givens.Contains(digit) ? true : entered.Contains(digit) ? false : (bool?)null);
    }

    // What alone leaves one solution. Else givens are mostly printed more boldly than what is entered, or, where both leave one solution,
    // more strongly and in less of a colour. What does not show is left open.
    private List<Sign>? Givens(List<List<Sign>> groups)
    {
        const float ClearlyBolder = 1.15f;
        const float ClearlyStronger = 50;
        if (groups.Count < 2)
            return groups.FirstOrDefault();
        var puzzles = groups.FindAll(IsPuzzle);
        if (puzzles is [var only])
            return only;
        var (first, second) = (groups.MaxBy(group => group.Average(StrokeWidth))!, groups.MinBy(group => group.Average(StrokeWidth))!);
        if (first.Average(StrokeWidth) >= ClearlyBolder * second.Average(StrokeWidth))
            return first;
        if (puzzles.Count == 0)
            return null;
        (first, second) = (puzzles.MaxBy(Strength)!, puzzles.MinBy(Strength)!);
        return Strength(first) - Strength(second) >= ClearlyStronger ? first : null;
    }

    private static Rgb Mean(List<Sign> group)
    {
        var sum = default(Rgb);
        foreach (var digit in group)
            sum += digit.Colour;
        return sum * (1f / group.Count);
    }

    private static float Strength(List<Sign> group)
    {
        var colour = Mean(group);
        var colourfulness = Math.Max(colour.Red, Math.Max(colour.Green, colour.Blue)) - Math.Min(colour.Red, Math.Min(colour.Green, colour.Blue));
        return group.Average(digit => digit.Blob.Peak) - colourfulness;
    }

    private Dictionary<Sign, bool?>? ByWeight(IReadOnlyList<Sign> digits)
    {
        var weights = digits.ToDictionary(digit => digit, digit => MathF.Log(StrokeWidth(digit)));
        var (light, bold) = (weights.Values.Min(), weights.Values.Max());
        for (var pass = 0; pass < 12; pass++)
        {
            var middle = (light + bold) / 2;
            (light, bold) = (weights.Values.Where(weight => weight <= middle).Average(), weights.Values.Where(weight => weight > middle).DefaultIfEmpty(bold).Average());
        }

        var (cut, apart) = ((light + bold) / 2, bold - light);
        var spread = MathF.Sqrt(weights.Values.Average(weight => MathF.Pow(weight - (weight > cut ? bold : light), 2)));
        if (apart < MathF.Log(Bolder) || spread > MostSpread * apart || weights.Values.Count(weight => weight > cut) < FewestGivens)
            return null;
        var isBold = !IsPuzzle(digits.Where(digit => weights[digit] <= cut)) || IsPuzzle(digits.Where(digit => weights[digit] > cut));
        return digits.ToDictionary(digit => digit, digit => Math.Abs(weights[digit] - cut) < Unclear * apart ? null : (bool?)(weights[digit] > cut == isBold));
    }

    // Twice the ink over the length of its outline, as a part of the cell.
    private static float StrokeWidth(Sign digit)
    {
        var (blob, ink) = (digit.Blob, digit.Ink);
        var (area, edge) = (0f, 0f);
        foreach (var pixel in blob.Pixels)
        {
            area += Math.Min(1, ink.Distance[pixel] / blob.Peak);
            var (x, y) = (pixel % ink.Cell.Width, pixel / ink.Cell.Width);
            var dx = (ink.Distance[y * ink.Cell.Width + Math.Min(x + 1, ink.Cell.Width - 1)] - ink.Distance[pixel]) / blob.Peak;
            var dy = (ink.Distance[Math.Min(y + 1, ink.Cell.Height - 1) * ink.Cell.Width + x] - ink.Distance[pixel]) / blob.Peak;
            edge += MathF.Sqrt(dx * dx + dy * dy);
        }

        return 2 * area / Math.Max(1, edge) / ink.Box.CellHeight;
    }
}
