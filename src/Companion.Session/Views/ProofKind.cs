namespace Companion.Session.Views;

/// <summary>How far the proof of an entry is.</summary>
public enum ProofKind
{
    /// <summary>It is still being looked for.</summary>
    Pending,

    /// <summary>There is one.</summary>
    Proved,

    /// <summary>The ladder has none.</summary>
    NotProved,

    /// <summary>None is looked for: the entry disagrees with the only solution.</summary>
    Wrong,

    /// <summary>None is looked for: the board before the entry disagrees with the only solution.</summary>
    Unsound,
}
