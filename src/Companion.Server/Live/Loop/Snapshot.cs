using Companion.Engine.Proofs;
using Companion.Server.Chat;
using Companion.Session.Planning;
using Companion.Session.Scanning;
using Companion.Session.State;

namespace Companion.Server.Live.Loop;

/// <summary>The session at one moment: what every page is shown from.</summary>
/// <param name="State">The state.</param>
/// <param name="Scan">The last finished scan, or null. It may be of an older state.</param>
internal sealed record Snapshot(SessionState State, ScanResult? Scan)
{
    /// <summary>How the chat is doing, or null where there is none.</summary>
    public ChatStatus? Chat { get; init; }

    /// <summary>What was last to be expected of the featured rules, or null. It may be of an older state.</summary>
    public Outlook? Outlook { get; init; }

    /// <summary>The way on as it was planned last, or null. It may be of an older state.</summary>
    public PlannedWay? Ahead { get; init; }

    /// <summary>
    /// The number of the state whose scan holds for this one: a scan of an earlier state is overtaken, and a newer one is on its way.
    /// </summary>
    public long ScanOf { get; init; }

    /// <summary>The deduction that a page names: open, or said before and wanted again.</summary>
    /// <param name="id">The deduction's one-line text; may be null.</param>
    /// <exception cref="FormatException">It is open no longer.</exception>
    public Deduction Named(string? id) => Scan?.Named(State, id ?? "")
        ?? throw new FormatException("This deduction is not open any more: choose one of the list.");
}
