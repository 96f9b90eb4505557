using System.Collections.Immutable;
using Companion.Engine;
using Companion.Engine.Proofs;
using Companion.Engine.Rules;
using Companion.Session.Boards;
using Companion.Session.State;

namespace Companion.Session.Scanning;

/// <summary>The parts of the scan of one state, quick rules first.</summary>
/// <param name="state">The state.</param>
/// <param name="ladder">The rules.</param>
/// <param name="previous">The last finished scan of the same puzzle, or null.</param>
/// <param name="cancel">Stops between two rules.</param>
internal sealed class Parts(SessionState state, Ladder ladder, ScanResult? previous, CancellationToken cancel)
{
    private readonly ImmutableDictionary<Deduction, int> _before =
        previous?.OpenSince ?? ImmutableDictionary<Deduction, int>.Empty;

    private readonly Trail _trail = previous is null ? Trail.Empty : Trail.Of(state, previous);

    /// <summary>Each result holds all that was found so far.</summary>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public IEnumerable<ScanResult> Scan()
    {
        var known = KnownBoard.Of(state);
        if (WhyBlocked(known) is { } reason)
        {
            yield return Result(known.Value, [], Effort.LastResort, FindDependents(), blocked: reason);
            yield break;
        }

        // The known board is the seen board less some candidates, so that a good one has a good seen board.
        var board = known.Value!;
        var supportOf = Support.On(state, SeenBoard.Of(state.Grid, state.Writing).Value!);
        var open = Find(Effort.Pattern);
        yield return Result(board, open, Effort.Pattern, previous?.Dependents ?? ScanResult.NoDependents, goesOn: true);

        open = [.. open.Concat(Find(Effort.Search)).OrderBy(found => found.Rung)];
        var dependents = FindDependents();
        var isStuck = open.IsEmpty && !board.Open.IsEmpty;
        yield return Result(board, open, Effort.Search, dependents, goesOn: isStuck);
        if (!isStuck)
            yield break;

        open = Find(Effort.LastResort);
        yield return Result(board, open, Effort.LastResort, dependents);

        ImmutableArray<Found> Find(Effort effort) => [.. ladder.Scan(board, effort, cancel).Select(deduction => new Found(
            deduction,
            ladder.RungOf(deduction.Rule),
            supportOf(deduction),
            _before.GetValueOrDefault(deduction, state.Entries)))];
    }

    // A board that cannot be filled proves everything: nothing found on it would be worth saying.
    private string? WhyBlocked(Reading<Board> known)
    {
        if (state.Grid.Puzzle is null)
            return "Load a puzzle first.";
        return known.IsGood ? Contradiction.On(known.Value).FirstOrDefault()?.Sentence : known.Faults[0].Sentence;
    }

    private ScanResult Result(
        Board? known,
        ImmutableArray<Found> open,
        Effort reached,
        ImmutableDictionary<int, ImmutableArray<int>> dependents,
        bool goesOn = false,
        string? blocked = null) => new()
        {
            Sequence = state.Sequence,
            Loading = state.Grid.Loading,
            Entries = state.Entries,
            Blocked = blocked,
            Known = blocked is null ? known : null,
            Reached = reached,
            GoesOn = goesOn,
            Open = open,
            OpenSince = blocked is null ? SinceOf(open) : _before,
            Trail = _trail,
            Dependents = dependents,
        };

    private ImmutableDictionary<int, ImmutableArray<int>> FindDependents() => Dependents.Of(state, ladder, cancel);

    private static ImmutableDictionary<Deduction, int> SinceOf(ImmutableArray<Found> open)
    {
        var since = ImmutableDictionary.CreateBuilder<Deduction, int>();
        foreach (var found in open)
            since[found.Deduction] = found.OpenSince;
        return since.ToImmutable();
    }
}
