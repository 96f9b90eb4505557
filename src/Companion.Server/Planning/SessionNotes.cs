using System.Collections.Immutable;
using Companion.Engine.Planning;
using Companion.Session.State;

namespace Companion.Server.Planning;

/// <summary>The notes of a session at the steps of a route.</summary>
internal static class SessionNotes
{
    /// <summary>A note for each step in order, empty where nothing is to be said.</summary>
    /// <param name="plan">The route.</param>
    /// <param name="state">The session; null for no notes.</param>
    /// <exception cref="PlainException">The session has another puzzle.</exception>
    public static ImmutableArray<string> For(RunPlan plan, SessionState? state)
    {
        if (state is null)
            return [.. plan.Steps.Select(_ => "")];
        if (state.Grid.Puzzle?.Board.ToString() != plan.Start.ToString())
            throw new PlainException("The session has another puzzle: load this one there and note something, or leave out --notes.");
        return [.. plan.Steps.Select(step => state.Plan.NoteOf(step.Deduction.Places, step.Deduction.Removes))];
    }
}
