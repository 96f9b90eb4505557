namespace Companion.Engine.Proofs;

/// <summary>What a cell does in a pattern.</summary>
public enum Role
{
    /// <summary>The cell that a single fills.</summary>
    Single,

    /// <summary>A cell to which a digit is kept where a block and a line meet.</summary>
    Locked,

    /// <summary>A cell of a naked or hidden pair, triple or quad.</summary>
    Subset,

    /// <summary>A cell of a fish: a place of the digit in one of its base lines.</summary>
    Base,

    /// <summary>The middle cell of a wing; a cell of a pattern of a line and a block where the two cross.</summary>
    Pivot,

    /// <summary>An outer cell of a wing; a cell of a pattern of a line and a block outside their crossing.</summary>
    Pincer,

    /// <summary>A cell of a finned fish: a place of the digit in a base line, outside the cover lines.</summary>
    Fin,

    /// <summary>A cell of a block that keeps a digit to one row and one column of it: a place of the digit there.</summary>
    Cross,

    /// <summary>An end of a short chain: one of the ends is true.</summary>
    End,

    /// <summary>A cell between the ends of a short chain.</summary>
    Between,

    /// <summary>A cell of one of two colours, of which one is all true and the other all false.</summary>
    FirstColour,

    /// <summary>A cell of the other colour; where it is known which colour is false, of that one.</summary>
    SecondColour,

    /// <summary>A cell at an end of a long chain: one of the ends is true.</summary>
    ChainEnd,

    /// <summary>A cell on the way of a long chain or loop.</summary>
    Chain,

    /// <summary>A cell of an almost locked set.</summary>
    Set,

    /// <summary>Where chains start: a cell one of whose candidates, or the places one of which, must be true.</summary>
    Start,

    /// <summary>
    /// A cell that has no candidate beyond those that could be exchanged in a second solution, if all cells were so.
    /// </summary>
    Floor,

    /// <summary>A cell that completes such an exchange if it holds no other candidate.</summary>
    Roof,
}
