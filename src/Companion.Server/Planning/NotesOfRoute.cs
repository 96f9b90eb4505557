using System.Collections.Immutable;
using Companion.Engine.Planning;
using Companion.Server.Data;
using Companion.Server.Log;
using Companion.Session.Planning;

namespace Companion.Server.Planning;

/// <summary>The notes that are kept with a puzzle, at the steps of a route.</summary>
internal static class NotesOfRoute
{
    /// <summary>A note for each step in order, empty where nothing is to be said.</summary>
    /// <param name="plan">The route from the givens of a puzzle.</param>
    /// <param name="folder">The data folder that keeps the notes; null for no notes.</param>
    /// <param name="error">Told where it keeps none for this puzzle.</param>
    /// <exception cref="PlainException">They cannot be read.</exception>
    public static ImmutableArray<string> For(RunPlan plan, DataFolder? folder, TextWriter error)
    {
        if (folder is null)
            return [.. plan.Steps.Select(_ => "")];
        var givens = plan.Start.ToString();
        var notes = new PuzzleNotes(givens, Read(folder, givens));
        if (notes.Notes.Count == 0)
            error.WriteLine($"No notes are kept with this puzzle in {folder.Path}: the sheet has none.");
        return [.. plan.Steps.Select(step => notes.At(step.Deduction.Places, step.Deduction.Removes))];
    }

    private static Session.State.ValueArray<StepNote> Read(DataFolder folder, string givens)
    {
        if (!File.Exists(folder.Events))
            return default;
        using var log = SqliteEventLog.Open(folder);
        try
        {
            return log.NotesOf(givens) ?? default;
        }
        catch (IOException failure)
        {
            throw new PlainException($"{failure.Message} Start the companion, which mends its log, or leave out --notes.", failure);
        }
    }
}
