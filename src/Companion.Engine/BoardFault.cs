namespace Companion.Engine;

/// <summary>One reason why a draft is not a board or not a puzzle.</summary>
public abstract record BoardFault
{
    private BoardFault()
    {
    }

    /// <summary>The reason in one plain English sentence, with the way out.</summary>
    public abstract string Sentence { get; }

    /// <summary>The cells to look at; empty where the reason lies in none.</summary>
    public virtual CellSet Cells => CellSet.Empty;

    /// <summary>The text has not 81 cells.</summary>
    /// <param name="Length">How many it has.</param>
    public sealed record WrongLength(int Length) : BoardFault
    {
        /// <inheritdoc/>
        public override string Sentence =>
            $"A grid has 81 cells and this has {Length}: give 81 characters or nine lines of nine.";
    }

    /// <summary>A character that is neither a digit nor a blank.</summary>
    /// <param name="Position">Where, 0-based.</param>
    /// <param name="Character">The character.</param>
    public sealed record BadCharacter(int Position, char Character) : BoardFault
    {
        /// <inheritdoc/>
        public override string Sentence =>
            $"'{Character}' at character {Position + 1} is neither a digit nor a blank: "
            + "use 1 to 9, and a dot, 0 or space for an empty cell.";

        /// <inheritdoc/>
        public override CellSet Cells => Position < Cell.Count ? CellSet.Of(Cell.At(Position)) : CellSet.Empty;
    }

    /// <summary>A digit stands twice in a house.</summary>
    /// <param name="House">The house.</param>
    /// <param name="Digit">The digit.</param>
    /// <param name="First">The first of the two cells in reading order.</param>
    /// <param name="Second">The second.</param>
    public sealed record TwoEqualDigits(House House, Digit Digit, Cell First, Cell Second) : BoardFault
    {
        /// <inheritdoc/>
        public override string Sentence =>
            $"{Digit} stands twice in {House.Kind.ToString().ToLowerInvariant()} {House.Number}, in {First} and {Second}: "
            + "change one of them.";

        /// <inheritdoc/>
        public override CellSet Cells => CellSet.Of(First, Second);
    }

    /// <summary>An empty cell in which no candidate stands.</summary>
    /// <param name="Cell">The cell.</param>
    public sealed record NoCandidateLeft(Cell Cell) : BoardFault
    {
        /// <inheritdoc/>
        public override string Sentence => $"No candidate is left in {Cell}: a digit that it sees, or a strike in it, is wrong.";

        /// <inheritdoc/>
        public override CellSet Cells => CellSet.Of(Cell);
    }

    /// <summary>No way to fill the grid.</summary>
    public sealed record NoSolution : BoardFault
    {
        /// <inheritdoc/>
        public override string Sentence => "This grid has no solution: compare it with the source, one digit may be mistyped.";
    }

    /// <summary>More than one way to fill the grid.</summary>
    /// <param name="Cell">The first cell in which two solutions differ.</param>
    /// <param name="One">Its digit in one of them.</param>
    /// <param name="Other">Its digit in another.</param>
    public sealed record SeveralSolutions(Cell Cell, Digit One, Digit Other) : BoardFault
    {
        /// <inheritdoc/>
        public override string Sentence =>
            $"This grid has more than one solution ({Cell} can be {One} or {Other}): "
            + "compare it with the source, a given may be missing.";

        /// <inheritdoc/>
        public override CellSet Cells => CellSet.Of(Cell);
    }
}
