using Companion.Engine.Proofs;
using Companion.Engine.Rules;

namespace Companion.Engine.Planning;

/// <summary>Plans one route.</summary>
/// <param name="start">Where to start.</param>
/// <param name="ladder">The rules.</param>
/// <param name="features">What it is to show; all of it on the ladder.</param>
/// <param name="last">What was deduced just before, or null.</param>
/// <param name="cancel">Stops it.</param>
internal sealed class Planner(
    Board start, Ladder ladder, IReadOnlyList<Feature> features, Deduction? last, CancellationToken cancel)
{
    private const int MostOthers = 4;

    // Of the places where a rule is open so many are tried for a detour.
    private const int MostTries = 12;

    private readonly Walk _walk = new(ladder, cancel);

    /// <summary>The route.</summary>
    internal RunPlan Plan()
    {
        var steps = Pruned(_walk.From(start, last, Waiting([])))!;
        // A featured rule that is needed has its turn where nothing easier is open. One that is not is a detour, taken where it is open
        // last.
        while (WithDetour(steps) is { } more)
            steps = more;

        var end = steps is [.., var final] ? final.Board.Apply(final.Deduction) : start;
        return new(ladder, start, [.. steps], end, [.. features.Select(feature => Turn(feature, steps))]);
    }

    // The rules to be taken as soon as they are open, which were not taken yet.
    private IEnumerable<RuleId> Waiting(List<WalkStep> before) => features
        .Where(feature => feature.Timing == Timing.Early && before.TrueForAll(step => step.Rung.Rule.Id != feature.Rule))
        .Select(feature => feature.Rule);

    private List<PlannedStep>? WithDetour(List<PlannedStep> steps) =>
        features.Where(feature => !Shows(steps, feature))
            .SelectMany(feature => PlacesFor(feature, steps).Take(MostTries))
            .Select(open => WalkedOn(steps, open.Place, open.Turn) ?? Inserted(steps, open.Place, open.Turn))
            .FirstOrDefault(more => more is not null);

    // Where a rule is open, from the last step to the first.
    private IEnumerable<(int Place, WalkStep Turn)> PlacesFor(Feature feature, List<PlannedStep> steps)
    {
        for (var place = steps.Count - 1; place >= 0; place--)
        {
            if (_walk.Best(steps[place].Board, feature.Rule, place > 0 ? steps[place - 1].Deduction : last) is { } turn)
                yield return (place, new(steps[place].Board, ladder[feature.Rule], turn));
        }
    }

    // After the detour a person goes on from what it opened.
    private List<PlannedStep>? WalkedOn(List<PlannedStep> steps, int place, WalkStep turn)
    {
        List<WalkStep> before = [.. Walked(steps[..place]), turn];
        return Unless(Pruned([.. before, .. _walk.From(turn.Board.Apply(turn.Deduction), turn.Deduction, Waiting(before))]), steps);
    }

    // What comes after the detour stays as it was.
    private List<PlannedStep>? Inserted(List<PlannedStep> steps, int place, WalkStep turn) =>
        Unless(Pruned([.. Walked(steps[..place]), turn, .. Walked(steps[place..])]), steps);

    // No detour is worth the turn of another featured rule.
    private List<PlannedStep>? Unless(List<PlannedStep>? more, List<PlannedStep> steps) =>
        more is not null && features.Count(feature => Shows(more, feature)) > features.Count(feature => Shows(steps, feature)) ? more : null;

    private static bool Shows(List<PlannedStep> steps, Feature feature) => steps.Exists(step => step.Rung.Rule.Id == feature.Rule);

    private static IEnumerable<WalkStep> Walked(List<PlannedStep> steps) =>
        steps.Select(step => new WalkStep(step.Board, step.Rung, step.Deduction));

    // On a board where others are left out a step may take more away than where it was found, so that one before it may go as well.
    private List<PlannedStep>? Pruned(List<WalkStep> steps)
    {
        var turns = features.Select(feature => steps.FindIndex(step => step.Rung.Rule.Id == feature.Rule)).ToHashSet();
        var end = steps is [.., var final] ? final.Board.Apply(final.Deduction) : start;
        var needed = Pruning.Needed(
            start,
            steps.ConvertAll(step => step.Deduction),
            place => !steps[place].Deduction.Places.IsEmpty || turns.Contains(place),
            Pruning.RestsOnNothing,
            board => board.Candidates == end.Candidates);
        var kept = Replay(steps, needed, turns) ?? Replay(steps, [.. Enumerable.Range(0, steps.Count)], turns);
        return kept is not null && kept.Count < steps.Count ? Pruned([.. Walked(kept)]) ?? kept : kept;
    }

    // The steps of these places on the boards that they come to when the others are left out; null where one of them does not hold
    // there any more.
    private List<PlannedStep>? Replay(List<WalkStep> steps, List<int> places, HashSet<int> turns)
    {
        var planned = new List<PlannedStep>(places.Count);
        var board = start;
        foreach (var place in places)
        {
            var rung = steps[place].Rung;
            if (((steps[place].Deduction.Places | steps[place].Deduction.Removes) & board.Candidates).IsEmpty)
                continue;
            if (Again(board, steps[place]) is not { } deduction)
                return null;
            planned.Add(new(board, rung, deduction, turns.Contains(place)) { Ways = Ways(board, rung, deduction) });
            board = board.Apply(deduction);
        }

        return planned;
    }

    // Where more candidates stand than where it was found, the same pattern may take more of them away, or another one is what the rule
    // finds there.
    private Deduction? Again(Board board, WalkStep step)
    {
        if (step.Board == board)
            return step.Deduction;
        var gone = step.Deduction.Removes & board.Candidates;
        var fitting = _walk.Find(board, step.Rung)
            .Where(found => found.Places == step.Deduction.Places && found.Removes.ContainsAll(gone)).ToList();
        return fitting.Find(found => found.PatternCells == step.Deduction.PatternCells)
            ?? fitting.FirstOrDefault()
            ?? (Pruning.IsProved(board, step.Deduction) ? step.Deduction : null);
    }

    private int Ways(Board board, Rung its, Deduction taken)
    {
        foreach (var rung in ladder.Rungs.Where(rung => rung.Place <= its.Place || Walk.AreTakenTogether(its, taken, rung)))
        {
            if (_walk.Find(board, rung).Any(other => other.Places != taken.Places || other.Removes != taken.Removes))
                return 2;
        }

        return 1;
    }

    private FeaturedTurn Turn(Feature feature, List<PlannedStep> planned)
    {
        var rung = ladder[feature.Rule];
        var turn = planned.FindIndex(step => step.IsFeatured && step.Rung == rung);
        var open = new Dictionary<string, FeaturedTurn.Alternative>();
        for (var place = 0; place < planned.Count; place++)
        {
            foreach (var deduction in _walk.Find(planned[place].Board, rung))
            {
                var pattern = Pattern(deduction);
                open[pattern] = open.TryGetValue(pattern, out var since) ? since with { Last = place } : new(place, place, deduction);
            }
        }

        if (turn >= 0)
            open.Remove(Pattern(planned[turn].Deduction));
        return new(
            feature,
            turn < 0 ? null : turn,
            turn < 0 ? null : planned[turn].Deduction,
            [.. open.Values.OrderByDescending(other => other.Last - other.First).ThenBy(other => other.First).Take(MostOthers)]);
    }

    private static string Pattern(Deduction deduction) => $"{deduction.PatternCells} {deduction.Digits}";
}
