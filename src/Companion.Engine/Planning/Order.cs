using System.Collections.Immutable;
using Companion.Engine.Proofs;
using Companion.Engine.Rules;
using Companion.Engine.Search;

namespace Companion.Engine.Planning;

/// <summary>What kind of puzzle is wanted.</summary>
/// <param name="Ladder">The rules that are to solve it; the featured ones are among them.</param>
/// <param name="Shape">How its givens are to lie, and how many there are.</param>
/// <param name="Featured">The rules that it must need, see <see cref="Need.Needed"/>; none asks for nothing.</param>
public sealed record Order(Ladder Ladder, GeneratorOptions Shape, ImmutableArray<RuleId> Featured)
{
    /// <summary>Makes one puzzle and looks whether it is as wanted.</summary>
    /// <param name="seed">Equal seeds and orders make equal puzzles.</param>
    /// <param name="cancel">Stops between two rounds.</param>
    /// <returns>The puzzle with its way, or null where it is not as wanted.</returns>
    /// <exception cref="OperationCanceledException"><paramref name="cancel"/> was signalled.</exception>
    public MadePuzzle? Try(ulong seed, CancellationToken cancel = default)
    {
        var puzzle = Generator.Make(seed, Shape);
        // The easiest of them first: most puzzles fail there, after the cheapest rules.
        foreach (var rule in Featured.OrderBy(Ladder.RungOf))
        {
            var easier = Route.From(puzzle.Board, Ladder.Below(rule), cancel);
            if (easier.IsComplete || !Ladder[rule].IsOpenOn(easier.End, cancel))
                return null;
        }

        var route = Route.From(puzzle.Board, Ladder, cancel);
        return route.IsComplete ? new(seed, puzzle, route) : null;
    }
}
