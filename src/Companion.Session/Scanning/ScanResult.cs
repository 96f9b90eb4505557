using System.Collections.Immutable;
using Companion.Engine;
using Companion.Engine.Proofs;
using Companion.Engine.Rules;
using Companion.Session.State;

namespace Companion.Session.Scanning;

/// <summary>What a scan of a state found. Derived, never stored: a replayed session is scanned anew.</summary>
public sealed class ScanResult
{
    /// <summary>The number of the state that was scanned.</summary>
    public required long Sequence { get; init; }

    /// <summary>The loading of a puzzle that the state belonged to.</summary>
    public required int Loading { get; init; }

    /// <summary>How many entries had been made.</summary>
    public required int Entries { get; init; }

    /// <summary>Why nothing was scanned, in one plain sentence, or null.</summary>
    public string? Blocked { get; init; }

    /// <summary>The board that was scanned; null where it was blocked.</summary>
    public Board? Known { get; init; }

    /// <summary>The greatest effort of the rules that were looked at; slower ones may still follow.</summary>
    public Effort Reached { get; init; } = Effort.LastResort;

    /// <summary>Whether another result of the same state follows this one.</summary>
    public bool GoesOn { get; init; }

    /// <summary>The open deductions in ladder order.</summary>
    public ImmutableArray<Found> Open { get; init; } = [];

    /// <summary>
    /// For each open deduction the number of entries made when it was first found open. A blocked scan hands on what it was
    /// given, so that a slip which is put right at once does not begin the counts anew.
    /// </summary>
    internal ImmutableDictionary<Deduction, int> OpenSince { get; init; } = ImmutableDictionary<Deduction, int>.Empty;

    /// <summary>What the entries carried out, as far as scans saw it.</summary>
    public Trail Trail { get; init; } = Trail.Empty;

    /// <summary>
    /// Wrong entries by number, each with the numbers of the entries made since that follow only because of it.
    /// </summary>
    public ImmutableDictionary<int, ImmutableArray<int>> Dependents { get; init; } = NoDependents;

    /// <summary>No wrong entries.</summary>
    internal static ImmutableDictionary<int, ImmutableArray<int>> NoDependents { get; } =
        ImmutableDictionary<int, ImmutableArray<int>>.Empty;

    /// <summary>
    /// The deduction that a command names: open, or said before and wanted again, standing by or on air.
    /// </summary>
    /// <param name="state">The newest state.</param>
    /// <param name="id">The deduction's one-line text.</param>
    /// <returns>The deduction, or null where the name is out of date.</returns>
    public Deduction? Named(SessionState state, string id)
    {
        ArgumentNullException.ThrowIfNull(state);
        if (Loading != state.Grid.Loading)
            return null;
        return Open.Select(found => found.Deduction)
            .Concat(state.Used.Where(used => used.Loading == Loading).Select(used => used.Deduction))
            .Append(state.Standby?.Deduction)
            .Append(state.OnAir?.Deduction)
            .FirstOrDefault(deduction => deduction?.ToString() == id);
    }
}
