using System.CommandLine;
using Companion.Engine;

namespace Companion.Server.CommandLine;

/// <summary>What a command that is about a position takes: the grid, and what is gone from it.</summary>
internal sealed class PositionOptions
{
    private readonly Argument<string> _grid = new("grid")
    {
        Description = PuzzleFile.OneLayout,
        HelpName = "grid|file|-",
    };

    private readonly Option<string> _without = new("--without")
    {
        Description = "Candidates that are gone beyond what the digits take out, as in r1c2=3,r4c7=5.",
    };

    /// <summary>Gives a command these options.</summary>
    /// <param name="command">The command.</param>
    public void AddTo(Command command)
    {
        command.Add(_grid);
        command.Add(_without);
    }

    /// <summary>The position, not validated.</summary>
    /// <param name="asked">What was typed.</param>
    /// <exception cref="PlainException">The file cannot be read or has not one grid, or what is gone is no list of candidates.</exception>
    public GridDraft Read(ParseResult asked)
    {
        try
        {
            return BoardText.Read(PuzzleFile.One(asked.GetRequiredValue(_grid))) with { Removed = CandidateSet.Parse(asked.GetValue(_without) ?? "") };
        }
        catch (FormatException fault)
        {
            throw new PlainException(fault.Message, fault);
        }
    }

    /// <summary>Says why a position cannot be used.</summary>
    /// <param name="draft">The position.</param>
    /// <param name="faults">Every reason.</param>
    /// <param name="error">Where to.</param>
    /// <returns>What the command leaves behind then.</returns>
    public static int Refuse(GridDraft draft, IEnumerable<BoardFault> faults, TextWriter error)
    {
        foreach (var fault in faults)
            error.WriteLine(fault is BoardFault.NoSolution && WhatTookItOut(draft) is { } taken ? taken : fault.Sentence);
        return ExitCode.BadPuzzle;
    }

    // Null where the digits alone have no solution.
    private static string? WhatTookItOut(GridDraft draft)
    {
        var whole = Puzzle.Read(draft with { Removed = CandidateSet.Empty });
        if (whole.Value is { } puzzle)
        {
            var wrong = string.Join(", ", draft.Removed.Where(puzzle.Solution.Holds));
            return $"--without takes out {wrong}, which is in the solution of this grid: no solution is left.";
        }

        return whole.Faults.Any(fault => fault is BoardFault.SeveralSolutions)
            ? "Each solution of this grid has something that --without takes out: no solution is left."
            : null;
    }
}
