using Companion.Engine.Proofs;

namespace Companion.Engine.Planning.Talking;

/// <summary>A true remark about a planned route that is worth saying on air, with the facts that it rests on.</summary>
/// <param name="Step">The place of the step that it is about, 0-based; null where it is about the whole route.</param>
public abstract record TalkingPoint(int? Step)
{
    /// <summary>
    /// What <see cref="Rarity"/> counts: the kind of remark, with its figure where a greater one is rarer. Null for what can be said of
    /// every route.
    /// </summary>
    public virtual string? Key => null;

    /// <summary>A pincer of an XY-wing lies in the pivot's block, which is so of every XYZ-wing.</summary>
    public sealed record PincerInBlock(int At, Cell Pivot, Cell Pincer, House Block) : TalkingPoint(At)
    {
        /// <inheritdoc/>
        public override string Key => "pincer-in-block";
    }

    /// <summary>A wing spans three blocks: pivot and pincers lie in one each.</summary>
    public sealed record WingOverThreeBlocks(int At, Cell Pivot, CellSet Pincers) : TalkingPoint(At)
    {
        /// <inheritdoc/>
        public override string Key => "wing-over-three-blocks";
    }

    /// <summary>The pivot serves another wing of the same rule that is open at the same time.</summary>
    public sealed record PivotOfTwoWings(int At, Cell Pivot, CellSet Other) : TalkingPoint(At)
    {
        /// <inheritdoc/>
        public override string Key => "pivot-of-two-wings";
    }

    /// <summary>A pair that is at once a pair in a line and in a block.</summary>
    public sealed record PairInTwoHouses(int At, CellSet Cells, DigitSet Digits, House Line, House Block) : TalkingPoint(At)
    {
        /// <inheritdoc/>
        public override string Key => "pair-in-two-houses";
    }

    /// <summary>How many bivalue cells there were when a wing came open.</summary>
    public sealed record BivalueCells(int At, RuleId Rule, int Count) : TalkingPoint(At);

    /// <summary>A digit that had two places in a block has one left.</summary>
    public sealed record BlockDecided(int At, House Block, Digit Digit, Cell Cell) : TalkingPoint(At)
    {
        /// <inheritdoc/>
        public override string Key => "block-decided";
    }

    /// <summary>A step lets singles alone fill so many cells that they could not fill before, without those that it places itself.</summary>
    public sealed record Fills(int At, int Cells) : TalkingPoint(At)
    {
        /// <inheritdoc/>
        public override string Key => $"fills-{Cells}";
    }

    /// <summary>A pattern that would have been there some steps earlier but for one candidate.</summary>
    public sealed record OneInTheWay(int At, Candidate InTheWay, int Earlier) : TalkingPoint(At)
    {
        /// <inheritdoc/>
        public override string Key => "one-in-the-way";
    }

    /// <summary>The route needs this rule: easier ones do not lead to the solution.</summary>
    public sealed record Needs(int At, RuleId Rule) : TalkingPoint(At)
    {
        /// <inheritdoc/>
        public override string Key => $"needs-{Rule}";
    }

    /// <summary>
    /// The block that most steps rest on: without what is placed in it and removed from it they would not be there. Nothing is said
    /// where two blocks have as many, or where it is less than two steps.
    /// </summary>
    public sealed record KeyBlock(House Block, int Steps, int All) : TalkingPoint((int?)null);

    /// <summary>The digit that is finished first; nothing is said where one was finished before the route.</summary>
    public sealed record FirstDigit(Digit Digit, int At) : TalkingPoint(At);
}
