using System.Collections.Immutable;
using Companion.Engine.Proofs;
using Companion.Session.Planning;

namespace Companion.Server.Planning;

/// <summary>A step that was done, as the run sheet lists it.</summary>
/// <param name="Text">The entry or the deduction in a few words.</param>
/// <param name="At">When it was done; null where that was not kept.</param>
/// <param name="How">How it follows, in one short sentence that goes on from the text; empty while that is not known.</param>
/// <param name="Notes">What was noted at it.</param>
public sealed record DoneLine(string Text, DateTimeOffset? At, string How, ImmutableArray<string> Notes)
{
    internal static DoneLine Of(DoneStep done, Wording wording)
    {
        ImmutableArray<string> notes = [.. done.Notes.Select(note => note.Text)];
        return done.Deduction is { } said
            ? new($"{wording.NameOf(said.Rule)} {string.Join(' ', said.PatternCells)}", null, "was said or shown", notes)
            : new(done.Entry!.Label, done.Entry.Entry.At, done.Proof is { } proof ? wording.How(proof).Written : "", notes);
    }
}
