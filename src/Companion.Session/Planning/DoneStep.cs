using System.Collections.Immutable;
using Companion.Engine.Proofs;
using Companion.Engine.Rules;
using Companion.Session.State;

namespace Companion.Session.Planning;

/// <summary>A step that was done on the puzzle: an entry that stands, or a deduction that was said, shown in full or used.</summary>
/// <param name="Entry">The entry; null for a deduction.</param>
/// <param name="Proof">How the entry follows; null while that is not known, and for a deduction.</param>
/// <param name="Deduction">The deduction; null for an entry.</param>
/// <param name="Notes">What was noted at the steps that led to it.</param>
public sealed record DoneStep(Step? Entry, Attribution? Proof, Deduction? Deduction, ValueArray<StepNote> Notes)
{
    private static readonly RuleId NakedSingle = new NakedSingle().Id;

    /// <summary>
    /// What there was to say: the deduction itself, or the steps of the proof; none where it is not known. A naked single is one step,
    /// as it is on a run sheet, though easier singles may lead to it.
    /// </summary>
    public ImmutableArray<Deduction> Deductions => (Deduction, Proof) switch
    {
        ({ } said, _) => [said],
        (_, Attribution.Proved { AtOnce: { } alone }) when alone.Rule == NakedSingle => [alone],
        (_, Attribution.Proved { Steps: var steps }) => steps,
        _ => [],
    };
}
