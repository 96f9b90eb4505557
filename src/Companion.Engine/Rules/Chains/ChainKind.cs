namespace Companion.Engine.Rules.Chains;

/// <summary>What a chain may be made of. A strong link says: if one end is false, the other is true.</summary>
[Flags]
internal enum ChainKind
{
    /// <summary>Strong links between the two candidates of a cell.</summary>
    Cells = 1,

    /// <summary>Strong links between the two places of a digit in a house.</summary>
    Places = 2,

    /// <summary>Strong links between two groups of places that are all of a digit in a house: a group lies in a block and a line.</summary>
    Groups = 4,

    /// <summary>Strong links between two digits of an almost locked set: n cells of a house with n + 1 candidates between them.</summary>
    Sets = 8,

    /// <summary>Weak links between the candidates of a cell, beside those between places of a digit that see each other.</summary>
    WithinCells = 16,

    /// <summary>Strong links between the fin of an X-wing and its places in each of the two lines across.</summary>
    Fish = 32,

    /// <summary>Chains of one digit.</summary>
    OneDigit = Places,

    /// <summary>Chains of one digit in cells and groups.</summary>
    GroupedOneDigit = Places | Groups,

    /// <summary>Chains of cells with two candidates.</summary>
    BivalueCells = Cells,

    /// <summary>Chains of single candidates.</summary>
    Plain = Cells | Places | WithinCells,

    /// <summary>Chains of candidates and groups.</summary>
    Grouped = Plain | Groups,

    /// <summary>Chains of candidates, groups and almost locked sets.</summary>
    WithSets = Grouped | Sets,

    /// <summary>Chains of all that there is.</summary>
    Whole = WithSets | Fish,

    /// <summary>Chains of almost locked sets, cells with two candidates among them.</summary>
    SetsOnly = Cells | Sets,
}
