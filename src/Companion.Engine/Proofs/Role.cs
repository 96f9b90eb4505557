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

    /// <summary>The middle cell of a wing.</summary>
    Pivot,

    /// <summary>An outer cell of a wing.</summary>
    Pincer,
}
