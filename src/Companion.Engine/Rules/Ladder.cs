using System.Collections.Immutable;
using Companion.Engine.Proofs;

namespace Companion.Engine.Rules;

/// <summary>The rules in order of difficulty, easiest first.</summary>
public sealed class Ladder
{
    private Ladder(ImmutableArray<IRule> rules) => Rules = rules;

    /// <summary>
    /// Every rule there is, once. Only for puzzles that are known to have one solution: some of the rules assume it.
    /// </summary>
    public static Ladder Whole { get; } = new(
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
    ]);

    /// <summary>The ladder as it ships: the whole ladder but for the rules that assume one solution.</summary>
    public static Ladder Standard { get; } = Whole.WithoutUniqueness();

    /// <summary>The rules, easiest first.</summary>
    public ImmutableArray<IRule> Rules { get; }

    /// <summary>The same ladder without the rules that assume one solution.</summary>
    public Ladder WithoutUniqueness() => new([.. Rules.Where(rule => !rule.AssumesOneSolution)]);

    /// <summary>The rung of a rule: 0 for the easiest.</summary>
    /// <exception cref="ArgumentException">No rule of the ladder has this name.</exception>
    public int RungOf(RuleId rule)
    {
        for (var rung = 0; rung < Rules.Length; rung++)
        {
            if (Rules[rung].Id == rule)
                return rung;
        }

        throw new ArgumentException($"No rule of the ladder is called '{rule}'.", nameof(rule));
    }

    /// <summary>Every deduction that is open on the board, easiest rule first, but for those of the last resorts.</summary>
    /// <param name="board">The board.</param>
    /// <param name="cancel">Stops between two rules.</param>
    /// <exception cref="OperationCanceledException"><paramref name="cancel"/> was signalled.</exception>
    public Findings Scan(Board board, CancellationToken cancel = default) =>
        Find(board, Effort.Pattern, Effort.Search, cancel);

    /// <summary>What the rules of one effort find on the board, easiest rule first.</summary>
    /// <param name="board">The board.</param>
    /// <param name="effort">The effort.</param>
    /// <param name="cancel">Stops between two rules.</param>
    /// <exception cref="OperationCanceledException"><paramref name="cancel"/> was signalled.</exception>
    public Findings Scan(Board board, Effort effort, CancellationToken cancel = default) =>
        Find(board, effort, effort, cancel);

    /// <summary>The first deduction of the easiest rule that finds one, or null where none does.</summary>
    /// <param name="board">The board.</param>
    public Deduction? Easiest(Board board)
    {
        var found = new Findings(limit: 1);
        foreach (var rule in Rules)
        {
            rule.Find(board, found);
            if (found.IsFull)
                return found[0];
        }

        return null;
    }

    private Findings Find(Board board, Effort least, Effort most, CancellationToken cancel)
    {
        var found = new Findings();
        foreach (var rule in Rules)
        {
            if (rule.Effort < least || rule.Effort > most)
                continue;
            cancel.ThrowIfCancellationRequested();
            rule.Find(board, found);
        }

        return found;
    }
}
