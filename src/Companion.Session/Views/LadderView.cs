using System.Collections.Immutable;
using Companion.Engine.Proofs;
using Companion.Engine.Rules;
using Companion.Session.State;

namespace Companion.Session.Views;

/// <summary>The ladder, and what of it is looked for, as the presenter and the co-hosts see it.</summary>
/// <param name="Sequence">Number of the state it shows.</param>
/// <param name="Last">The last rule that is looked for; null for the whole ladder.</param>
/// <param name="Rungs">All rungs, easiest first.</param>
/// <param name="Families">The families that have a rung, in the order of the file.</param>
public sealed record LadderView(
    long Sequence, RuleId? Last, ImmutableArray<RungView> Rungs, ImmutableArray<FamilyView> Families)
{
    /// <summary>The ladder in a state.</summary>
    /// <param name="state">The state.</param>
    /// <param name="ladder">The whole ladder.</param>
    /// <param name="voice">The words.</param>
    public static LadderView Of(SessionState state, Ladder ladder, Voice voice)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(ladder);
        ArgumentNullException.ThrowIfNull(voice);
        var kept = state.LadderCut.Of(ladder, hasOneSolution: true);
        var families = ladder.Rungs.ToLookup(rung => rung.Family);
        return new(
            state.Sequence,
            state.LadderCut.Last is { } last && ladder.Has(last) ? last : null,
            [.. ladder.Rungs.Select(rung => new RungView(
                rung.Rule.Id, voice.Wording.NameOf(rung.Rule.Id), rung.Family, kept.Has(rung.Rule.Id)))],
            [.. ladder.Families.Where(family => families.Contains(family.Name)).Select(family => new FamilyView(
                family.Name, state.LadderCut.IsOn(family), families[family.Name].Any(rung => rung.Rule.AssumesOneSolution)))]);
    }
}
