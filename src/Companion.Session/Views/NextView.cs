using System.Collections.Immutable;

namespace Companion.Session.Views;

/// <summary>Every open deduction of a board, for the presenter and the co-hosts.</summary>
/// <param name="Sequence">Number of the state whose board was scanned; at most that of the desk view beside it.</param>
/// <param name="Blocked">Why nothing was scanned, in one plain sentence, or null.</param>
/// <param name="GoesOn">Whether slower rules are still being looked at: a list with more may follow.</param>
/// <param name="Deductions">The deductions found so far, in ladder order.</param>
public sealed record NextView(long Sequence, string? Blocked, bool GoesOn, ImmutableArray<OpenDeduction> Deductions);
