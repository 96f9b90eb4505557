using System.Collections.Immutable;
using Companion.Engine.Proofs;

namespace Companion.Engine.Rules;

/// <summary>The rules in order of difficulty, easiest first.</summary>
public sealed class Ladder
{
    private readonly Dictionary<RuleId, Rung> _byRule;

    private Ladder(ImmutableArray<Rung> rungs, ImmutableArray<Family> families)
    {
        Rungs = rungs;
        Rules = [.. rungs.Select(rung => rung.Rule)];
        Families = families;
        _byRule = rungs.ToDictionary(rung => rung.Rule.Id);
    }

    /// <summary>
    /// Every rule there is, once, in an order for which no file is needed; all at the same cost, and in no family. Only for puzzles
    /// that are known to have one solution: some of the rules assume it.
    /// </summary>
    public static Ladder Whole { get; } = Of(
    [
        new FullHouse(),
        new HiddenSingle(),
        new NakedSingle(),
        new Pointing(),
        new Claiming(),
        new TwoBlockClaiming(),
        new NakedPair(),
        new HiddenPair(),
        new NakedTriple(),
        new HiddenTriple(),
        new XWing(),
        new XYWing(),
        new XYZWing(),
        new RemotePairs(),
        new TwoStrongLinks(),
        new WWing(),
        new SimpleColouring(),
        new EmptyRectangle(),
        // Who looks out for rectangles sees them quickly: four corners of a few cells each, and no search.
        new UniqueRectangle(),
        new UniqueRectangleWithExtraDigit(),
        new HiddenUniqueRectangle(),
        new UniqueRectangleWithSubset(),
        new BivalueUniversalGrave(),
        new FinnedXWing(),
        new Swordfish(),
        new FinnedSwordfish(),
        new WXYZWing(),
        new NakedQuad(),
        new HiddenQuad(),
        new Jellyfish(),
        new FinnedJellyfish(),
        new SingleDigitChain(),
        new XYChain(),
        new ContinuousLoop(),
        new AlternatingInferenceChain(),
        new GroupedChain(),
        new TwoSectorDisjointSubsets(),
        new AlmostLockedSetRing(),
        new AlmostLockedSetPair(),
        new AlmostLockedSetTriple(),
        new AlmostLockedSetBlossom(),
        new AlmostLockedSetChain(),
        new CellForcingChain(),
        new HouseForcingChain(),
        new JointForcingChain(),
        new ForcingNet(),
        new NestedForcingNet(),
    ]);

    /// <summary>The whole ladder but for the rules that assume one solution.</summary>
    public static Ladder Standard { get; } = Whole.WithoutUniqueness();

    /// <summary>The rungs, easiest first.</summary>
    public ImmutableArray<Rung> Rungs { get; }

    /// <summary>The rules, easiest first.</summary>
    public ImmutableArray<IRule> Rules { get; }

    /// <summary>Every family that a rule may belong to, on the ladder or not, in the order of the file.</summary>
    public ImmutableArray<Family> Families { get; }

    /// <summary>The ladder without the families that are off at first.</summary>
    public Ladder AtFirst => Without(Families.Where(family => !family.IsOn).Select(family => family.Name));

    /// <summary>
    /// Reads a ladder file such as <c>configs/ladder.json</c>, in which each rule there is must stand once. All rules are on the
    /// ladder that it makes, those of families that are off as well; see <see cref="AtFirst"/>.
    /// </summary>
    /// <param name="json">The text of the file.</param>
    /// <exception cref="FormatException">The file cannot be used; the message lists every reason.</exception>
    public static Ladder Parse(string json)
    {
        ArgumentNullException.ThrowIfNull(json);
        var (families, rungs) = new LadderText(Whole.Rules).Read(json);
        return new(rungs, families);
    }

    /// <summary>The same ladder without the rules that assume one solution.</summary>
    public Ladder WithoutUniqueness() => Keep(rung => !rung.Rule.AssumesOneSolution);

    /// <summary>The same ladder without its last resorts.</summary>
    public Ladder WithoutLastResorts() => Keep(rung => rung.Rule.Effort != Effort.LastResort);

