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
    /// <exception cref="PlainException">It keeps none for this puzzle.</exception>
    public static ImmutableArray<string> For(RunPlan plan, DataFolder? folder)
    {
        if (folder is null)
            return [.. plan.Steps.Select(_ => "")];
        var givens = plan.Start.ToString();
        var notes = new PuzzleNotes(givens, Read(folder, givens));
        return notes.Notes.Count > 0
            ? [.. plan.Steps.Select(step => notes.At(step.Deduction.Places, step.Deduction.Removes))]
            : throw new PlainException(
                $"No notes are kept with this puzzle in {folder.Path}: load it there and note something, or leave out --notes.");
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
