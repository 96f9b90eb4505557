using Google.OrTools.Sat;

namespace Companion.Engine.Tests.Search;

/// <summary>
/// A general constraint solver, OR-Tools CP-SAT (Apache-2.0), told nothing but the rules of the grid. It shares no line with the
/// engine's search, so what both say is not one mistake made twice.
/// </summary>
internal static class ConstraintSolver
{
    /// <summary>The full grids that the board allows, up to a limit, as 81 digits each.</summary>
    public static IReadOnlyList<string> Solutions(Board board, int limit)
    {
        var model = new CpModel();
        var isTrue = new BoolVar[Cell.Count, Digit.Count];
        foreach (var cell in CellSet.All)
        {
            foreach (var digit in Digit.All)
                isTrue[cell.Index, digit.Index] = model.NewBoolVar($"{cell}={digit}");
            model.AddExactlyOne(Digit.All.Select(digit => isTrue[cell.Index, digit.Index]));
            foreach (var digit in Digit.All.Where(digit => !Stands(board, cell, digit)))
                model.AddBoolAnd([isTrue[cell.Index, digit.Index].Not()]);
        }

        foreach (var house in HouseSet.All)
        {
            foreach (var digit in Digit.All)
                model.AddExactlyOne(house.Cells.Select(cell => isTrue[cell.Index, digit.Index]));
        }

        var collector = new Collector(isTrue, limit);
        using var solver = new CpSolver { StringParameters = "num_workers:1 enumerate_all_solutions:true" };
        var status = solver.Solve(model, collector);
        return status is CpSolverStatus.Optimal or CpSolverStatus.Feasible or CpSolverStatus.Infeasible
            ? collector.Found
            : throw new InvalidOperationException($"The constraint solver stopped with {status}.");
    }

    private static bool Stands(Board board, Cell cell, Digit digit) =>
        board.DigitAt(cell) is { } placed ? placed == digit : board[cell].Contains(digit);

    private sealed class Collector(BoolVar[,] isTrue, int limit) : CpSolverSolutionCallback
    {
        public List<string> Found { get; } = [];

        public override void OnSolutionCallback()
        {
            Found.Add(string.Concat(CellSet.All.Select(cell => Digit.All.First(digit => BooleanValue(isTrue[cell.Index, digit.Index])))));
            if (Found.Count >= limit)
                StopSearch();
        }
    }
}
