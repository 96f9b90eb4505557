using Companion.Engine;
using Companion.Engine.Proofs;
using Companion.Engine.Rules;
using Companion.Session.Boards;
using Companion.Session.State;

namespace Companion.Session.Asks.Steps;

/// <summary>
/// The deductions that are open on one grid, looked for rung by rung as somebody asks: whoever is content with an easy one waits
/// for no harder rule.
/// </summary>
/// <remarks>
/// A deduction that the solution contradicts is passed over. There are such ones after a wrong digit: they would mislead viewers,
/// and a hint withheld tells them less than one that is wrong.
/// </remarks>
internal sealed class OpenSteps
{
    private readonly List<(Grounded Used, CandidateSet Gone)> _taken;
    private readonly Solution? _solution;
    private readonly IEnumerator<IRule> _rungs;
    private readonly List<OpenStep> _found = [];

    private OpenSteps(Grid grid, Board? seen, Board? known, ValueArray<Grounded> used, Ladder ladder)
    {
        Seen = seen;
        _solution = grid.Puzzle?.Solution;
        Known = known is not null && !Contradiction.On(known).Any() ? known : null;
        _taken = seen is null ? [] : [.. KnownBoard.Taken(grid, seen, used)];
        _rungs = ladder.Rules.AsEnumerable().GetEnumerator();
    }

    /// <summary>The board without what was only said; null where the grid is broken.</summary>
    public Board? Seen { get; }

    /// <summary>The board with what was said; null where there is nothing to find.</summary>
    public Board? Known { get; }

    /// <summary>Looks at a grid.</summary>
    /// <param name="grid">The grid.</param>
    /// <param name="writing">Cells whose lists are being written.</param>
    /// <param name="used">What was shown, spoken or used.</param>
    /// <param name="ladder">The rules, none of which assumes one solution.</param>
    public static OpenSteps On(Grid grid, CellSet writing, ValueArray<Grounded> used, Ladder ladder) => new(
        grid, SeenBoard.Of(grid, writing).Value, KnownBoard.Of(grid, writing, used).Value, used, ladder);

    /// <summary>The open deductions, easiest rule first.</summary>
    public IEnumerable<OpenStep> All()
    {
        for (var next = 0; next < _found.Count || Climb(next); next++)
            yield return _found[next];
    }

    /// <summary>
    /// The easiest deduction that viewers can follow from the picture; where there is none, the easiest of all. Null where
    /// nothing is open.
    /// </summary>
    /// <param name="touching">The cell that it should touch, or null.</param>
    public OpenStep? Easiest(Cell? touching)
    {
        var fitting = All().Where(step => touching is not { } cell || Touches(step.Deduction, cell));
        return fitting.FirstOrDefault(step => step.IsSeen) ?? fitting.FirstOrDefault();
    }

    /// <summary>
    /// The deductions, shown or said before, without which a deduction cannot be seen, each after those that it needs itself.
    /// </summary>
    public IReadOnlyList<Deduction> MissingBefore(Deduction deduction)
    {
        var missing = new List<Deduction>();
        var unseen = UnseenBy(deduction);
        foreach (var (used, gone) in Enumerable.Reverse(_taken))
        {
            if ((gone & unseen).IsEmpty || !IsTrue(used.Deduction))
                continue;
            missing.Insert(0, used.Deduction);
            unseen |= UnseenBy(used.Deduction);
        }

        return missing;
    }

    private CandidateSet UnseenBy(Deduction deduction) => deduction.RestsOn & (Seen?.Candidates ?? CandidateSet.Empty);

    private static bool Touches(Deduction deduction, Cell cell) =>
        (deduction.PatternCells | deduction.Places.Cells | deduction.Removes.Cells).Contains(cell);

    // One rung further, or more where a rung has nothing; false at the top.
    private bool Climb(int wanted)
    {
        while (Known is not null && _found.Count <= wanted && _rungs.MoveNext())
        {
            var found = new Findings();
            _rungs.Current.Find(Known, found);
            _found.AddRange(found.Where(IsTrue).Select(deduction => new OpenStep(deduction, UnseenBy(deduction).IsEmpty)));
        }

        return wanted < _found.Count;
    }

    private bool IsTrue(Deduction deduction) =>
        _solution is { } solution && deduction.Places.All(solution.Holds) && !deduction.Removes.Any(solution.Holds);
}
