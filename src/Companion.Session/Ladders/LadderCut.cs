using Companion.Engine.Proofs;
using Companion.Engine.Rules;
using Companion.Session.State;

namespace Companion.Session.Ladders;

/// <summary>
/// What the presenter cut the ladder to, for all puzzles of the session. It may name rules and families that the ladder of another
/// day does not have; those count for nothing.
/// </summary>
/// <param name="Last">The last rule that is looked for; null for the whole ladder.</param>
/// <param name="Switched">The families that were switched, in the order of their names.</param>
public sealed record LadderCut(RuleId? Last, ValueArray<FamilySwitch> Switched)
{
    /// <summary>As the file has it.</summary>
    public static LadderCut None { get; } = new(null, default);

    /// <summary>Whether a family's rules are looked for.</summary>
    /// <param name="family">The family as the file has it.</param>
    public bool IsOn(Family family)
    {
        ArgumentNullException.ThrowIfNull(family);
        return SwitchOf(family.Name)?.IsOn ?? family.IsOn;
    }

    /// <summary>How a family was switched, or null where it never was.</summary>
    internal FamilySwitch? SwitchOf(string family) => Switched.FirstOrDefault(switched => switched.Family == family);

    /// <summary>The same cut with a family switched.</summary>
    internal LadderCut With(FamilySwitch switched) => this with
    {
        Switched = new([.. Switched.Where(other => other.Family != switched.Family).Append(switched)
            .OrderBy(its => its.Family, StringComparer.Ordinal)]),
    };

    /// <summary>The rules that are looked for.</summary>
    /// <param name="whole">The whole ladder.</param>
    /// <param name="hasOneSolution">Whether the puzzle is known to have one solution; rules that assume it are left out otherwise.</param>
    public Ladder Of(Ladder whole, bool hasOneSolution)
    {
        ArgumentNullException.ThrowIfNull(whole);
        var lower = Last is { } last && whole.Has(last) ? whole.UpTo(last) : whole;
        var cut = lower.Without(whole.Families.Where(family => !IsOn(family)).Select(family => family.Name));
        return hasOneSolution ? cut : cut.WithoutUniqueness();
    }
}