    /// <summary>The same ladder without the rules of some families.</summary>
    /// <param name="families">The names of the families; a name that none has changes nothing.</param>
    public Ladder Without(IEnumerable<string> families)
    {
        var left = families.ToHashSet();
        return Keep(rung => !left.Contains(rung.Family));
    }

    /// <summary>The same ladder up to a rule, which is the last one kept.</summary>
    /// <param name="rule">The rule.</param>
    /// <exception cref="ArgumentException">No rule of the ladder has this name.</exception>
    public Ladder UpTo(RuleId rule)
    {
        var last = RungOf(rule);
        return Keep(rung => rung.Place <= last);
    }

    /// <summary>The same ladder without a rule; without that rule already it stays as it is.</summary>
    /// <param name="rule">The rule.</param>
    public Ladder Without(RuleId rule) => Keep(rung => rung.Rule.Id != rule);

    /// <summary>The rungs below a rule: all that is easier.</summary>
    /// <param name="rule">The rule.</param>
    /// <exception cref="ArgumentException">No rule of the ladder has this name.</exception>
    public Ladder Below(RuleId rule)
    {
        var end = RungOf(rule);
        return Keep(rung => rung.Place < end);
    }

    /// <summary>Whether a rule is on the ladder.</summary>
    public bool Has(RuleId rule) => _byRule.ContainsKey(rule);

    /// <summary>The place of a rule, <see cref="Rung.Place"/>: 0 for the easiest of the whole ladder.</summary>
    /// <exception cref="ArgumentException">No rule of the ladder has this name.</exception>
    public int RungOf(RuleId rule) => this[rule].Place;

    /// <summary>The rung of a rule.</summary>
    /// <exception cref="ArgumentException">No rule of the ladder has this name.</exception>
    public Rung this[RuleId rule] => _byRule.TryGetValue(rule, out var rung)
        ? rung
        : throw new ArgumentException($"No rule of the ladder is called '{rule}'.", nameof(rule));

    /// <summary>Every deduction that is open on the board, easiest rule first, but for those of the last resorts.</summary>
    /// <param name="board">The board.</param>
    /// <param name="cancel">Stops between two rules, and within one that takes long.</param>
    /// <exception cref="OperationCanceledException"><paramref name="cancel"/> was signalled.</exception>
    public Findings Scan(Board board, CancellationToken cancel = default) =>
        Find(board, Effort.Pattern, Effort.Search, cancel);

    /// <summary>
    /// What the rules of one effort find on the board, easiest rule first. A last resort is only tried where those before it find
    /// nothing.
    /// </summary>
    /// <param name="board">The board.</param>
    /// <param name="effort">The effort.</param>
    /// <param name="cancel">Stops between two rules, and within one that takes long.</param>
    /// <exception cref="OperationCanceledException"><paramref name="cancel"/> was signalled.</exception>
    public Findings Scan(Board board, Effort effort, CancellationToken cancel = default) =>
        Find(board, effort, effort, cancel);

    /// <summary>The first deduction of the easiest rule that finds one, or null where none does.</summary>
    /// <param name="board">The board.</param>
    /// <param name="cancel">Stops between two rules, and within one that takes long.</param>
    /// <exception cref="OperationCanceledException"><paramref name="cancel"/> was signalled.</exception>
    public Deduction? Easiest(Board board, CancellationToken cancel = default)
    {
        var found = new Findings(limit: 1, cancel);
        foreach (var rule in Rules)
        {
            rule.Find(board, found);
            cancel.ThrowIfCancellationRequested();
            if (found.Count > 0)
                return found[0];
        }

        return null;
    }

    private static Ladder Of(ImmutableArray<IRule> rules) =>
        new([.. rules.Select((rule, place) => new Rung(rule, place, Cost: 1, Family: ""))], []);

    private Ladder Keep(Func<Rung, bool> isKept) => new([.. Rungs.Where(isKept)], Families);

    private Findings Find(Board board, Effort least, Effort most, CancellationToken cancel)
    {
        var found = new Findings(cancel: cancel);
        foreach (var rule in Rules)
        {
            if (rule.Effort < least || rule.Effort > most)
                continue;
            if (rule.Effort == Effort.LastResort && found.Count > 0)
                break;
            rule.Find(board, found);
            cancel.ThrowIfCancellationRequested();
        }

        return found;
    }
}
