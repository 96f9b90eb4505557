using System.Collections.Immutable;
using Companion.Engine.Proofs;
using Companion.Session.State;

namespace Companion.Session.Planning;

/// <summary>
/// What was to be expected after which entry, handed on from outlook to outlook. What was found after an entry that is taken back is
/// forgotten, so that an undo takes back what is said of it.
/// </summary>
internal sealed class OutlookTrail
{
    // For each rule what was found, each time it was something else, the oldest first.
    private readonly ImmutableDictionary<RuleId, ImmutableArray<Mark>> _marks;

    private OutlookTrail(ImmutableDictionary<RuleId, ImmutableArray<Mark>> marks) => _marks = marks;

    /// <summary>Nothing was looked at yet.</summary>
    public static OutlookTrail Empty { get; } = new(ImmutableDictionary<RuleId, ImmutableArray<Mark>>.Empty);

    /// <summary>Number of the entry after which the board of a state came about.</summary>
    public static int EntryOf(SessionState state) => state.History.Last?.Number ?? 0;

    /// <summary>Number of the entry after which the puzzle of a state stood there without an entry.</summary>
    public static int StartOf(SessionState state) =>
        state.History.Made.FirstOrDefault(step => step.Grid.Loading != state.Grid.Loading)?.Number ?? 0;

    /// <summary>The trail with what was found after entries that stand.</summary>
    public OutlookTrail StandingIn(SessionState state)
    {
        var standing = state.History.Made.Select(step => step.Number).Append(0).ToHashSet();
        return new(_marks.ToImmutableDictionary(
            rule => rule.Key, rule => rule.Value.RemoveAll(mark => !standing.Contains(mark.Entry))));
    }

    /// <summary>Whether a rule was looked at.</summary>
    public bool Has(RuleId rule) => MarksOf(rule).Length > 0;

    /// <summary>The trail with what was found after an entry, the newest of them.</summary>
    public OutlookTrail With(RuleId rule, int entry, Coming coming) => MarksOf(rule) is [.., var last] && last.Coming == coming
        ? this
        : new(_marks.SetItem(rule, MarksOf(rule).Add(new(entry, coming))));

    /// <summary>Number of the entry by which a rule, which was looked at, came to be as it was found last.</summary>
    public int SinceOf(RuleId rule) => MarksOf(rule)[^1].Entry;

    /// <summary>Whether a rule was ever open or ahead.</summary>
    public bool Came(RuleId rule) => MarksOf(rule).Any(mark => mark.Coming < Coming.Never);

    private ImmutableArray<Mark> MarksOf(RuleId rule) => _marks.GetValueOrDefault(rule, []);

    private readonly record struct Mark(int Entry, Coming Coming);
}
