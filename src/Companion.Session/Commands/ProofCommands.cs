using Companion.Engine.Proofs;

namespace Companion.Session.Commands;

/// <summary>
/// Keep what was found of an entry. Comes from the session itself; nothing is kept of an entry that was taken back meanwhile.
/// </summary>
/// <param name="Entry">The entry's number.</param>
/// <param name="Attribution">Its easiest proof, or that the ladder has none.</param>
public sealed record AttributeEntry(int Entry, Attribution Attribution) : Command;
