using System.Collections.Immutable;
using Companion.Session.Planning;
using Companion.Session.Views;

namespace Companion.Server.Planning;

/// <summary>
/// A step that was done, as the run sheet lists it. An entry that follows in several steps has done as many of them, so that numbers and
/// clock go on from here to the way ahead.
/// </summary>
/// <param name="First">The number of the first step that it did, from 1 on.</param>
/// <param name="Last">The number of the last one; the same as the first for one step.</param>
/// <param name="Begins">When it begins, in seconds of speaking from the start of the puzzle.</param>
/// <param name="Seconds">How long its steps take to say; 0 while it is not known how it follows.</param>
/// <param name="Text">The entry or the deduction in a few words.</param>
/// <param name="At">When it was done; null where that was not kept.</param>
/// <param name="How">How it follows, in one short sentence that goes on from the text; empty while that is not known.</param>
/// <param name="Notes">What was noted at it.</param>
public sealed record DoneLine(
    int First, int Last, double Begins, double Seconds, string Text, DateTimeOffset? At, string How, ImmutableArray<string> Notes)
{
    /// <summary>The lines of all steps that were done.</summary>
    /// <param name="done">The steps in order.</param>
    /// <param name="voice">The words and how fast they are said.</param>
    internal static ImmutableArray<DoneLine> Of(ImmutableArray<DoneStep> done, Voice voice)
    {
        var lines = ImmutableArray.CreateBuilder<DoneLine>(done.Length);
        var (number, at) = (1, 0.0);
        foreach (var step in done)
        {
            var line = Of(step, number, at, voice);
            lines.Add(line);
            (number, at) = (line.Last + 1, at + line.Seconds);
        }

        return lines.ToImmutable();
    }

    private static DoneLine Of(DoneStep done, int first, double begins, Voice voice)
    {
        var steps = done.Deductions;
        var last = first + Math.Max(1, steps.Length) - 1;
        var seconds = steps.Sum(step => voice.Wording.Why(step).TimeToSay(voice.Rate).TotalSeconds);
        ImmutableArray<string> notes = [.. done.Notes.Select(note => note.Text)];
        var (text, at, how) = done.Deduction is { } said
            ? ($"{voice.Wording.NameOf(said.Rule)} {string.Join(' ', said.PatternCells)}", (DateTimeOffset?)null, "was said or shown")
            : (done.Entry!.Label, done.Entry.Entry.At, done.Proof is { } proof ? voice.Wording.How(proof).Written : "");
        return new(first, last, Math.Round(begins, 1), Math.Round(seconds, 1), text, at, how, notes);
    }
}
