using System.Collections.Immutable;
using System.Text;

namespace Companion.Engine.Proofs;

/// <summary>
/// One instance of a rule on a board: its pattern, what it rests on, and what follows. Data only; <c>Wording</c> says it and
/// <c>ProofChecker</c> proves it.
/// </summary>
public sealed class Deduction : IEquatable<Deduction>
{
    private string? _text;

    /// <summary>The rule that this is an instance of.</summary>
    public required RuleId Rule { get; init; }

    /// <summary>The cells of the pattern with their roles, in the order in which they are said.</summary>
    public required ImmutableArray<PatternCell> Cells { get; init; }

    /// <summary>
    /// The houses that the proof uses as a whole ("the digit must go somewhere in this row"), and the house to which a naked
    /// subset is confined.
    /// </summary>
    public HouseSet Houses { get; init; }

    /// <summary>The digits of the pattern.</summary>
    public required DigitSet Digits { get; init; }

    /// <summary>The links of the pattern, in the order in which they are said; empty for patterns that need none.</summary>
    public ImmutableArray<Link> Links { get; init; } = [];

    /// <summary>
    /// The almost locked sets of the pattern, in the order in which they are said; they may share cells. Empty for patterns
    /// without.
    /// </summary>
    public ImmutableArray<CellSet> Sets { get; init; } = [];

    /// <summary>
    /// What follows from each candidate that is supposed to be true, in the order in which it is said; empty for patterns that
    /// suppose nothing.
    /// </summary>
    public ImmutableArray<Branch> Branches { get; init; } = [];

    /// <summary>
    /// The absent candidates, in open cells, without which the pattern would not hold. Whoever cannot see that one of them is
    /// gone cannot follow the deduction.
    /// </summary>
    public CandidateSet RestsOn { get; init; }

    /// <summary>The digits that follow.</summary>
    public CandidateSet Places { get; init; }

    /// <summary>The candidates that go. All of them stand on the board on which the deduction was found.</summary>
    public CandidateSet Removes { get; init; }

    /// <summary>
    /// Whether it holds only of a puzzle that has one solution: then <see cref="UniquenessChecker"/> proves it, not
    /// <see cref="ProofChecker"/>. False by default.
    /// </summary>
    public bool AssumesOneSolution { get; init; }

    /// <summary>Whether its links come back to where they began, all the way round strong and weak by turns.</summary>
    internal bool IsLoop => Links is [var first, .., { IsStrong: false } last] && first.GoesOnFrom(last);

    /// <summary>
    /// The first link, where it says what two cells or digits of the pattern cannot both have: a weak one that no chain goes on from,
    /// and that does not end with what all the chains lead to.
    /// </summary>
    internal ImmutableArray<Link> NotBoth =>
        Links is [{ IsStrong: false } first, var next, ..] && !next.GoesOnFrom(first) && (Links[^1].IsStrong || !Links[^1].EndsLike(first))
            ? [first]
            : [];

    /// <summary>The cells of the pattern as a set.</summary>
    public CellSet PatternCells
    {
        get
        {
            var cells = CellSet.Empty;
            foreach (var (cell, _) in Cells)
                cells = cells.With(cell);
            return cells;
        }
    }

    /// <summary>What tells its pattern from others, whatever follows from it: once some of that is done, less does.</summary>
    public (RuleId Rule, CellSet Cells, DigitSet Digits) PatternKey => (Rule, PatternCells, Digits);

    /// <summary>Whether both are the same instance with the same conclusion.</summary>
    public bool Equals(Deduction? other) => other is not null && ToString() == other.ToString();

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Deduction);

    /// <inheritdoc/>
    public override int GetHashCode() => ToString().GetHashCode(StringComparison.Ordinal);

    /// <summary>
    /// The deduction in one line, the same for the same instance: rule, digits, cells by role, sets, houses, conclusion. For example
    /// <c>naked-pair 58 subset r1c1 r1c2 in r1 b1 removes r1c5=5 r1c6=8</c>. It serves as its name in interfaces.
    /// </summary>
    public override string ToString() => _text ??= Write();

    /// <summary>The same pattern where other candidates are absent.</summary>
    internal Deduction RestingOn(in CandidateSet absent) => new()
    {
        Rule = Rule,
        Cells = Cells,
        Houses = Houses,
        Digits = Digits,
        Links = Links,
        Sets = Sets,
        Branches = Branches,
        RestsOn = absent,
        Places = Places,
        Removes = Removes,
        AssumesOneSolution = AssumesOneSolution,
    };

    private string Write()
    {
        var text = new StringBuilder().Append(Rule).Append(' ').Append(Digits);
        Role? role = null;
        foreach (var (cell, itsRole) in Cells)
        {
            if (itsRole != role)
                text.Append(' ').Append(itsRole.ToString().ToLowerInvariant());
            role = itsRole;
            text.Append(' ').Append(cell);
        }

        if (!Sets.IsEmpty)
            text.Append(" sets ").AppendJoin(' ', Sets.Select(set => string.Join('+', set)));
        if (!Houses.IsEmpty)
            text.Append(" in ").Append(Houses);
        if (!Places.IsEmpty)
            text.Append(" places ").Append(Places);
        if (!Removes.IsEmpty)
            text.Append(" removes ").Append(Removes);
        return text.ToString();
    }
}
