namespace Companion.Engine.Tests.Rules;

using Place = (int Row, int Column);

/// <summary>
/// Nets of singles as the definition says, found by going through all sets of singles that can be placed one after another, smaller
/// sets first. Nothing is shared with the rules.
/// </summary>
internal static class LiteralNets
{
    /// <summary>The candidates that some sequence of singles refutes.</summary>
    public static List<(Place Cell, int Digit)> Refuted(LiteralGrid grid) =>
        [.. Candidates(grid).Where(candidate => Follow(new LiteralSupposition(grid).With(candidate), int.MaxValue).IsDead)];

    /// <summary>
    /// The fewest singles by which any of these candidates is refuted, and all that are refuted by so few.
    /// </summary>
    public static (int Steps, List<(Place Cell, int Digit)> Candidates) Fewest(LiteralGrid grid, List<(Place Cell, int Digit)> refuted)
    {
        var layers = refuted.ConvertAll(candidate => new List<LiteralSupposition> { new LiteralSupposition(grid).With(candidate) });
        for (var steps = 0; ; steps++)
        {
            var done = refuted.Where((_, at) => layers[at].Exists(supposition => supposition.IsDead)).ToList();
            if (done.Count > 0)
                return (steps, done);
            layers = layers.ConvertAll(Next);
        }
    }

    /// <summary>
    /// Whether a candidate is refuted by singles and by refuting others in turn, which are followed by so many rounds of singles.
    /// </summary>
    public static bool IsRefutedInTurn(LiteralGrid grid, (Place Cell, int Digit) candidate, int rounds)
    {
        var supposition = Follow(new LiteralSupposition(grid).With(candidate), int.MaxValue);
        for (var goesOn = true; goesOn && !supposition.IsDead;)
        {
            goesOn = false;
            foreach (var other in supposition.Candidates)
            {
                if (!supposition.IsDead && supposition.Stands(other) && Follow(supposition.With(other), rounds).IsDead)
                    (supposition, goesOn) = (Follow(supposition.Without(other), int.MaxValue), true);
            }
        }

        return supposition.IsDead;
    }

    private static List<LiteralSupposition> Next(List<LiteralSupposition> layer)
    {
        var next = new Dictionary<string, LiteralSupposition>();
        foreach (var supposition in layer)
        {
            foreach (var single in supposition.Singles)
            {
                var after = supposition.With(single);
                next.TryAdd(after.Name, after);
            }
        }

        return [.. next.Values];
    }

    // Once a single always a single, unless there is a dead end: so any order leads as far, and
    // all at once do, but for one that another takes out, which is a dead end.
    private static LiteralSupposition Follow(LiteralSupposition supposition, int rounds)
    {
        for (; rounds > 0 && !supposition.IsDead && supposition.Singles is [_, ..] singles; rounds--)
            supposition = singles.Aggregate(supposition, (before, single) => before.Stands(single) ? before.With(single) : before);
        return supposition;
    }

    private static IEnumerable<(Place Cell, int Digit)> Candidates(LiteralGrid grid) =>
        LiteralGrid.AllCells.SelectMany(cell => grid.Candidates(cell).Select(digit => (cell, digit)));
}
