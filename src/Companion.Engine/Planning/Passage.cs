using System.Collections.Immutable;
using Companion.Engine.Rules;

namespace Companion.Engine.Planning;

/// <summary>Steps of a route that are told in one go.</summary>
/// <param name="First">The place of its first step, 0-based.</param>
/// <param name="Count">How many steps it has, at least 1.</param>
/// <param name="Theme">What they have in common.</param>
public sealed record Passage(int First, int Count, Theme Theme)
{
    // Fewer singles than this with something in common are not worth a title of their own.
    private const int Few = 3;

    // Nobody keeps more of them in mind.
    private const int Many = 9;

    private static readonly ImmutableHashSet<Proofs.RuleId> Singles = [new FullHouse().Id, new HiddenSingle().Id, new NakedSingle().Id];

    /// <summary>The passages of a route: they follow one another and hold each step once.</summary>
    /// <param name="steps">The steps of the route.</param>
    public static ImmutableArray<Passage> Of(ImmutableArray<PlannedStep> steps) =>
        Of([.. steps.Select(step => new ToldStep(step.Deduction, step.IsFeatured))]);

    /// <summary>The passages of steps that are, or were, told one after the other.</summary>
    /// <param name="steps">The steps; a single places one digit.</param>
    public static ImmutableArray<Passage> Of(ImmutableArray<ToldStep> steps)
    {
        var passages = ImmutableArray.CreateBuilder<Passage>();
        for (var first = 0; first < steps.Length;)
        {
            var next = IsSingle(steps[first]) ? OfSingles(steps, first) : OfRule(steps, first);
            if (passages.Count > 0 && passages[^1] is var before && IsScattered(before) && IsScattered(next) && before.Count + next.Count <= Many)
                passages[^1] = new(before.First, before.Count + next.Count, new Theme.Everywhere());
            else
                passages.Add(next);
            first += next.Count;
        }

        return passages.ToImmutable();
    }

    private static bool IsScattered(Passage passage) =>
        passage.Theme is Theme.Everywhere || (passage.Count < Few && passage.Theme is Theme.InHouse or Theme.OfDigit or Theme.InChute);

    private static bool IsSingle(ToldStep step) => !step.IsFeatured && Singles.Contains(step.Deduction.Rule);

    private static Passage OfRule(ImmutableArray<ToldStep> steps, int first)
    {
        var rule = steps[first].Deduction.Rule;
        return steps[first].IsFeatured
            ? new(first, 1, new Theme.Turn(rule))
            : new(first, Length(steps, first, step => !step.IsFeatured && step.Deduction.Rule == rule), new Theme.OfRule(rule));
    }

    // The longest run from here on with something in common; of equals a house, then a digit, then a chute.
    private static Passage OfSingles(ImmutableArray<ToldStep> steps, int first)
    {
        var (cell, digit) = steps[first].Deduction.Places.First();
        return cell.Houses.Select(house => Run(new Theme.InHouse(house), step => house.Cells.Contains(CellOf(step))))
            .Append(Run(new Theme.OfDigit(digit), step => step.Deduction.Places.Digits.Contains(digit)))
            .Concat(ChutesOf(cell).Select(chute => Run(new Theme.InChute(chute), step => chute.Cells.Contains(CellOf(step)))))
            .MaxBy(passage => passage.Count)!;

        Passage Run(Theme theme, Predicate<ToldStep> belongs) =>
            new(first, Math.Min(Many, Length(steps, first, step => IsSingle(step) && belongs(step))), theme);
    }

    private static IEnumerable<Chute> ChutesOf(Cell cell) =>
        Enumerable.Range(0, Chute.Count).Select(Chute.At).Where(chute => chute.Cells.Contains(cell));

    private static Cell CellOf(ToldStep single) => single.Deduction.Places.Cells.First;

    private static int Length(ImmutableArray<ToldStep> steps, int first, Predicate<ToldStep> belongs)
    {
        var end = first;
        while (end < steps.Length && belongs(steps[end]))
            end++;
        return end - first;
    }
}
